import { randomBytes } from 'node:crypto';
import { readFile, readdir } from 'node:fs/promises';
import { extname, join, relative, sep } from 'node:path';

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

export const INDEX = 'index.html';

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

/**
 * Reads the built page whole. Only regular files count: a link in the folder is not followed.
 * Later requests are looked up in the result and never touch the disk.
 *
 * @throws Error in the system's words where the folder cannot be read
 */
export const loadPage = async (folder: string): Promise<Page> => {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile());
  const loaded = files.map(async ({ parentPath, name }): Promise<[string, PageFile]> => {
    const path = join(parentPath, name);
    const contentType = CONTENT_TYPES[extname(name)] ?? 'application/octet-stream';
    const address = relative(folder, path).split(sep).join('/');
    return [address, { body: new Uint8Array(await readFile(path)), contentType }];
  });
  return new Map(await Promise.all(loaded));
};

/** Nothing from elsewhere, nothing inline but the style elements that bear the nonce. */
const policy = (nonce: string): string =>
  [
    "default-src 'none'",
    "script-src 'self'",
    `style-src 'self' 'nonce-${nonce}'`,
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
export const securityHeaders = (nonce = randomBytes(16).toString('base64')) => ({
  'content-security-policy': policy(nonce),
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-embedder-policy': 'require-corp',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': NO_DEVICES.map((feature) => `${feature}=()`).join(', '),
  'cache-control': 'no-store',
});

/** Tells the page the nonce where libraries that add style elements look for it. */
const withNonce = (html: Uint8Array, nonce: string): Uint8Array<ArrayBuffer> => {
  const meta = `<meta property="csp-nonce" nonce="${nonce}">`;
  const text = new TextDecoder().decode(html).replace('<head>', `<head>${meta}`);
  return new TextEncoder().encode(text);
};

/**
 * Answers for the page. The address is looked up as it was sent, undecoded: what is not, letter for
 * letter, the name of a file of the page does not exist.
 *
 * @param address below the page's own, without a leading slash or a query; empty for the page itself
 */
export const answerFromPage = (page: Page, address: string): PageAnswer => {
  const nonce = randomBytes(16).toString('base64');
  const headers = securityHeaders(nonce);
  const name = address === '' ? INDEX : address;
  const file = page.get(name);
  if (file === undefined) {
    const body = new TextEncoder().encode('Not found.\n');
    return { status: 404, headers: { ...headers, 'content-type': 'text/plain' }, body };
  }
  return {
    status: 200,
    headers: { ...headers, 'content-type': file.contentType },
    body: name === INDEX ? withNonce(file.body, nonce) : file.body,
  };
};
