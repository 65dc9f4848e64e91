import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { launchBrowser } from '../e2e/window.ts';
import type { BrowserWindow } from './double/browser-window.ts';
import type { Desktop } from './double/launch.ts';
import { askRaw, heading, programs, type Programs } from './double/programs.ts';

let browser: Browser;
let started: Programs;
let desktop: Desktop;
let page: Page;
let shown: BrowserWindow;
beforeAll(async () => {
  browser = await launchBrowser();
  started = programs(browser);
  ({ desktop, page } = await started.onSample());
  shown = await desktop.shownWindow();
});
afterAll(async () => {
  await started.end();
  await browser.close();
});

describe('a page that has turned on its host', () => {
  test.each([
    ['read-file', { ticket: '../../etc/passwd' }],
    ['read-file', { ticket: 'A', path: '/etc/passwd' }],
    ['read-file', null],
    ['save-file', { fileName: '../../x.html', kind: 'text/html', text: '' }],
    ['save-file', { fileName: 'x.exe', kind: 'application/octet-stream', text: '' }],
    ['open-logs', { path: '/etc' }],
    ['keep-preferences', { unit: 'K', theme: 'dark', textPercent: 100 }],
    ['copy-text', { text: 1 }],
  ])('is not understood: %s %j', async (name, sent) => {
    expect(await askRaw(page, name, sent)).toMatch(/Error invoking remote method/);
    expect(desktop.control.dialogs).toEqual([]);
  });

  test('reads nothing by a ticket that it was not given', async () => {
    expect(await askRaw(page, 'read-file', { ticket: 'A'.repeat(22) })).toContain('refused');
  });

  test('is not answered from a frame, nor from another address', async () => {
    const { invoked } = await import('./double/ipc-main.ts');
    const frame = (url: string, parent: unknown = null) =>
      ({ url: () => url, parentFrame: () => parent }) as Parameters<typeof invoked>[3];
    const ours = 'https://afterfire.test/';
    const ask = (from: ReturnType<typeof frame>) => invoked('open-session', 'null', {}, from);
    expect(await ask(frame(ours))).toContain('preferences');
    expect(await ask(frame(ours, frame(ours)))).toContain('not a page of this program');
    for (const url of ['https://evil.example/', 'about:blank', `${ours.slice(0, -1)}.evil/`]) {
      expect(await ask(frame(url)), url).toContain('not a page of this program');
    }
  });

  test('goes nowhere else', async () => {
    for (const url of [
      'https://evil.example/',
      'http://127.0.0.1:1/',
      'https://afterfire.test/x',
    ]) {
      await page.evaluate((to) => {
        location.assign(to);
      }, url);
      await vi.waitFor(() => {
        expect(shown.refused).toContain(url);
      });
    }
    await heading(page, 'underfired-glaze.txt').waitFor();
    expect(shown.webContents.getURL()).toBe('app://afterfire/');
    expect(shown.letOut).toEqual([]);
  });

  test('opens no second window by a middle click', async () => {
    await page.evaluate(() => {
      const link = document.createElement('a');
      link.href = 'https://afterfire.test/second';
      link.textContent = 'a second window';
      link.style.cssText = 'position: fixed; inset: 0 auto auto 0; z-index: 9';
      document.body.append(link);
    });
    const link = page.getByRole('link', { name: 'a second window' });
    const opened = page.context().waitForEvent('page');
    await link.click({ button: 'middle' });
    await (await opened).waitForEvent('close');
    expect(page.context().pages()).toHaveLength(1);
    await link.evaluate((it) => {
      it.remove();
    });
  });

  test('opens no second window', async () => {
    await page.evaluate(() => {
      window.open('about:blank');
    });
    await vi.waitFor(() => {
      expect(page.context().pages()).toHaveLength(1);
    });
  });

  test('reaches nothing over the network, even without its policy', async () => {
    const byPolicy = await page.evaluate(() =>
      fetch('https://evil.example/data').catch((error: unknown) => String(error)),
    );
    expect(byPolicy).toBe('TypeError: Failed to fetch');
    // The policy stopped it before the main process saw it; that stops what has no policy too.
    expect(shown.refused).not.toContain('https://evil.example/data');
    const { defaultSession } = desktop.electron.session;
    const aborted: string[] = [];
    const route = { abort: (why: string) => Promise.resolve(aborted.push(why)) };
    const request = { url: () => 'https://evil.example/', method: () => 'GET' };
    const serve = defaultSession.serve as unknown as (...of: unknown[]) => Promise<string>;
    expect(await serve(route, request)).toBe('refused');
    expect(aborted).toEqual(['blockedbyclient']);
  });

  test('runs no code that is not the program’s own', async () => {
    const outcome = await page.evaluate(async () => {
      const broken: string[] = [];
      document.addEventListener('securitypolicyviolation', ({ effectiveDirective }) =>
        broken.push(effectiveDirective),
      );
      const script = document.createElement('script');
      script.textContent = 'window.ranInline = true';
      document.body.append(script);
      const style = document.createElement('style');
      style.textContent = 'body { display: none }';
      document.head.append(style);
      // By and by: what the test itself runs is let through by the tools that run it.
      const madeFromText = await new Promise((resolve) =>
        setTimeout(() => {
          try {
            (0, eval)('1');
            resolve(true);
          } catch {
            resolve(false);
          }
        }),
      );
      await new Promise((resolve) => setTimeout(resolve, 50));
      return { broken, madeFromText, ranInline: 'ranInline' in window };
    });
    expect(outcome).toEqual({
      broken: ['script-src-elem', 'style-src-elem', 'script-src'],
      madeFromText: false,
      ranInline: false,
    });
  });

  test('is granted no permission and no device, and downloads nothing', async () => {
    const { defaultSession } = desktop.electron.session;
    for (const permission of ['geolocation', 'media', 'notifications', 'clipboard-read', 'midi']) {
      const refused = { request: false, check: false, device: false };
      expect(defaultSession.permits(permission), permission).toEqual(refused);
    }
    expect(defaultSession.isSpellChecked).toBe(false);
    await Promise.all([
      page.waitForEvent('download'),
      page.evaluate(() => {
        const link = document.createElement('a');
        link.href = URL.createObjectURL(new Blob(['x']));
        link.download = 'x.txt';
        link.click();
      }),
    ]);
    expect(shown.downloads).toEqual([{ isPrevented: true }]);
  });
});
