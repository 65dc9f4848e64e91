import { drawnSetup } from './bench-firings.ts';
import { fire } from './fire.ts';
import type { Random } from './random.ts';
import type { Firing, LegTruth, ScheduleFile, Setup } from './types.ts';

/*
 * A firing is healthy if its kiln can do what is asked of it: a quick glaze with a heavy load asks more
 * power than the smaller kilns have, a tight kiln cools slower than some schedules want, and what an
 * analysis then says of a slow climb or a short hold is true. Whether a firing kept up is told by its
 * truth, without any analysis.
 */

/** Half the delay of which an analysis has to speak. */
const LATE_MINUTES = 5;
/** Where the controller went on before the couple had arrived: from so near, the rest is lag. */
const NEAR_C = 3;
const MOST_DRAWS = 50;

/** What was asked of a ramp at a given rate or in a given time, in minutes; NaN at full power. */
const dueMinutes = ({ unit, segments }: ScheduleFile, leg: LegTruth): number => {
  const { minutes, ratePerHour } = segments[leg.segment]!;
  if (minutes !== undefined) return minutes;
  if (ratePerHour === undefined || ratePerHour === 'full') return NaN;
  const rateCPerHour = unit === 'F' ? ratePerHour / 1.8 : ratePerHour;
  return (Math.abs(leg.targetC - leg.startC) / rateCPerHour) * 60;
};

const arrivalSeconds = ({ atSeconds, readingC }: Firing, leg: LegTruth): number => {
  const { arrivalSeconds: arrived, startSeconds, targetC } = leg;
  if (arrived !== null) return arrived;
  const sense = Math.sign(targetC - leg.startC);
  const near = readingC.findIndex(
    (celsius, i) => atSeconds[i]! >= startSeconds && sense * (targetC - celsius) <= NEAR_C,
  );
  return near < 0 ? Infinity : atSeconds[near]!;
};

/** Whether every ramp at a given pace arrived as asked, within five minutes. */
export const keptUp = (schedule: ScheduleFile, firing: Firing): boolean =>
  firing.truth.legs.every((leg) => {
    const due = dueMinutes(schedule, leg);
    if (leg.kind !== 'ramp' || Number.isNaN(due)) return true;
    const tookMinutes = (arrivalSeconds(firing, leg) - leg.startSeconds) / 60;
    return tookMinutes - due < LATE_MINUTES;
  });

/** The setup of a healthy firing of a schedule: drawn until the kiln keeps up with it. */
export const healthySetup = (schedule: ScheduleFile, random: Random): Setup => {
  for (let draw = 0; draw < MOST_DRAWS; draw++) {
    const setup = drawnSetup(schedule, random);
    if (keptUp(schedule, fire(setup))) return setup;
  }
  throw new Error(`no kiln keeps up with ${schedule.name}`);
};

/** An earlier firing of the same kiln on the same schedule: another load, room and record. */
export const earlierSetup = (setup: Setup, random: Random): Setup => {
  const { seed, roomC, logger } = drawnSetup(setup.schedule, random);
  // Within this of the other load the kiln keeps up too, or nearly.
  const loadKg = Math.max(20, setup.loadKg * random.between(0.7, 1.05));
  return { ...setup, seed, loadKg, roomC, ...(logger && { logger }) };
};
