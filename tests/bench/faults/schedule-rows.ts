import type { FindingId } from '../../../core/model/finding.ts';
import { KILNS } from '../../kiln/kilns.ts';
import type { Random } from '../../kiln/random.ts';
import { GLAZE_WITH_HOLD, SLOW_BISQUE } from '../../kiln/schedules.ts';
import type { ScheduleFile } from '../../kiln/types.ts';
import { plain, rateOf, withSegment, type FaultCase, type FaultRow } from './fault-row.ts';

/** One schedule is run, another is told; the load is one that every kiln keeps up with. */
const ran = (random: Random, schedule: ScheduleFile, told: ScheduleFile): FaultCase => ({
  setup: plain(random, { kiln: random.pick(KILNS), schedule, loadKg: random.between(22, 36) }),
  told: { schedule: told },
});

const anySchedule = (random: Random): ScheduleFile => random.pick([GLAZE_WITH_HOLD, SLOW_BISQUE]);
const topOf = ({ segments }: ScheduleFile): number => segments.length - 1;

/** A middle ramp runs at so many times its rate. */
const paced = (random: Random, share: number): FaultCase => {
  const told = anySchedule(random);
  const run = withSegment(told, 1, (segment) => ({ ratePerHour: rateOf(segment) * share }));
  return ran(random, run, told);
};

/** The hold at the top, or the first, lasts so much of its time. */
const held = (random: Random, share: number): FaultCase => {
  const told = anySchedule(random);
  const index = told === GLAZE_WITH_HOLD && random.chance(0.5) ? topOf(told) : 0;
  const run = withSegment(told, index, ({ holdMinutes = 0 }) => ({
    holdMinutes: holdMinutes * share,
  }));
  return ran(random, run, told);
};

/** The drying soak stands so many degrees off the level that was told. */
const offLevel = (random: Random, offC: number): FaultCase => {
  const run = withSegment(SLOW_BISQUE, 0, ({ target }) => ({ target: target + offC }));
  return ran(random, run, SLOW_BISQUE);
};

/** Top so many degrees off; what was run is told too, or the schedule for the cone. */
const topped = (random: Random, offC: number, isTold: boolean): FaultCase => {
  const made = anySchedule(random);
  const run = withSegment(made, topOf(made), ({ target }) => ({ target: target + offC }));
  return ran(random, run, isTold ? run : made);
};

/** A segment in the middle is passed over. */
const without = (random: Random, index: number | null): FaultCase => {
  const segments = SLOW_BISQUE.segments.filter((_, i) => i !== index);
  return ran(random, { ...SLOW_BISQUE, segments }, SLOW_BISQUE);
};

/** Somebody stops the programme on its way up. */
const stopped = (random: Random, atC: number | null): FaultCase => {
  const schedule = anySchedule(random);
  const { setup } = ran(random, schedule, schedule);
  const faults = atC === null ? [] : [{ kind: 'abort' as const, when: { heatingPastC: atC } }];
  return { setup: { ...setup, faults } };
};

/** Contacts stick for minutes as the last ramp ends. */
const stuckAtTop = (random: Random, minutes: number): FaultCase => {
  const schedule = anySchedule(random);
  const { setup } = ran(random, schedule, schedule);
  const when = { rampEndOf: topOf(schedule) };
  return { setup: { ...setup, faults: [{ kind: 'relay-stuck', when, minutes }] } };
};

/** A cone 06 bisque, made up, that a controller ran for the glaze of cone 6. */
const BISQUE_06: ScheduleFile = {
  name: 'Bisque 06',
  cone: '06',
  unit: 'C',
  segments: [
    { ratePerHour: 110, target: 130, holdMinutes: 15 },
    { ratePerHour: 160, target: 890 },
    { ratePerHour: 60, target: 997, holdMinutes: 8 },
  ],
};

