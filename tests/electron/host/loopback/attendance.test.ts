import { request, type ClientRequest } from 'node:http';
import { afterEach, describe, expect, test } from 'vitest';
import { aServer, QUICK, type AServer } from './a-server.ts';
import { visit } from './visit.ts';

let server: AServer | undefined;
afterEach(() => {
  server?.stop();
});

interface OpenPage {
  readonly text: () => string;
  readonly close: () => void;
  readonly closed: Promise<void>;
}

/** Holds a page's stream of events open. */
const openPage = ({ address }: AServer): Promise<OpenPage> =>
  new Promise((resolve, reject) => {
    const sent: ClientRequest = request(
      new URL('events', address),
      { agent: false },
      (response) => {
        let text = '';
        response.on('data', (chunk: Buffer) => (text += chunk.toString()));
        response.on('error', () => undefined);
        const closed = new Promise<void>((done) => response.once('close', done));
        resolve({ text: () => text, close: () => sent.destroy(), closed });
      },
    );
    sent.on('error', reject).end();
  });

const leave = ({ address, token }: AServer) =>
  visit(address, `/${token}/leave`, {
    method: 'POST',
    headers: { origin: new URL(address).origin },
  });

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** How long the server goes on, or null if it has not ended within the limit. */
const lastsMs = async ({ ended }: AServer, limitMs: number): Promise<number | null> => {
  const from = performance.now();
  const end = await Promise.race([ended.then(() => performance.now()), wait(limitMs)]);
  return typeof end === 'number' ? end - from : null;
};

describe('the loopback server', () => {
  test('waits for the first page as long as it takes', async () => {
    server = await aServer(QUICK);
    expect(await lastsMs(server, QUICK.afterLossMs * 2)).toBeNull();
  });

  test('ends soon after the page has said that it leaves, in whichever order', async () => {
    server = await aServer(QUICK);
    const page = await openPage(server);
    expect((await leave(server)).status).toBe(204);
    page.close();
    expect(await lastsMs(server, QUICK.afterLossMs)).toBeLessThan(QUICK.afterLossMs);

    const another = await aServer(QUICK);
    (await openPage(another)).close();
    await leave(another);
    expect(await lastsMs(another, QUICK.afterLossMs)).toBeLessThan(QUICK.afterLossMs);
    another.stop();
  });

  test('waits longer for a page that was lost without a word', async () => {
    server = await aServer(QUICK);
    (await openPage(server)).close();
    const lasted = await lastsMs(server, QUICK.afterLossMs * 5);
    expect(lasted).toBeGreaterThan(QUICK.afterLossMs * 0.9);
  });

  test('goes on where a reload brings the page back, or another page is open', async () => {
    server = await aServer(QUICK);
    const first = await openPage(server);
    await leave(server);
    first.close();
    const reloaded = await openPage(server);
    const second = await openPage(server);
    await leave(server);
    reloaded.close();
    expect(await lastsMs(server, QUICK.afterLossMs * 2)).toBeNull();
    second.close();
    expect(await lastsMs(server, QUICK.afterLossMs * 5)).not.toBeNull();
  });

  test('tells its pages when it ends by itself, and answers no more', async () => {
    server = await aServer(QUICK);
    const page = await openPage(server);
    await wait(QUICK.heartbeatMs * 3);
    expect(page.text()).toMatch(/^: welcome\n\n(: still here\n\n)+$/);
    server.close();
    await server.ended;
    await page.closed;
    expect(page.text()).toMatch(/event: gone\ndata:\n\n$/);
    await expect(visit(server.address, '/')).rejects.toThrow('ECONNREFUSED');
  });

  test('does not count who has no token as a page', async () => {
    server = await aServer(QUICK);
    await visit(server.address, '/wrong/events');
    await visit(server.address, '/wrong/leave', {
      method: 'POST',
      headers: { origin: new URL(server.address).origin },
    });
    expect(await lastsMs(server, QUICK.afterLossMs * 2)).toBeNull();
  });
});
