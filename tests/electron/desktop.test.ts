import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { EVENT_NAMES, REQUEST_NAMES, type Bridge } from '../../electron/host/message-names.ts';
import { HANDED_ON, SHOWN } from '../../electron/host/shown.ts';
import { launchBrowser, settled } from '../e2e/window.ts';
import { chooseInMenu, menuEntries } from './double/control.ts';
import {
  askRaw,
  heading,
  LOG,
  OTHER,
  programs,
  SCHEDULE,
  type Programs,
} from './double/programs.ts';

let browser: Browser;
let started: Programs;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());
beforeEach(() => {
  started = programs(browser);
});
afterEach(() => started.end());

describe('the window', () => {
  test('comes up on the files of the command line, and says so', async () => {
    const { desktop, page } = await started.onSample();
    await heading(page, 'underfired-glaze.txt').waitFor();
    expect(desktop.said()).toBe(`${SHOWN}\n`);
    const { letOut, refused } = await desktop.shownWindow();
    expect([letOut, refused]).toEqual([[], []]);
  });

  test('asks for everything that keeps its page apart', async () => {
    const desktop = await started.launch();
    const { options } = await desktop.shownWindow();
    expect(options.webPreferences).toMatchObject({
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      webviewTag: false,
    });
    expect(desktop.control.isSandboxed).toBe(true);
    expect(desktop.control.switches).toContain('host-resolver-rules=MAP * ~NOTFOUND');
    const { webRTCPolicy } = (await desktop.shownWindow()).webContents;
    expect(webRTCPolicy).toBe('disable_non_proxied_udp');
    expect(desktop.control.switches).toContain(`force-webrtc-ip-handling-policy=${webRTCPolicy}`);
  });

  test('has a page without Node, with the contract and nothing else of Electron', async () => {
    const { page } = await started.onSample();
    const seen = await page.evaluate(() => {
      const { afterfire } = window as unknown as { afterfire: Bridge };
      const bridge = [Object.keys(afterfire.ask).sort(), Object.keys(afterfire.on).sort()];
      const node = ['process', 'require', 'Buffer', 'module', 'global'].filter(
        (name) => name in window,
      );
      return { bridge, node };
    });
    expect(seen.node).toEqual([]);
    expect(seen.bridge).toEqual([[...REQUEST_NAMES].sort(), [...EVENT_NAMES].sort()]);
  });

  test('is where it was when it was closed', async () => {
    const first = await started.launch();
    const window = await first.shownWindow();
    window.setBounds({ x: 200, y: 120, width: 1000, height: 700 });
    window.close();
    expect(first.control.hasQuit).toBe(true);
    const again = await (await started.launch()).shownWindow();
    expect(again.options).toMatchObject({ x: 200, y: 120, width: 1000, height: 700 });
  });
});

test('schedules are kept from one program to the next, and forgotten', async () => {
  const schedule = {
    ...{ name: 'Mine', cone: '6' },
    segments: [{ rateCPerHour: 100, minutes: null, targetC: 1222, holdMinutes: 10 }],
  };
  const first = await started.onSample();
  const kept = await askRaw(first.page, 'keep-schedule', { schedule, insteadOf: null });
  expect(JSON.parse(kept)).toEqual([schedule]);
  const unnamed = { schedule: { ...schedule, name: '' }, insteadOf: null };
  expect(await askRaw(first.page, 'keep-schedule', unnamed)).toContain('Error');
  await first.desktop.end();
  const { page } = await started.onSample();
  const begun = JSON.parse(await askRaw(page, 'open-session', null)) as { schedules: unknown };
  expect(begun.schedules).toEqual([schedule]);
  expect(await askRaw(page, 'forget-schedule', { name: 'Mine' })).toBe('[]');
});

