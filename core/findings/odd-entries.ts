import type { Schedule, Segment } from '../model/schedule.ts';
import { intendedLegs, type IntendedLeg } from '../schedule/intended-curve.ts';
import { holdSlips, rateSlips, targetSlips, type Slip } from '../schedule/slips.ts';
import { celsius, seconds, SECONDS_PER_HOUR } from '../units.ts';
import { topC } from './legs.ts';

/** A fall of less before the top may be meant, to even out a kiln (chosen). */
const VALLEY_C = 5;

/**
 * A soak near the top of more than this is no soak (chosen: published ones last up to two hours;
 * crystals are grown well below the top).
 */
const LONGEST_SOAK_MINUTES = 240;
const NEAR_TOP_C = 50;
const SOAKS_ABOVE_C = 600;

/**
 * A first climb this fast that ends below here without a hold, before one at most so fast that takes
 * this long: nobody hurries through drying and then takes half a day over the rest (chosen).
 */
const HASTY_C_PER_HOUR = 120;
const HASTY_BELOW_C = 150;
const HASTY_RATIO = 1.5;
const LONG_CLIMB_HOURS = 10;

/** A climb of a day that the climbs beside it outdo by this factor has lost a digit (chosen). */
const SLOW_CLIMB_HOURS = 20;
const SLOW_RATIO = 3;

/** An entry that does not fit its neighbours; what was likely meant is null where none fits. */
export interface OddEntry {
  readonly segment: number;
  readonly slip: Slip | null;
}

const targetOf = (segment: Segment | undefined): number => segment?.targetC ?? 20;

const topIndex = ({ segments }: Schedule): number => {
  const top = Math.max(...segments.map(({ targetC }) => targetC));
  return segments.findIndex(({ targetC }) => targetC === top);
};

/** Whether a schedule falls on its way to the top. */
export const hasValley = (schedule: Schedule): boolean => valleyAt(schedule) !== null;

const valleyAt = (schedule: Schedule): number | null => {
  const top = topIndex(schedule);
  const at = schedule.segments.findIndex(
    ({ targetC }, i) => i < top && targetC < targetOf(schedule.segments[i - 1]) - VALLEY_C,
  );
  return at < 0 ? null : at;
};

/**
 * Whether a slip of a target mends an order: the target was the top or fell below the one before it,
 * and the mended one does not fall below it.
 */
export const putsInOrder = (schedule: Schedule, { segment, mended }: Slip): boolean => {
  if (segment === null) return true;
  const beforeC = targetOf(schedule.segments[segment - 1]);
  const enteredC = targetOf(schedule.segments[segment]);
  const isOdd = segment === topIndex(schedule) || enteredC < beforeC - VALLEY_C;
  return isOdd && targetOf(mended.segments[segment]) > beforeC;
};

/** The target in the valley lost a digit, or the one before it gained one. */
const valley = (schedule: Schedule): OddEntry | null => {
  const at = valleyAt(schedule);
  if (at === null) return null;
  const slips = [at, at - 1].flatMap((index) => (index < 0 ? [] : targetSlips(schedule, index)));
  // A target hotter than the top would only be a new top.
  const fits = ({ mended }: Slip): boolean => !hasValley(mended) && topC(mended) === topC(schedule);
  const slip = slips.find(fits) ?? null;
  return { segment: slip?.segment ?? at, slip };
};

const climbsOf = (schedule: Schedule): IntendedLeg[] =>
  intendedLegs(schedule, { atSeconds: seconds(0), celsius: celsius(20) }).filter(
    ({ kind }) => kind === 'ramp',
  );

const hoursOf = (leg: IntendedLeg): number =>
  (leg.endSeconds - leg.startSeconds) / SECONDS_PER_HOUR;

/** A first target that lost its last zero, so that the next, slow climb takes its place too. */
const hastyStart = (schedule: Schedule): OddEntry | null => {
  const [first, next] = climbsOf(schedule);
  const entry = schedule.segments[0]!;
  if (first?.segment !== 0 || next?.segment !== 1 || entry.holdMinutes > 0) return null;
  const [rate, slow] = [first.rateCPerHour, next.rateCPerHour];
  if (rate === null || slow === null || rate < HASTY_C_PER_HOUR || rate < HASTY_RATIO * slow) {
    return null;
  }
  if (first.endC > HASTY_BELOW_C || hoursOf(next) < LONG_CLIMB_HOURS) return null;
  const [slip] = targetSlips(schedule, 0).filter(
    ({ meant, entered }) => meant > entered && meant < next.endC,
  );
  return slip === undefined ? null : { segment: 0, slip };
};

/** A soak of hours near the top, where as many minutes would be an everyday one. */
const longSoak = (schedule: Schedule): OddEntry | null => {
  const top = topC(schedule);
  const segment = schedule.segments.findIndex(
    ({ targetC, holdMinutes }) =>
      holdMinutes > LONGEST_SOAK_MINUTES && targetC > top - NEAR_TOP_C && targetC > SOAKS_ABOVE_C,
  );
  const [slip] = segment < 0 ? [] : holdSlips(schedule, segment);
  return slip === undefined ? null : { segment, slip };
};

/** A climb of a day between two brisk ones. */
const slowClimb = (schedule: Schedule): OddEntry | null => {
  const climbs = climbsOf(schedule);
  for (const [i, { segment, rateCPerHour }] of climbs.entries()) {
    const beside = [climbs[i - 1], climbs[i + 1]];
    if (rateCPerHour === null || hoursOf(climbs[i]!) < SLOW_CLIMB_HOURS) continue;
    const isOutdone = beside.every((leg) => (leg?.rateCPerHour ?? 0) >= SLOW_RATIO * rateCPerHour);
    const [slip] = isOutdone ? rateSlips(schedule, segment) : [];
    if (slip !== undefined) return { segment, slip };
  }
  return null;
};

/** The first entry of a schedule that does not fit its neighbours, whatever cone was meant. */
export const oddEntry = (schedule: Schedule): OddEntry | null =>
  valley(schedule) ?? longSoak(schedule) ?? hastyStart(schedule) ?? slowClimb(schedule);