const SLIPS: readonly ((schedule: ScheduleFile) => ScheduleFile)[] = [
  // The digits of the top are swapped: 1120 for 1210.
  (schedule) => withSegment(schedule, topOf(schedule), () => ({ target: 1120 })),
  // A cone that has got a zero.
  (schedule) => ({ ...schedule, cone: '06' }),
  // Fourteen hours for fourteen minutes; at the first soak that may be meant, overnight.
  (schedule) => withSegment(schedule, topOf(schedule), () => ({ holdMinutes: 14 * 60 })),
];

const slipped = (random: Random, isSlipped: boolean): FaultCase => {
  const slip = random.pick(SLIPS);
  const schedule = isSlipped ? slip(GLAZE_WITH_HOLD) : anySchedule(random);
  return ran(random, schedule, schedule);
};

const row = (
  id: FindingId,
  what: string,
  beyond: FaultRow['beyond'],
  short: FaultRow['short'],
): FaultRow => ({ id, what, beyond, short });

/** What was done otherwise than the schedule asks, or asked wrongly. */
export const SCHEDULE_ROWS: readonly FaultRow[] = [
  row(
    'underfired',
    'top 25–60 °C lower than made for its cone; short: 0–4 °C',
    (random) => topped(random, -random.between(25, 60), true),
    (random) => topped(random, -random.between(0, 4), true),
  ),
  row(
    'overfired',
    'top 20–50 °C higher; short: 4–8 °C lower',
    (random) => topped(random, random.between(20, 50), true),
    (random) => topped(random, -random.between(4, 8), true),
  ),
  row(
    'wrong-end-cone',
    '06 run for 6; short: the right one',
    (random) => ran(random, BISQUE_06, GLAZE_WITH_HOLD),
    (random) => ran(random, GLAZE_WITH_HOLD, GLAZE_WITH_HOLD),
  ),
  row(
    'ramp-slow',
    'middle ramp at 0.7–0.88 of its rate; short: 0.97–1',
    (random) => paced(random, random.between(0.7, 0.88)),
    (random) => paced(random, random.between(0.97, 1)),
  ),
  row(
    'ramp-fast',
    'middle ramp at 1.13–1.3 of its rate; short: 1–1.03',
    (random) => paced(random, random.between(1.13, 1.3)),
    (random) => paced(random, random.between(1, 1.03)),
  ),
  row(
    'hold-short',
    'a hold of 14–50 min, 10–60 % of its time; short: 97–100 %',
    (random) => held(random, random.between(0.1, 0.6)),
    (random) => held(random, random.between(0.97, 1)),
  ),
  row(
    'hold-drift',
    'a soak 9–20 °C above its level; short: 0–2 °C',
    (random) => offLevel(random, random.between(9, 20)),
    (random) => offLevel(random, random.between(0, 2)),
  ),
  row(
    'hold-drift',
    'a soak 9–20 °C below its level; short: 0–2 °C',
    (random) => offLevel(random, -random.between(9, 20)),
    (random) => offLevel(random, -random.between(0, 2)),
  ),
  row(
    'segment-missing',
    'run through at the next segment’s faster rate; short: none',
    (random) => without(random, 1),
    (random) => without(random, null),
  ),
  row(
    'segment-missing',
    'run through at the next segment’s slower rate; short: none',
    (random) => without(random, 2),
    (random) => without(random, null),
  ),
  row(
    'ended-early',
    'stopped at 600–1000 °C; short: ran to its end',
    (random) => stopped(random, random.between(600, 1000)),
    (random) => stopped(random, null),
  ),
  row(
    'overshoot',
    'contacts stuck 6–15 min at the top; short: not at all',
    (random) => stuckAtTop(random, random.between(6, 15)),
    (random) => stuckAtTop(random, 0),
  ),
  row(
    'peak-not-reached',
    'top 10–45 °C short of the told one; short: 0–3 °C',
    (random) => topped(random, -random.between(10, 45), false),
    (random) => topped(random, -random.between(0, 3), false),
  ),
  row(
    'schedule-suspect',
    'a slip in an entry; short: none',
    (random) => slipped(random, true),
    (random) => slipped(random, false),
  ),
];
