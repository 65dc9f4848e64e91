import type { Finding, FindingId } from '../../../core/model/finding.ts';
import type { Fired, Told } from '../../builders/fired.ts';
import type { Random } from '../../kiln/random.ts';
import type { ScheduleFile, ScheduleSegment, Setup } from '../../kiln/types.ts';

/** A firing, what is told of it, and the earlier firing that it is held against. */
export interface FaultCase {
  readonly setup: Setup;
  readonly told?: Told;
  readonly reference?: Setup;
}

/** How firings with one finding are drawn. To try another id, add its row. */
export interface FaultRow {
  readonly id: FindingId;
  /** What was drawn, beyond the floor and short of it. */
  readonly what: string;
  readonly beyond: (random: Random) => FaultCase;
  readonly short: (random: Random) => FaultCase;
  /** How far off the finding's own figures are, by what they are in. */
  readonly off?: Readonly<Record<string, Off>>;
}

/** How far off a figure of the finding is, where the truth has one. */
export type Off = (firing: Fired, finding: Finding, drawn: FaultCase) => number;

/** Loads, rooms, noise and sampling as they come; couples true, so that only the fault differs. */
export const plain = (
  random: Random,
  more: Pick<Setup, 'kiln' | 'schedule'> & Partial<Setup>,
): Setup => ({
  seed: random.whole(1, 2 ** 31),
  loadKg: random.between(25, 60),
  roomC: random.between(8, 32),
  controller: { waits: random.chance(0.5) },
  logger: {
    intervalSeconds: random.pick([10, 30, 60, 120]),
    noiseC: random.between(0, 1),
    rounding: random.pick([null, { unit: 'C', step: 1 }, { unit: 'F', step: 1 }]),
  },
  record: { untilC: 200, atMostHours: 48 },
  ...more,
});

/** The same schedule with one segment otherwise. */
export const withSegment = (
  schedule: ScheduleFile,
  index: number,
  change: (segment: ScheduleSegment) => Partial<ScheduleSegment>,
): ScheduleFile => ({
  ...schedule,
  segments: schedule.segments.map((segment, i) =>
    i === index ? { ...segment, ...change(segment) } : segment,
  ),
});

/** The rate of a segment that has one. */
export const rateOf = ({ ratePerHour }: ScheduleSegment): number => {
  if (typeof ratePerHour !== 'number') throw new Error('a segment without a rate');
  return ratePerHour;
};
