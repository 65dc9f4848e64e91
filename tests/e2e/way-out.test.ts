import { createSocket } from 'node:dgram';
import { expect, test } from 'vitest';
import { overBothHosts } from './hosts.ts';
import { trySample } from './sheet.ts';

/** Somebody on this machine who would hear a page that looks for its address by WebRTC (RFC 8489). */
const listener = async () => {
  const socket = createSocket('udp4');
  let packets = 0;
  socket.on('message', () => {
    packets += 1;
  });
  await new Promise<void>((done) => socket.bind(0, '127.0.0.1', done));
  return { port: socket.address().port, heard: () => packets, end: () => socket.close() };
};

/** Long enough for a browser to have asked the first time (from memory: within 50 ms). */
const GATHERING_MS = 700;

overBothHosts((window) => {
  test('the page sends nothing by WebRTC, to which its policy does not reach', async () => {
    const { page } = window();
    const { port, heard, end } = await listener();
    const outcome = await page.evaluate(
      async ([to, ms]) => {
        try {
          const connection = new RTCPeerConnection({
            iceServers: [{ urls: `stun:127.0.0.1:${to}` }],
          });
          connection.createDataChannel('out');
          await connection.setLocalDescription(await connection.createOffer());
          await new Promise((resolve) => setTimeout(resolve, ms));
          return 'sent';
        } catch (cause) {
          return String(cause);
        }
      },
      [port, GATHERING_MS] as const,
    );
    end();
    expect(outcome).toBe('ReferenceError: RTCPeerConnection is not defined');
    expect(heard()).toBe(0);
  });

  test('neither the page nor its workers have another way', async () => {
    const { page } = window();
    await trySample(page, 'good-bisque.csv');
    const ways = ['RTCPeerConnection', 'webkitRTCPeerConnection', 'WebTransport'];
    const left = (names: readonly string[]) => names.filter((name) => name in globalThis);
    expect(page.workers()).toHaveLength(1);
    expect(await page.evaluate(left, ways)).toEqual([]);
    for (const worker of page.workers()) expect(await worker.evaluate(left, ways)).toEqual([]);
  });
});
