import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { HOSTS } from './hosts.ts';
import { launchBrowser } from './window.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** What every test over a host rests on: that it would be seen if the window misbehaved. */
describe.each(HOSTS)('over $name it is noticed', ({ open }) => {
  test('if the page complains', async () => {
    const { page, problems, close } = await open(browser, {});
    await page.evaluate(() => {
      console.error('an error');
      console.warn('a warning');
      setTimeout(() => {
        throw new Error('a throw');
      });
    });
    await vi.waitFor(() => {
      expect([...problems()].sort()).toEqual(['a throw', 'a warning', 'an error']);
    });
    await close();
  });

  test('if its policy has to stop something', async () => {
    const { page, problems, close } = await open(browser, {});
    await page.evaluate(() => fetch('https://elsewhere.example/').catch(() => null));
    await vi.waitFor(() => {
      expect(problems().join()).toContain('Content Security Policy');
    });
    await close();
  });

  test.each(['https://elsewhere.example/', 'http://127.0.0.1:9/'])(
    'if anything but the host is asked: %s',
    async (address) => {
      const { page, strayRequests, close } = await open(browser, { bypassCSP: true });
      await page.evaluate((to) => fetch(to).catch(() => null), address);
      await vi.waitFor(() => {
        expect(strayRequests()).toContain(address);
      });
      await close();
    },
  );

  test('if it tries to reach another machine by WebRTC', async () => {
    const { page, problems, close } = await open(browser, {});
    // The page has it no more; a frame has what the page had before its own scripts.
    await page.evaluate(() => {
      const frame = document.body.appendChild(document.createElement('iframe'));
      const { RTCPeerConnection: Connection } = frame.contentWindow as unknown as Window &
        typeof globalThis;
      new Connection().close();
    });
    await vi.waitFor(() => {
      expect(problems()).toEqual(['a connection by WebRTC was tried']);
    });
    await close();
  });

  test('if a worker of the page asks anything but the host', async () => {
    const { page, strayRequests, close } = await open(browser, { bypassCSP: true });
    await page.evaluate(() => {
      const text = `fetch('https://elsewhere.example/').catch(() => null)`;
      Object.assign(window, { worker: new Worker(URL.createObjectURL(new Blob([text]))) });
    });
    await vi.waitFor(() => {
      expect(strayRequests()).toContain('https://elsewhere.example/');
    });
    await close();
  });
});
