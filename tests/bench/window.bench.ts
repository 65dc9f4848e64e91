import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { analyze } from '../../core/analyze.ts';
import { writeJsonSchedule } from '../../core/schedule/write-schedule.ts';
import {
  dropFiles,
  launchBrowser,
  openWindow,
  sampleFile,
  settled,
  textFile,
} from '../e2e/window.ts';
import { median, type Bench, type Table } from './bench.ts';
import { BIG_LOG_SCHEDULE, bigLog } from './big-log.ts';

const ROWS_OF_12_H = 12 * 3600;
const DROPS = 6;
const STEPS = 40;
const FIRINGS = 200;
const FIRINGS_A_ROW = 50;

const SCHEDULE_FILE = textFile('bench.schedule.json', writeJsonSchedule(BIG_LOG_SCHEDULE, 'C'));

/** Notes when the worker is asked, when it answers and when each stage begins, without changing it. */
const watchWorkers = async (page: Page): Promise<void> => {
  // The runner marks functions with names by a helper of its own, which a page does not have.
  await page.addInitScript('globalThis.__name ??= (named) => named');
  await page.addInitScript(() => {
    const seen: [string, number][] = [];
    Object.assign(window, { seen });
    const Plain = window.Worker;
    window.Worker = class extends Plain {
      constructor(address: string | URL, options?: WorkerOptions) {
        super(address, options);
        this.addEventListener(
          'message',
          ({ data }: MessageEvent<{ kind: string; stage?: string }>) =>
            seen.push([data.stage ?? data.kind, performance.now()]),
        );
      }

      override postMessage(message: unknown): void {
        seen.push(['asked', performance.now()]);
        super.postMessage(message);
      }
    };
  });
};

interface GivenTimes {
  readonly toBytes: number;
  readonly reading: number;
  readonly judging: number;
  readonly drawing: number;
  readonly all: number;
  readonly askedAt: number;
  readonly answeredAt: number;
}

/** From when files are given to the frame in which the verdict and the curve have been drawn. */
const timeGiven = async (page: Page, give: () => Promise<void>): Promise<GivenTimes> => {
  await page.evaluate(() => {
    const state = window as unknown as { seen: [string, number][]; drawn: Promise<number> };
    state.seen.length = 0;
    const before = document.querySelector('.sheet');
    state.drawn = new Promise((resolve) => {
      // Dropped files are given with the event; chosen ones from here on.
      state.seen.push(['given', performance.now()]);
      addEventListener('drop', () => (state.seen[0] = ['given', performance.now()]), {
        capture: true,
        once: true,
      });
      const look = () => {
        const sheet = document.querySelector('.sheet');
        const isDrawn =
          sheet !== null && sheet !== before && sheet.querySelector('canvas') !== null;
        // The frame after the one in which it was put on the page has been painted.
        if (isDrawn) requestAnimationFrame(() => resolve(performance.now()));
        else requestAnimationFrame(look);
      };
      requestAnimationFrame(look);
    });
  });
  await give();
  return page.evaluate(async () => {
    const state = window as unknown as { seen: [string, number][]; drawn: Promise<number> };
    const drawn = await state.drawn;
    const at = (what: string): number => state.seen.find(([name]) => name === what)?.[1] ?? NaN;
    return {
      toBytes: at('asked') - at('given'),
      reading: at('judging') - at('asked'),
      judging: at('answered') - at('judging'),
      drawing: drawn - at('answered'),
      all: drawn - at('given'),
      askedAt: at('asked'),
      answeredAt: at('answered'),
    };
  });
};

const openWatched = async (browser: Browser) => {
  const window = await openWindow(browser, { viewport: { width: 1600, height: 1000 } });
  await watchWorkers(window.page);
  await window.page.reload();
  await window.page.locator('.bar').waitFor();
  return window;
};

const dropTable = async (browser: Browser): Promise<Table> => {
  const bytes = bigLog(ROWS_OF_12_H);
  const core: number[] = [];
  for (let round = 0; round < DROPS; round++) {
    const begin = performance.now();
    analyze(bytes, 'bench.csv', { schedule: BIG_LOG_SCHEDULE });
    core.push(performance.now() - begin);
  }
  const window = await openWatched(browser);
  const times: GivenTimes[] = [];
  for (let drop = 0; drop < DROPS; drop++) {
    const name = `bench-${drop}.csv`;
    const files = [{ name, bytes }, SCHEDULE_FILE];
    times.push(await timeGiven(window.page, () => dropFiles(window.page, files)));
  }
  await window.close();
  const row = (what: string, part: (taken: GivenTimes) => number) => {
    const [first, ...later] = times.map(part);
    return [what, first ?? NaN, median(later)];
  };
  const [first = NaN, ...later] = core;
  const allowed = (taken: number): number => 2 * taken + 300;
  return {
    title: 'A log of 43 200 rows (12 h at 1 Hz) and its schedule, from drop to drawn verdict, ms',
    columns: ['part', 'the first', 'later ones'],
    rows: [
      row('file to bytes, hashed, told from a schedule', ({ toBytes }) => toBytes),
      row('taken in, read and repaired, in the worker', ({ reading }) => reading),
      row('judged, in the worker, and sent', ({ judging }) => judging),
      row('drawn: verdict, curve, every panel', ({ drawing }) => drawing),
      row('from drop to drawn', ({ all }) => all),
      ["core's own analysis, in Node", first, median(later)],
      ['allowed: twice that and 300 ms', allowed(first), allowed(median(later))],
    ],
    notes: [`The median of ${DROPS - 1} later ones; the first runs on code not yet compiled.`],
  };
};

