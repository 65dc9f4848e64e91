import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Browser, CDPSession, Page } from 'playwright-core';
import { median, type Table } from '../bench.ts';
import { bigLog } from '../big-log.ts';
import { openWatched, timeGiven, type GivenTimes } from './watched.ts';

const ROWS = 1_000_000;
const LOG = 'a log of 1 000 000 rows';
const STEPS = 40;
/** A frame later than this is seen as a jerk. */
const LATE_MS = 50;

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

const isLate = (ms: number): boolean => ms > LATE_MS;

const framesRow = (what: string, frames: readonly Frame[]): (string | number)[] => {
  const gaps = frames.map(({ gap }) => gap);
  return [what, gaps.length, median(gaps), Math.max(...gaps), gaps.filter(isLate).length];
};

interface Answer {
  readonly at: number;
  readonly tookMs: number;
}

/** Notes how long each key takes from the hand to the end of the frame that answers it. */
const watchKeys = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const answers: { at: number; tookMs: number }[] = [];
    Object.assign(window, { answers });
    addEventListener(
      'keydown',
      ({ timeStamp: at }) =>
        requestAnimationFrame(() =>
          setTimeout(() => answers.push({ at, tookMs: performance.now() - at })),
        ),
      { capture: true },
    );
  });

/** Opens a log from the disk: a drop made by a script would leave its garbage in the page. */
const open = async (page: Page, file: string): Promise<GivenTimes> => {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open a log' }).first().click(),
  ]);
  return timeGiven(page, () => chooser.setFiles(file));
};

/** The frames from when a log is chosen until its answer comes. */
const whileRead = async (page: Page, file: string) => {
  await watchFrames(page);
  const taken = await open(page, file);
  const frames = await framesSeen(page);
  return {
    taken,
    row: framesRow(
      'none: the log is being read',
      frames.filter(({ at }) => at > taken.givenAt && at < taken.answeredAt),
    ),
  };
};

/** What a key costs that says everything in the other unit, while a log is read. */
const keysWhileRead = async (page: Page, file: string): Promise<Table> => {
  await watchKeys(page);
  const progress = { isOver: false };
  const reading = open(page, file).finally(() => (progress.isOver = true));
  while (!progress.isOver) await page.keyboard.press('u', { delay: 20 });
  const { givenAt, answeredAt } = await reading;
  const all = await page.evaluate(() => (window as unknown as { answers: Answer[] }).answers);
  const answers = all
    .filter(({ at }) => at > givenAt && at < answeredAt)
    .map(({ tookMs }) => tookMs);
  return {
    title: `Keys while ${LOG} is read: from the key to the end of its frame, ms`,
    columns: ['keys', 'median', 'longest', `over ${LATE_MS}`],
    rows: [[answers.length, median(answers), Math.max(...answers), answers.filter(isLate).length]],
    notes: [],
  };
};

/** Zooms and pans as a hand would, and tells the frames of each movement. */
const moving = async (page: Page, session: CDPSession) => {
  const box = await page.locator('#crosshair').boundingBox();
  if (!box) throw new Error('there is no curve');
  const hand = { x: box.x + box.width / 3, y: box.y + 120 };
  await page.mouse.move(hand.x, hand.y);
  const moves = [
    { what: 'closer, with the wheel', deltaX: 0, deltaY: -30 },
    { what: 'along', deltaX: 30, deltaY: 0 },
    { what: 'further off', deltaX: 0, deltaY: 30 },
  ];
  const rows = [];
  for (const { what, ...delta } of moves) {
    await watchFrames(page);
    for (let step = 0; step < STEPS; step++) {
      await session.send('Input.dispatchMouseEvent', { type: 'mouseWheel', ...hand, ...delta });
    }
    rows.push(framesRow(what, await framesSeen(page)));
  }
  return rows;
};

/** How smoothly the window runs while a large log is read, and on it afterwards. */
export const framesTables = async (browser: Browser): Promise<Table[]> => {
  const window = await openWatched(browser);
  const { page } = window;
  page.setDefaultTimeout(120_000);
  const session = await page.context().newCDPSession(page);
  const folder = mkdtempSync(path.join(tmpdir(), 'bench-'));
  const file = path.join(folder, 'big.csv');
  writeFileSync(file, bigLog(ROWS));
  try {
    const read = await whileRead(page, file);
    await page.waitForTimeout(500);
    const moved = await moving(page, session);
    const drawn = Math.round(read.taken.all);
    return [
      {
        title: `Moving about in ${LOG}: time from frame to frame, ms`,
        columns: ['movement', 'frames', 'median', 'longest', `over ${LATE_MS}`],
        rows: [read.row, ...moved],
        notes: [`The log was drawn ${drawn} ms after it was chosen. No graphics processor.`],
      },
      await keysWhileRead(page, file),
    ];
  } finally {
    rmSync(folder, { recursive: true });
    await window.close();
  }
};
