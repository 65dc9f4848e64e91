import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const NONCE = 'gallery';

/** As strict as the app's own: nothing inline but what bears the nonce, nothing from elsewhere. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  `style-src 'self' 'nonce-${NONCE}'`,
  "img-src 'self' data:",
  "font-src 'self'",
  "connect-src 'self'",
].join('; ');

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.woff2': 'font/woff2',
};

export interface ServedGallery {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Builds the gallery into a folder of its own and serves it under a policy as strict as the app's. */
export const serveGallery = async (): Promise<ServedGallery> => {
  const outDir = await mkdtemp(join(tmpdir(), 'gallery-'));
  const configFile = fileURLToPath(new URL('vite.config.ts', import.meta.url));
  await build({ configFile, logLevel: 'error', build: { outDir, emptyOutDir: true } });
  const answer = async (path: string): Promise<string | Buffer> => {
    const bytes = await readFile(join(outDir, normalize(path)));
    const nonce = `<head><meta property="csp-nonce" nonce="${NONCE}">`;
    return path.endsWith('.html') ? bytes.toString().replace('<head>', nonce) : bytes;
  };
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://gallery');
    const path = pathname === '/' ? '/index.html' : decodeURIComponent(pathname);
    answer(path).then(
      (body) => {
        response.setHeader('content-type', TYPES[extname(path)] ?? 'text/plain');
        response.setHeader('content-security-policy', POLICY);
        response.end(body);
      },
      () => {
        response.statusCode = 404;
        response.end();
      },
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}/`,
    close: async () => {
      await new Promise((resolve) => server.close(resolve));
      await rm(outDir, { recursive: true, force: true });
    },
  };
};
