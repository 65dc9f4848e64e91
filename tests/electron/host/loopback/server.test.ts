import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { REQUESTS } from '../../../../electron/host/contract.ts';
import { aServer, type AServer } from './a-server.ts';
import { askOf, pathOf, visit, type Asked } from './visit.ts';

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

const ticketOfTheLog = async (): Promise<string> => {
  const { body } = await ask('open-session', null);
  const { files } = REQUESTS['open-session'].answered.parse(JSON.parse(body.toString()));
  return files[0]?.ticket ?? '';
};

describe('the page', () => {
  test('is at the address', async () => {
    const { status, headers, body } = await visit(server.address, new URL(server.address).pathname);
    expect(status).toBe(200);
    expect(headers['content-type']).toBe('text/html');
    expect(body.toString()).toContain('<title>A</title>');
  });

  test('has its files below it, with or without a query', async () => {
    expect((await at('assets/main.js')).body.toString()).toBe('export {};');
    expect((await at('assets/main.js?v=1')).status).toBe(200);
    expect((await at('assets/gone.js')).status).toBe(404);
  });

  test('is answered to HEAD without a body', async () => {
    const { status, body } = await at('', { method: 'HEAD' });
    expect([status, body.length]).toEqual([200, 0]);
  });
});

describe('what is asked', () => {
  test('gives the files that were handed over, by ticket and never by path', async () => {
    const { body } = await ask('open-session', null);
    const { files } = REQUESTS['open-session'].answered.parse(JSON.parse(body.toString()));
    expect(files.map(({ fileName, role }) => [fileName, role])).toEqual([
      ['log of a firing.csv', 'log'],
    ]);
    expect(body.toString()).not.toContain('loopback-');
    const read = await ask('read-file', { ticket: files[0]?.ticket });
    expect(read.headers['content-type']).toBe('application/octet-stream');
    expect(read.body.toString()).toBe('time,°C\n');
  });

  test.each([
    ['a ticket that was not given', { ticket: 'A'.repeat(22) }],
    ['a name of the object', { ticket: '__proto__' }],
  ])('reads nothing for %s', async (_what, sent) => {
    const { status, body } = await ask('read-file', sent);
    expect(status).toBe(200);
    expect(JSON.parse(body.toString())).toEqual({
      refused: 'this file was not opened in this session',
    });
  });

  test.each([
    ['a path', { ticket: '../../etc/passwd' }],
    ['an absolute path', { ticket: '/etc/passwd' }],
    ['no ticket', {}],
    ['more than a ticket', { ticket: 'A', path: '/etc/passwd' }],
    ['nothing', null],
  ])('does not understand %s as a file', async (_what, sent) => {
    expect((await ask('read-file', sent)).status).toBe(400);
  });

  test('answers only what a browser has of its host', async () => {
    for (const name of [
      'save-file',
      'open-logs',
      'copy-text',
      'gone',
      '',
      '__proto__',
      '../leave',
    ]) {
      expect((await ask(name, null)).status, name).toBe(404);
    }
  });

  test('is JSON that says so, and short', async () => {
    const type = { 'content-type': 'text/plain' };
    expect((await ask('read-file', { ticket: await ticketOfTheLog() }, type)).status).toBe(400);
    const origin = new URL(server.address).origin;
    const headers = { origin, 'content-type': 'application/json' };
    const send = (body: string) => at('ask/open-session', { method: 'POST', headers, body });
    expect((await send('{')).status).toBe(400);
    expect((await send(`null${' '.repeat(70_000)}`)).status).toBe(400);
    expect((await send('null')).status).toBe(200);
  });

  test('keeps preferences only as the contract has them', async () => {
    const good = { unit: 'F', theme: 'dark', textPercent: 150, singleKeys: false };
    expect((await ask('keep-preferences', { ...good, unit: 'K' })).status).toBe(400);
    expect((await ask('keep-preferences', { ...good, textPercent: 1000 })).status).toBe(400);
    expect((await ask('keep-preferences', { ...good, singleKeys: 'no' })).status).toBe(400);
    expect((await ask('keep-preferences', good)).body.toString()).toBe('null');
    expect(server.kept).toEqual([good]);
  });
});

describe('every answer', () => {
  test('bears a policy without unsafe-*, is not kept, and may not be framed or guessed at', async () => {
    const answers = [
      await at(''),
      await at('assets/main.js'),
      await at('gone'),
      await visit(server.address, '/'),
      await at('', { method: 'PUT' }),
      await at('', { headers: { host: 'evil.example' } }),
      await ask('open-session', null),
      await ask('read-file', { ticket: await ticketOfTheLog() }),
      await ask('read-file', null),
    ];
    for (const { headers } of answers) {
      const policy = headers['content-security-policy'] ?? '';
      expect(policy).toContain("default-src 'none'");
      expect(policy).toContain("frame-ancestors 'none'");
      expect(policy).not.toMatch(/unsafe-|\*|https?:|data:/);
      expect(headers['cache-control']).toBe('no-store');
      expect(headers['x-content-type-options']).toBe('nosniff');
      expect(headers['referrer-policy']).toBe('no-referrer');
      expect(headers['cross-origin-resource-policy']).toBe('same-origin');
      expect(headers['access-control-allow-origin']).toBeUndefined();
      expect(headers['set-cookie']).toBeUndefined();
    }
  });
});

test('listens on 127.0.0.1 and on no other address of the machine', async () => {
  const { hostname, port } = new URL(server.address);
  expect(hostname).toBe('127.0.0.1');
  const others = Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .map(({ address }) => address)
    .filter((address) => address !== hostname);
  const isOpen = (host: string): Promise<boolean> =>
    new Promise((resolve) => {
      const socket = connect({ host, port: Number(port), timeout: 1000 });
      const answer = (open: boolean) => () => {
        socket.destroy();
        resolve(open);
      };
      socket.on('connect', answer(true)).on('error', answer(false)).on('timeout', answer(false));
    });
  expect(await isOpen(hostname)).toBe(true);
  for (const host of [...others, '127.0.0.2']) expect(await isOpen(host), host).toBe(false);
});