describe('files', () => {
  test('are chosen in native dialogs, and none where the person changes their mind', async () => {
    const desktop = await started.launch();
    const page = await desktop.page();
    desktop.control.answers.open.push([], [LOG], [SCHEDULE]);
    expect(await askRaw(page, 'open-logs', null)).toBe('[]');
    chooseInMenu('open-logs');
    await heading(page, 'underfired-glaze.txt').waitFor();
    chooseInMenu('open-schedule');
    await page.getByText('Stoneware glaze with hold').first().waitFor();
    expect(desktop.control.recent).toEqual([LOG, SCHEDULE]);
  });

  test('of a second start are opened in this window, which comes to the front', async () => {
    const { desktop, page } = await started.onSample();
    const window = await desktop.shownWindow();
    window.minimize();
    const second = { logs: [OTHER], schedule: null };
    desktop.electron.app.emit('second-instance', {}, [], started.folder, second);
    await heading(page, 'good-bisque.csv').waitFor();
    expect([window.isMinimized(), window.timesFocused]).toEqual([false, 1]);
    expect(desktop.electron.BrowserWindow.getAllWindows()).toHaveLength(1);
  });

  test('of a second start are refused where they are anything but names', async () => {
    const { desktop, page } = await started.onSample();
    for (const told of [null, 'x', { logs: [1], schedule: null }, { logs: [OTHER] }]) {
      desktop.electron.app.emit('second-instance', {}, [], started.folder, told);
    }
    expect(await heading(page, 'underfired-glaze.txt').count()).toBe(1);
  });

  test('that the system hands over are opened, a schedule as a schedule', async () => {
    const desktop = await started.launch({ args: [LOG] });
    const page = await desktop.page();
    await settled(page);
    const event = { preventDefault: vi.fn() };
    desktop.electron.app.emit('open-file', event, SCHEDULE);
    await page.getByText('Stoneware glaze with hold').first().waitFor();
    await heading(page, 'underfired-glaze.txt').waitFor();
    expect(event.preventDefault).toHaveBeenCalledOnce();
  });

  test('that are handed over before there is a window wait for it', async () => {
    const desktop = await started.launch();
    desktop.electron.app.emit('open-file', { preventDefault: () => undefined }, OTHER);
    await heading(await desktop.page(), 'good-bisque.csv').waitFor();
    expect(desktop.electron.BrowserWindow.getAllWindows()).toHaveLength(1);
  });

  test('that are handed over while the page has stopped working are there when it starts again', async () => {
    const { desktop } = await started.onSample();
    const window = await desktop.shownWindow();
    const page = await desktop.page();
    desktop.control.answers.message.push(0);
    window.webContents.emit('render-process-gone', {}, { reason: 'crashed' });
    desktop.electron.app.emit('open-file', { preventDefault: () => undefined }, OTHER);
    await heading(page, 'good-bisque.csv').waitFor();
    expect(window.timesFocused).toBe(1);
  });

  test('that a page was told of and never read are there for the page after it, once', async () => {
    const { desktop, page } = await started.onSample();
    const window = await desktop.shownWindow();
    // What is sent to a page that is going reaches nobody.
    window.webContents.page = undefined;
    desktop.electron.app.emit('open-file', { preventDefault: () => undefined }, OTHER);
    window.webContents.page = page;
    window.reload();
    await heading(page, 'good-bisque.csv').waitFor();
    await settled(page);
    window.reload();
    await page.getByRole('heading', { name: 'Drop the log of a firing here' }).waitFor();
  });

  test('of this start go to the instance that is running, if there is one', async () => {
    const desktop = await started.launch({ args: [LOG, '--schedule', SCHEDULE], isFirst: false });
    expect(desktop.control.hasQuit).toBe(true);
    expect(desktop.said()).toBe(`${HANDED_ON}\n`);
    expect(desktop.control.lockData).toEqual({ logs: [LOG], schedule: SCHEDULE });
    expect(desktop.electron.BrowserWindow.getAllWindows()).toEqual([]);
  });

  test('are saved where the person says, or not at all', async () => {
    const { desktop, page } = await started.onSample();
    const path = join(started.folder, 'saved.html');
    desktop.control.answers.save.push(path);
    chooseInMenu('save-report');
    await vi.waitFor(() => {
      expect(readFileSync(path, 'utf8')).toMatch(/^<!doctype html>/);
    });
    const file = { fileName: 'a.csv', kind: 'text/csv', text: 'a' };
    desktop.control.answers.save.push(join(started.folder, 'b.csv'));
    expect(await askRaw(page, 'save-file', file)).toBe('{"outcome":"saved","fileName":"b.csv"}');
    expect(await askRaw(page, 'save-file', file)).toBe('{"outcome":"cancelled"}');
    writeFileSync(join(started.folder, 'a-file'), '');
    desktop.control.answers.save.push(join(started.folder, 'a-file', 'a.csv'));
    expect(await askRaw(page, 'save-file', file)).toContain('"outcome":"failed"');
  });
});

describe('the menu', () => {
  test('opens the window where it was closed (macOS), and does there what was chosen', async () => {
    const desktop = await started.launch();
    (await desktop.shownWindow()).close();
    expect(desktop.electron.BrowserWindow.getAllWindows()).toEqual([]);
    desktop.control.answers.open.push([LOG]);
    chooseInMenu('open-logs');
    await heading(await desktop.page(), 'underfired-glaze.txt').waitFor();
    expect(desktop.control.recent).toEqual([LOG]);
    expect(desktop.electron.BrowserWindow.getAllWindows()).toHaveLength(1);
  });

  test('passes choices on, and follows what is set in the page', async () => {
    const { page } = await started.onSample();
    const isChecked = (id: string) => menuEntries().find((entry) => entry.id === id)?.checked;
    expect([isChecked('unit-c'), isChecked('unit-f')]).toEqual([true, false]);
    chooseInMenu('unit-f');
    await page.getByText('°F').first().waitFor();
    await vi.waitFor(() => {
      expect([isChecked('unit-c'), isChecked('unit-f')]).toEqual([false, true]);
    });
  });

  test('copies the verdict to the system’s clipboard', async () => {
    const { desktop } = await started.onSample();
    chooseInMenu('copy-verdict');
    await vi.waitFor(() => {
      expect(desktop.control.clipboard.join()).toContain('cone');
    });
  });

  test('keeps what was set for the next start, theme and all', async () => {
    const first = await started.onSample();
    chooseInMenu('theme-dark');
    await vi.waitFor(() => {
      expect(first.desktop.electron.nativeTheme.themeSource).toBe('dark');
    });
    await first.desktop.end();
    const again = await started.launch();
    await again.page();
    expect(again.electron.nativeTheme.themeSource).toBe('dark');
  });
});

test('a page that has stopped working is offered again', async () => {
  const { desktop, page } = await started.onSample();
  const window = await desktop.shownWindow();
  desktop.control.answers.message.push(0, 1);
  window.webContents.emit('render-process-gone', {}, { reason: 'crashed' });
  await page.getByRole('button', { name: 'good-bisque.csv' }).waitFor();
  window.webContents.emit('render-process-gone', {}, { reason: 'crashed' });
  await vi.waitFor(() => {
    expect(desktop.electron.BrowserWindow.getAllWindows()).toEqual([]);
  });
  expect(desktop.control.dialogs.map(({ kind }) => kind)).toEqual(['message', 'message']);
});
