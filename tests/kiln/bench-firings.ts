import { errorWithin } from './couple.ts';
import { fire } from './fire.ts';
import { KILNS } from './kilns.ts';
import type { Random } from './random.ts';
import { seededRandom } from './random.ts';
import { SCHEDULES, SLOW_BISQUE, TIMED_EARTHENWARE } from './schedules.ts';
import { usualTuning } from './tuning.ts';
import type { Firing, Rounding, ScheduleFile, Setup } from './types.ts';

/** A seeded firing with what was programmed, for benches that hold an analysis against its truth. */
export interface BenchFiring extends Firing {
  /** What was drawn, in a line. */
  readonly name: string;
  /** In the shape of the schedule file's JSON. */
  readonly schedule: ScheduleFile;
  readonly setup: Setup;
}

const ROUNDINGS: readonly (Rounding | null)[] = [
  null,
  { unit: 'C', step: 0.1 },
  { unit: 'C', step: 1 },
  { unit: 'F', step: 1 },
];
const INTERVALS_SECONDS = [10, 15, 20, 30, 60, 90, 120] as const;

/** Another controller's idea of the same tuning. */
const variedTuning = (setup: Setup, random: Random): Setup['controller'] => {
  const usual = usualTuning(setup.kiln);
  return {
    waits: random.chance(0.5),
    waitBandC: random.between(4, 12),
    tuning: {
      bandC: usual.bandC * random.between(0.85, 1.4),
      resetSeconds: usual.resetSeconds * random.between(0.85, 1.3),
      rateSeconds: usual.rateSeconds * random.between(0.8, 1.2),
      perRampCPerHour: usual.perRampCPerHour * random.between(0.7, 1.1),
    },
  };
};

/**
 * A healthy firing as a studio would see it: any kiln, load, room, place of the couple within its
 * class, supply a little off, elements not new; recorded finely or coarsely.
 */
export const drawnSetup = (schedule: ScheduleFile, random: Random): Setup => {
  const clay = schedule === SLOW_BISQUE || schedule === TIMED_EARTHENWARE;
  const setup: Setup = {
    seed: random.whole(1, 2 ** 31),
    kiln: random.pick(KILNS),
    schedule,
    loadKg: random.between(20, 65),
    ware: clay && random.chance(0.7) ? 'green' : 'fired',
    dampShare: random.between(0, 0.012),
    coupling: random.between(0.5, 1.1),
    roomC: random.between(5, 35),
    roomWarmsC: random.between(0, 8),
    supply: { factor: random.between(0.96, 1.03), wander: random.between(0.001, 0.006) },
    elementWear: random.between(1, 1.05),
    couple: {
      ...errorWithin('class-2', random),
      lagSeconds: random.between(20, 75),
      wanderC: random.between(0, 0.3),
    },
    logger: {
      intervalSeconds: random.pick(INTERVALS_SECONDS),
      jitterSeconds: random.chance(0.3) ? 0.4 : 0,
      noiseC: random.between(0, 1.2),
      rounding: random.pick(ROUNDINGS),
    },
    idleMinutes: random.between(0, 60),
    record: { untilC: random.between(60, 350), atMostHours: 48 },
  };
  return { ...setup, controller: variedTuning(setup, random) ?? {} };
};

const nameOf = ({ kiln, schedule, loadKg, logger, controller, idleMinutes = 0 }: Setup): string =>
  [
    schedule.name,
    kiln.name,
    `${loadKg.toFixed(0)} kg`,
    `${logger?.intervalSeconds} s`,
    `noise ${logger?.noiseC?.toFixed(1)} °C`,
    `idle ${idleMinutes.toFixed(0)} min`,
    controller?.waits ? 'waits' : 'does not wait',
  ].join(', ');

/** So many healthy firings, by turns of each schedule; the same seed gives the same firings. */
export const alignmentFirings = (count: number, seed: number): BenchFiring[] => {
  const random = seededRandom(seed);
  return Array.from({ length: count }, (_, i) => {
    const schedule = SCHEDULES[i % SCHEDULES.length]!;
    const setup = drawnSetup(schedule, random.fork(`firing ${i}`));
    return { name: nameOf(setup), schedule, setup, ...fire(setup) };
  });
};
