import { measureHeatWork } from '../../core/heatwork/measure-heat-work.ts';
import type { Trace } from '../../core/model/trace.ts';
import { makeTrace } from '../../core/trace/make-trace.ts';
import { quantile } from '../../core/numeric/statistics.ts';
import { logOf } from '../builders/log.ts';
import { alignmentFirings, type BenchFiring } from '../kiln/bench-firings.ts';
import { outcomeOf } from '../kiln/cone-dose.ts';
import type { Bench, Table } from './bench.ts';

const FIRINGS = 420;
const SEED = 5;

const traceOf = (atSeconds: Float64Array, celsius: Float64Array): Trace => {
  const isRead = (_: number, i: number) => Number.isFinite(celsius[i]);
  return makeTrace(logOf({ atSeconds: atSeconds.filter(isRead), celsius: celsius.filter(isRead) }));
};

interface Outcome {
  readonly schedule: string;
  readonly isInside: boolean;
  readonly offCones: number;
  readonly widthCones: number;
}

/** One firing's position as read, with its range, against the test kiln's own reckoning of truth. */
const outcome = (firing: BenchFiring): Outcome => {
  const trace = traceOf(firing.atSeconds, firing.readingC);
  const { cone } = measureHeatWork(trace, {
    target: null,
    couple: { type: 'K', class: 'class-2' },
    legs: trace.summary.legs,
  })!;
  const truth = outcomeOf(firing.atSeconds, firing.trueSensorSpotC).position ?? NaN;
  const low = cone.lowPosition ?? NaN;
  const high = cone.highPosition ?? NaN;
  return {
    schedule: firing.schedule.name,
    isInside: low <= truth && truth <= high,
    offCones: Math.abs((cone.position ?? NaN) - truth),
    widthCones: high - low,
  };
};

const row = (what: string, outcomes: readonly Outcome[]): Table['rows'][number] => [
  what,
  outcomes.length,
  `${((100 * outcomes.filter(({ isInside }) => isInside).length) / outcomes.length).toFixed(0)} %`,
  quantile(
    outcomes.map(({ offCones }) => offCones),
    0.5,
  ),
  quantile(
    outcomes.map(({ offCones }) => offCones),
    0.95,
  ),
  quantile(
    outcomes.map(({ widthCones }) => widthCones),
    0.5,
  ),
];

const bench: Bench = {
  name: 'position-range',
  run: () => {
    const outcomes = alignmentFirings(FIRINGS, SEED).map(outcome);
    const schedules = [...new Set(outcomes.map(({ schedule }) => schedule))];
    return Promise.resolve({
      title: 'The 80 % range of the position, on firings whose couple errs within its class',
      columns: ['schedule', 'firings', 'covered', 'off, median', 'off, 95 %', 'range, median'],
      rows: [
        row('all', outcomes),
        ...schedules.map((name) =>
          row(
            name,
            outcomes.filter(({ schedule }) => schedule === name),
          ),
        ),
      ],
      notes: [
        'Off and range in cones. Truth: the test kiln’s own cones at the true temperature of the',
        'couple’s spot. Couples err evenly within IEC 60584-1 class 2, type K.',
      ],
    });
  },
};

export default bench;
