import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aServer, type AServer } from './a-server.ts';
import { askOf, pathOf, sendRaw, visit, type Asked } from './visit.ts';

let server: AServer;
beforeAll(async () => {
  server = await aServer();
});
afterAll(() => {
  server.stop();
});

const at = (below: string, asked: Asked = {}) =>
  visit(server.address, pathOf(server, below), asked);
const ask = (name: string, sent: unknown, headers: Record<string, string> = {}) =>
  askOf(server, name, sent, headers);

describe('the token', () => {
  test('has 256 bits and is another at every start', async () => {
    const another = await aServer();
    another.stop();
    expect(Buffer.from(server.token, 'base64url')).toHaveLength(32);
    expect(another.token).not.toBe(server.token);
  });

  test.each([
    ['none', () => '/'],
    ['none, the page by its name', () => '/index.html'],
    ['none, a request by its name', () => '/ask/open-session'],
    ['an empty one', () => '//index.html'],
    ['a wrong one', () => `/${'A'.repeat(43)}/`],
    [
      'one letter off',
      () => `/${server.token.slice(0, -1)}${server.token.endsWith('A') ? 'E' : 'A'}/`,
    ],
    ['cut short', () => `/${server.token.slice(0, 20)}/`],
    ['with something behind it', () => `/${server.token}A/`],
    ['in the query', () => `/?${server.token}/`],
    ['as a header would be', () => `/x/${server.token}/`],
    ['without the slash that ends it', () => `/${server.token}`],
    ['encoded', () => `/%${server.token.charCodeAt(0).toString(16)}${server.token.slice(1)}/`],
  ])('refused: %s', async (_what, path) => {
    for (const method of ['GET', 'POST']) {
      const origin = new URL(server.address).origin;
      const { status, body } = await visit(server.address, path(), { method, headers: { origin } });
      expect([status, body.toString()]).toEqual([404, 'Not found.\n']);
    }
  });

  test('is never said in an answer', async () => {
    for (const { headers, body } of [await at(''), await at('gone'), await ask('gone', null)]) {
      expect(JSON.stringify(headers) + body.toString()).not.toContain(server.token);
    }
  });
});

describe('the Host header', () => {
  const port = () => new URL(server.address).port;
  test.each([
    ['a name that leads here', () => 'evil.example'],
    ['the same with the port', () => `evil.example:${port()}`],
    ['another name of this machine', () => `localhost:${port()}`],
    ['another address of this machine', () => `127.0.0.2:${port()}`],
    ['no port', () => '127.0.0.1'],
    ['another port', () => '127.0.0.1:1'],
    ['a trailing dot', () => `127.0.0.1.:${port()}`],
  ])('refused: %s', async (_what, host) => {
    const { status, body } = await at('', { headers: { host: host() } });
    expect([status, body.toString()]).toEqual([403, 'Refused.\n']);
  });

  test('refused: none', async () => {
    const first = await sendRaw(server.address, `GET /${server.token}/ HTTP/1.0\r\n\r\n`);
    expect(first).toBe('HTTP/1.1 403 Forbidden');
  });
});

describe('the Origin header', () => {
  const own = () => new URL(server.address).origin;
  test.each([
    ['another site', () => 'https://evil.example'],
    ['a page of no origin', () => 'null'],
    ['another port of this machine', () => 'http://127.0.0.1:1'],
    ['another scheme', () => own().replace('http', 'https')],
    ['our own with something behind it', () => `${own()}.evil.example`],
  ])('refused: %s', async (_what, origin) => {
    expect((await at('', { headers: { origin: origin() } })).status).toBe(403);
    expect((await ask('open-session', null, { origin: origin() })).status).toBe(403);
  });

  test('is wanted where something is asked', async () => {
    const headers = { 'content-type': 'application/json' };
    const asked: Asked = { method: 'POST', headers, body: 'null' };
    expect((await at('ask/open-session', asked)).status).toBe(403);
    expect((await ask('open-session', null)).status).toBe(200);
  });

  test('stands beside what the browser says of the site: only a visit may come from another', async () => {
    const from = (site: string, mode: string) =>
      at('assets/main.js', { headers: { 'sec-fetch-site': site, 'sec-fetch-mode': mode } });
    expect((await from('cross-site', 'no-cors')).status).toBe(403);
    expect((await from('same-site', 'cors')).status).toBe(403);
    expect((await from('same-origin', 'no-cors')).status).toBe(200);
    expect((await from('cross-site', 'navigate')).status).toBe(200);
  });
});

describe('the method', () => {
  test.each(['PUT', 'DELETE', 'PATCH', 'OPTIONS', 'TRACE', 'PROPFIND'])(
    'refused: %s',
    async (method) => {
      const { status, headers } = await at('', { method });
      expect(status).toBe(405);
      expect(headers.allow).toBe('GET, HEAD, POST');
    },
  );

  test('refused: CONNECT', async () => {
    const { host } = new URL(server.address);
    const first = await sendRaw(
      server.address,
      `CONNECT ${host} HTTP/1.1\r\nHost: ${host}\r\n\r\n`,
    );
    expect(first).toBe('');
  });

  test('a request is answered to POST only, the page to GET only', async () => {
    expect((await at('ask/open-session')).status).toBe(404);
    const headers = { origin: new URL(server.address).origin };
    expect((await at('assets/main.js', { method: 'POST', headers })).status).toBe(404);
  });
});

describe('path tricks', () => {
  const SECRET = 'package.json';
  const tricks = [
    '../package.json',
    '../../../../../../etc/passwd',
    '/etc/passwd',
    '//etc/passwd',
    'assets/../../package.json',
    'assets/./main.js',
    'assets//main.js',
    '%2e%2e/package.json',
    '%2e%2e%2fpackage.json',
    '..%2fpackage.json',
    '..%5cpackage.json',
    '..\\package.json',
    '%252e%252e/package.json',
    '%c0%ae%c0%ae/package.json',
    'index.html%00',
    'index.html%00.js',
    'assets%2fmain.js',
    'assets\\main.js',
    'INDEX.HTML',
    'index.html.',
    'index.html::$DATA',
    'file:///etc/passwd',
    'C:/Windows/win.ini',
    '__proto__',
    'constructor',
    'toString',
  ];

  test.each(tricks)('refused: %s', async (trick) => {
    const { status, body } = await at(trick);
    expect(status).toBe(404);
    expect(body.toString()).toBe('Not found.\n');
    expect(body.toString()).not.toContain(SECRET);
  });

  test.each([
    ['a whole address', () => `http://evil.example/${server.token}/`],
    ['steps up to the page of the token', () => `/a/../${server.token}/`],
    ['steps up from the token', () => `/${server.token}/..`],
  ])('refused: %s', async (_what, path) => {
    const { host } = new URL(server.address);
    const bytes = `GET ${path()} HTTP/1.1\r\nHost: ${host}\r\nConnection: close\r\n\r\n`;
    expect(await sendRaw(server.address, bytes)).toBe('HTTP/1.1 404 Not Found');
  });

  test('refused: a NUL, and a header that ends a line early', async () => {
    const { host } = new URL(server.address);
    const nul = `GET /${server.token}/\0 HTTP/1.1\r\nHost: ${host}\r\n\r\n`;
    expect(await sendRaw(server.address, nul)).toBe('HTTP/1.1 400 Bad Request');
    const split = `GET /${server.token}/ HTTP/1.1\nHost: ${host}\nX: \r\n\r\n`;
    expect(await sendRaw(server.address, split)).not.toContain('200');
  });
});
