import { movedTo, occupancyOf, topOf, type Occupancy } from '../cones/occupancy.ts';
import { SECONDS_PER_MINUTE } from '../units.ts';
import { truthOf } from './firing-record.ts';
import type { Measured } from './measured.ts';

/** The end of a firing, taken apart where changes cut it. */
export interface FiringParts {
  /** Up to the last 100 °C of the climb. */
  readonly before: Occupancy;
  /** The last 100 °C of the climb. */
  readonly lastStretch: Occupancy;
  /** Hold and cooling. */
  readonly after: Occupancy;
  readonly lastFromC: number;
  readonly rampEndC: number;
  readonly rampRateCPerHour: number;
  /** Where more or less time would be spent: the hold, or the end of the climb. */
  readonly soakC: number;
  readonly soakMinutes: number;
}

/** Takes a measured firing apart, as true temperatures; null where its last climb was not seen. */
export const firingParts = ({ record, errorC }: Measured): FiringParts | null => {
  const { trace, top } = record;
  if (top.rampRateCPerHour === null) return null;
  const truth = truthOf(record, errorC);
  const topC = topOf(trace.celsius);
  const between = (from: number, to: number) => movedTo(occupancyOf(trace, from, to, topC), truth);
  const hold = top.hold;
  return {
    before: between(-Infinity, top.rampFromSeconds),
    lastStretch: between(top.rampFromSeconds, top.rampEndSeconds),
    after: between(top.rampEndSeconds, Infinity),
    lastFromC: truth(top.rampFromC),
    rampEndC: truth(top.rampEndC),
    rampRateCPerHour: top.rampRateCPerHour,
    soakC: truth(hold?.meanC ?? top.rampEndC),
    soakMinutes: hold === null ? 0 : (hold.endSeconds - hold.startSeconds) / SECONDS_PER_MINUTE,
  };
};
