import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { userFolder } from '../../electron/host/user-folder.ts';
import { launchBrowser, SAMPLES, settled } from './window.ts';

const START = join(import.meta.dirname, '../../dist/cli/start.js');

let browser: Browser;
let home: string;
let child: ChildProcess | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());
beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'start-'));
});
afterEach(() => {
  child?.kill();
  rmSync(home, { recursive: true, force: true });
});

/** What `npm start` runs once it has built, on a machine of its own without a screen. */
const start = async (...args: string[]) => {
  const env = { PATH: process.env['PATH'], HOME: home, APPDATA: home, XDG_CONFIG_HOME: home };
  const started = spawn(process.execPath, [START, ...args], { env, cwd: SAMPLES });
  child = started;
  let [out, error] = ['', ''];
  const ended = new Promise<number | null>((resolve) => started.once('close', resolve));
  started.stderr.on('data', (chunk: Buffer) => (error += chunk.toString()));
  const address = await new Promise<string>((resolve) => {
    started.stdout.on('data', (chunk: Buffer) => {
      out += chunk.toString();
      const [found] = /http:\/\/127\.0\.0\.1:\d+\/[\w-]+\/(?=\n)/.exec(out) ?? [];
      if (found !== undefined) resolve(found);
    });
    void ended.then(() => {
      resolve('');
    });
  });
  return { process: started, address, ended, said: () => ({ out, error }) };
};

const visit = async (address: string) => {
  const page = await browser.newPage();
  await page.goto(address);
  await settled(page);
  return page;
};

describe('npm start, in a browser', () => {
  test('shows the bundled sample, says its verdict, and ends when the page is closed', async () => {
    const started = await start('--browser');
    const page = await visit(started.address);
    await page.getByRole('heading', { name: 'underfired-glaze.txt' }).waitFor();
    await page.getByText('Stoneware glaze with hold').first().waitFor();
    expect(started.said().out).toContain('Afterfire: underfired-glaze.txt');
    expect(started.said().error).toBe('');
    await page.reload();
    await settled(page);
    await page.close();
    expect(await started.ended).toBe(0);
  });

  test('shows the firing that is named, from where the person stands', async () => {
    const started = await start('decal.txt', '--schedule', 'decal.schedule.csv', '--browser');
    const page = await visit(started.address);
    await page.getByRole('heading', { name: 'decal.txt' }).waitFor();
    await page.close();
    expect(await started.ended).toBe(0);
  });

  test('is told of Ctrl-C, and keeps what is open', async () => {
    const started = await start('--browser');
    const page = await visit(started.address);
    started.process.kill('SIGINT');
    await page.getByText('has been ended where it was started').waitFor();
    await page.getByRole('heading', { name: 'underfired-glaze.txt' }).waitFor();
    expect(await started.ended).toBe(130);
    await page.close();
  });

  test('keeps what was set for the next start', async () => {
    const first = await start('--browser');
    const page = await visit(first.address);
    await page.getByRole('button', { name: 'Degrees Fahrenheit' }).click();
    await page.close();
    await first.ended;
    const { platform } = process;
    const folder = userFolder({ platform, home, env: { APPDATA: home, XDG_CONFIG_HOME: home } });
    expect(readFileSync(join(folder, 'preferences.json'), 'utf8')).toContain('"unit": "F"');
    const again = await start('--browser');
    const nextPage = await visit(again.address);
    await nextPage.getByText('°F').first().waitFor();
    expect(await nextPage.locator('.verdict').innerText()).toContain('°F');
    await nextPage.close();
    await again.ended;
  });
});
