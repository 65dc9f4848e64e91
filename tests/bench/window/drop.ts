import type { Browser } from 'playwright-core';
import { analyze } from '../../../core/analyze.ts';
import { writeJsonSchedule } from '../../../core/schedule/write-schedule.ts';
import { dropFiles, textFile } from '../../e2e/window.ts';
import { median, type Table } from '../bench.ts';
import { BIG_LOG_SCHEDULE, bigLog } from '../big-log.ts';
import { openWatched, timeGiven, type GivenTimes } from './watched.ts';

const ROWS_OF_12_H = 12 * 3600;
const DROPS = 6;

const SCHEDULE_FILE = textFile('bench.schedule.json', writeJsonSchedule(BIG_LOG_SCHEDULE, 'C'));

/** From drop to drawn verdict, part by part, beside the core's own time for the same log. */
export const dropTable = async (browser: Browser): Promise<Table> => {
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
      row('file to bytes, told from a schedule', ({ toBytes }) => toBytes),
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