interface Frame {
  readonly at: number;
  readonly gap: number;
}

/** Notes how far apart the frames come, until they are asked for. */
const watchFrames = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const watch = { frames: [] as { at: number; gap: number }[], isOver: false };
    Object.assign(window, { watch });
    let last = performance.now();
    const tick = () => {
      const at = performance.now();
      watch.frames.push({ at, gap: at - last });
      last = at;
      if (!watch.isOver) requestAnimationFrame(tick);
    };
    requestAnimationFrame(tick);
  });

const framesSeen = (page: Page): Promise<Frame[]> =>
  page.evaluate(() => {
    const { watch } = window as unknown as { watch: { frames: Frame[]; isOver: boolean } };
    watch.isOver = true;
    return watch.frames.slice(1);
  });

const framesRow = (what: string, frames: readonly Frame[]): (string | number)[] => {
  const gaps = frames.map(({ gap }) => gap);
  const late = gaps.filter((gap) => gap > 50).length;
  return [what, gaps.length, median(gaps), Math.max(...gaps), late];
};

const zoomTable = async (browser: Browser): Promise<Table> => {
  const rows = 1_000_000;
  const window = await openWatched(browser);
  const { page } = window;
  page.setDefaultTimeout(120_000);
  const hold = await page.context().newCDPSession(page);
  const folder = mkdtempSync(path.join(tmpdir(), 'bench-'));
  const file = path.join(folder, 'big.csv');
  writeFileSync(file, bigLog(rows));
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open a log' }).first().click(),
  ]);
  await watchFrames(page);
  // Chosen from the disk: a drop made by a script would leave its garbage in the page.
  const taken = await timeGiven(page, () => chooser.setFiles(file));
  rmSync(folder, { recursive: true });
  const whileRead = (await framesSeen(page)).filter(
    ({ at }) => at > taken.askedAt && at < taken.answeredAt,
  );
  await page.waitForTimeout(500);
  const box = await page.locator('#crosshair').boundingBox();
  if (!box) throw new Error('there is no curve');
  await page.mouse.move(box.x + box.width / 3, box.y + 120);
  const wheel = (deltaX: number, deltaY: number) => async () => {
    await hold.send('Input.dispatchMouseEvent', {
      type: 'mouseWheel',
      x: box.x + box.width / 3,
      y: box.y + 120,
      ...{ deltaX, deltaY },
    });
  };
  const moves: [string, () => Promise<void>][] = [
    ['closer, with the wheel', wheel(0, -30)],
    ['along', wheel(30, 0)],
    ['further off', wheel(0, 30)],
  ];
  const table = [framesRow('none: the log is being read', whileRead)];
  for (const [what, move] of moves) {
    await watchFrames(page);
    for (let step = 0; step < STEPS; step++) await move();
    table.push(framesRow(what, await framesSeen(page)));
  }
  await window.close();
  return {
    title: 'Moving about in a log of 1 000 000 rows: time from frame to frame, ms',
    columns: ['movement', 'frames', 'median', 'longest', 'over 50 ms'],
    rows: table,
    notes: [
      `The log was drawn ${Math.round(taken.all)} ms after it was chosen. No graphics processor.`,
    ],
  };
};

interface Memory {
  readonly heapMB: number;
  readonly allMB: number;
}

const memoryOf = async (page: Page): Promise<Memory> => {
  const session = await page.context().newCDPSession(page);
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  await session.detach();
  // Counts the worker too; the page is isolated from others, so the browser will tell.
  const bytes = await page.evaluate(async () => {
    const measured = performance as unknown as {
      measureUserAgentSpecificMemory?: () => Promise<{ bytes: number }>;
    };
    return (await measured.measureUserAgentSpecificMemory?.())?.bytes ?? NaN;
  });
  return { heapMB: usedSize / 1e6, allMB: bytes / 1e6 };
};

const memoryTable = async (browser: Browser): Promise<Table> => {
  const window = await openWindow(browser, { reducedMotion: 'reduce' });
  const { page } = window;
  const firings = ['overshoot', 'failing-couple'].map((stem) => [
    sampleFile(`${stem}.csv`),
    sampleFile(`${stem}.schedule.json`),
  ]);
  const rows: (string | number)[][] = [];
  for (let opened = 0; opened <= FIRINGS; opened++) {
    if (opened > 0 && (opened === 10 || opened % FIRINGS_A_ROW === 0)) {
      const { heapMB, allMB } = await memoryOf(page);
      rows.push([opened, heapMB, allMB]);
    }
    const files = firings[opened % firings.length] ?? [];
    await dropFiles(page, files);
    await page.getByRole('heading', { name: files[0]?.name ?? '', level: 1 }).waitFor();
    await settled(page);
  }
  await window.close();
  return {
    title: `Memory while ${FIRINGS} firings are opened one after the other, MB`,
    columns: ['firings opened', "the page's heap", 'page and worker'],
    rows,
    notes: ['After garbage has been collected.'],
  };
};

const bench: Bench = {
  name: 'window',
  run: async () => {
    const browser = await launchBrowser();
    try {
      return [await dropTable(browser), await zoomTable(browser), await memoryTable(browser)];
    } finally {
      await browser.close();
    }
  },
};

export default bench;
