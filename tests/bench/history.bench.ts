/** Histories: how often the forecast's range holds the truth, how wide it is, and when it is silent. */
import { historyOf } from '../../core/history/history.ts';
import type { Forecast } from '../../core/model/history.ts';
import { syntheticHistory, type SyntheticHistory } from '../builders/histories.ts';
import { median, type Table } from './bench.ts';

const HISTORIES = 100;

interface Told {
  readonly truth: SyntheticHistory;
  readonly forecast: Forecast;
}

const told = (loss: number, seed: number): Told[] =>
  Array.from({ length: HISTORIES }, (_, i) => {
    const truth = syntheticHistory(seed + i, loss);
    return { truth, forecast: historyOf(truth.entries).forecast };
  });

const row = (loss: number, seed: number) => {
  const all = told(loss, seed);
  const given = all.flatMap(({ truth, forecast: { firings } }) =>
    firings === null ? [] : [{ left: truth.left, ...firings }],
  );
  const inside = given.filter(({ left, low, high }) => {
    // Firings are counted whole: a range from 4.6 to 7.2 holds 4 to 8.
    return left >= Math.floor(low) && left <= Math.ceil(high);
  });
  const halfWidth = given.map(
    ({ low, high, estimate }) => (50 * (high - low)) / Math.max(estimate, 1),
  );
  const silent = all.filter(({ forecast }) => forecast.firings === null);
  const long = silent.filter(({ truth }) => truth.entries.length >= 8);
  return [
    `${Math.round(100 * loss)} %`,
    given.length,
    inside.length,
    (100 * inside.length) / given.length,
    median(halfWidth),
    silent.length,
    long.length,
  ];
};

export default {
  name: 'history',
  run: (): Promise<Table> =>
    Promise.resolve({
      title: `Forecast over ${HISTORIES} invented histories a row`,
      columns: [
        'power lost so far',
        'told',
        'of these, true number inside',
        'inside, %',
        'median half width, %',
        '“not yet”',
        'of these with 8 firings or more',
      ],
      rows: [row(0.06, 1000), row(0.1, 2000), row(0.14, 3000)],
      notes: [
        'Wanted at a loss of 10 %: inside in 75 or more of 100, median half width at most 40 %, “not yet” in at most 20.',
      ],
    }),
};
