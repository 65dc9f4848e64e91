import { align } from '../../core/align/align.ts';
import type { Alignment } from '../../core/model/document.ts';
import { readSchedule } from '../../core/schedule/read-schedule.ts';
import { makeTrace } from '../../core/trace/make-trace.ts';
import { quantile } from '../../core/numeric/statistics.ts';
import { logOf } from '../builders/log.ts';
import { alignmentFirings, type BenchFiring } from '../kiln/bench-firings.ts';
import { SCHEDULES } from '../kiln/schedules.ts';
import type { Bench, Table } from './bench.ts';

const FIRINGS = 50;
const SEED = 2026;

const aligned = (firing: BenchFiring, schedule = firing.schedule): Alignment => {
  const isRead = (_: number, i: number) => Number.isFinite(firing.readingC[i]);
  const log = logOf({
    atSeconds: firing.atSeconds.filter(isRead),
    celsius: firing.readingC.filter(isRead),
  });
  return align(makeTrace(log), readSchedule(JSON.stringify(schedule), 'bench.json'));
};

/** When a leg's end shows in the trace: the controller's switch, or the kiln's arrival after it. */
const shownEnd = (leg: BenchFiring['truth']['legs'][number]): number =>
  leg.kind === 'ramp' && leg.arrivalSeconds !== null
    ? Math.max(leg.endSeconds, leg.arrivalSeconds)
    : leg.endSeconds;

interface Errors {
  readonly switchMinutes: number[];
  readonly shownMinutes: number[];
  readonly missing: number;
}

const errorsOf = (firing: BenchFiring, alignment: Alignment): Errors => {
  const switchMinutes: number[] = [];
  const shownMinutes: number[] = [];
  let missing = 0;
  for (const truth of firing.truth.legs) {
    const found = alignment.legs.find(
      (leg) => leg.segment === truth.segment && (leg.kind === 'hold') === (truth.kind === 'hold'),
    );
    if (found?.actual == null) {
      missing++;
      continue;
    }
    switchMinutes.push(Math.abs(found.actual.endSeconds - truth.endSeconds) / 60);
    shownMinutes.push(Math.abs(found.actual.endSeconds - shownEnd(truth)) / 60);
  }
  return { switchMinutes, shownMinutes, missing };
};

const row = (what: string, minutes: readonly number[], missing: number): Table['rows'][number] => [
  what,
  String(minutes.length + missing),
  quantile(minutes, 0.5).toFixed(2),
  quantile(minutes, 0.95).toFixed(2),
  quantile(minutes, 1).toFixed(1),
  String(missing),
];

const boundaries = (firings: readonly BenchFiring[], alignments: readonly Alignment[]): Table => {
  const errors = firings.map((firing, k) => errorsOf(firing, alignments[k]!));
  const missing = errors.reduce((sum, each) => sum + each.missing, 0);
  const waiting = errors.filter((_, k) => firings[k]!.setup.controller?.waits === true);
  return {
    title: `Leg boundaries on ${firings.length} seeded firings (minutes from the truth)`,
    columns: ['against', 'legs', 'median', '95 %', 'worst', 'missing'],
    rows: [
      row(
        "the controller's switching",
        errors.flatMap((each) => each.switchMinutes),
        missing,
      ),
      row(
        '… controllers that wait',
        waiting.flatMap((each) => each.switchMinutes),
        0,
      ),
      row(
        'what the trace can show',
        errors.flatMap((each) => each.shownMinutes),
        missing,
      ),
    ],
  };
};

/** How often boundaries are right at each confidence, and what a wrong schedule's confidence is. */
const confidences = (firings: readonly BenchFiring[], alignments: readonly Alignment[]): Table => {
  const right = alignments.map((alignment) => alignment.confidence);
  const wrong = firings.map((firing, k) => {
    const others = SCHEDULES.filter((schedule) => schedule.name !== firing.schedule.name);
    return aligned(firing, others[k % others.length]).confidence;
  });
  const spread = (what: string, values: readonly number[]) => [
    what,
    quantile(values, 0).toFixed(2),
    quantile(values, 0.1).toFixed(2),
    quantile(values, 0.5).toFixed(2),
    quantile(values, 0.9).toFixed(2),
    quantile(values, 1).toFixed(2),
  ];
  return {
    title: 'Confidence of the alignment',
    columns: ['schedule', 'least', '10 %', 'median', '90 %', 'most'],
    rows: [spread('the one that was run', right), spread('another one', wrong)],
  };
};

const bench: Bench = {
  name: 'leg-boundaries',
  run: () => {
    const firings = alignmentFirings(FIRINGS, SEED);
    const alignments = firings.map((firing) => aligned(firing));
    return Promise.resolve([boundaries(firings, alignments), confidences(firings, alignments)]);
  },
};

export default bench;
