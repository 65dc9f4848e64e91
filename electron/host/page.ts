import { readFile, readdir } from 'node:fs/promises';
import { extname, join } from 'node:path';

/** A file of the built page, in memory. */
interface PageFile {
  readonly body: Uint8Array<ArrayBuffer>;
  readonly contentType: string;
}

/** The built page: its files by the address below the page's own, such as `assets/main.js`. */
export type Page = ReadonlyMap<string, PageFile>;

/** One answer of either server of the page. */
export interface PageAnswer {
  readonly status: 200 | 404;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Uint8Array<ArrayBuffer>;
}

const INDEX = 'index.html';

const CONTENT_TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
};

/** Every regular file below a folder, by its address there. Links are not followed. */
const addressesBelow = async (folder: string, above = ''): Promise<string[]> => {
  const entries = await readdir(join(folder, above), { withFileTypes: true });
  const found = entries.map((entry): Promise<string[]> => {
    if (entry.isDirectory()) return addressesBelow(folder, `${above}${entry.name}/`);
    return Promise.resolve(entry.isFile() ? [`${above}${entry.name}`] : []);
  });
  return (await Promise.all(found)).flat();
};

/**
 * Reads the built page whole, from a folder or from a packaged program's archive. Later requests are
 * looked up in the result and never touch the disk.
 *
 * @throws Error in the system's words where the folder cannot be read
 */
export const loadPage = async (folder: string): Promise<Page> => {
  const addresses = await addressesBelow(folder);
  const loaded = addresses.map(async (address): Promise<[string, PageFile]> => {
    const contentType = CONTENT_TYPES[extname(address)] ?? 'application/octet-stream';
    return [address, { body: new Uint8Array(await readFile(join(folder, address))), contentType }];
  });
  return new Map(await Promise.all(loaded));
};

/** Nothing from elsewhere, and nothing inline. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

const NO_DEVICES = [
  ...['accelerometer', 'camera', 'display-capture', 'geolocation', 'gyroscope', 'hid'],
  ...['magnetometer', 'microphone', 'midi', 'payment', 'serial', 'usb', 'screen-wake-lock'],
];

/** What every answer of either server says, whatever it holds. */
export const SECURITY_HEADERS = {
  'content-security-policy': POLICY,
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-embedder-policy': 'require-corp',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': NO_DEVICES.map((feature) => `${feature}=()`).join(', '),
  'cache-control': 'no-store',
} as const;

/** Whose answer is that there is no such file. */
const NO_FILE: PageFile = {
  body: new TextEncoder().encode('Not found.\n'),
  contentType: 'text/plain; charset=utf-8',
};

/**
 * Answers for the page. The address is looked up as it was sent, undecoded: what is not, letter for
 * letter, the name of a file of the page does not exist.
 *
 * @param address below the page's own, without a leading slash or a query; empty for the page itself
 */
export const answerFromPage = (page: Page, address: string): PageAnswer => {
  const file = page.get(address === '' ? INDEX : address);
  const { body, contentType } = file ?? NO_FILE;
  const headers = { ...SECURITY_HEADERS, 'content-type': contentType };
  return { status: file === undefined ? 404 : 200, headers, body };
};
