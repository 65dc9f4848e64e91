/** What the fitted kiln tells: relative power, power over loss, and the ceiling, on test kilns. */
import { relativePower } from '../../core/thermal/relative-power.ts';
import { courseOfTrace } from '../../core/thermal/power-course.ts';
import type { Elements } from '../../core/model/document.ts';
import { quantile } from '../../core/numeric/statistics.ts';
import { fired, type Fired } from '../builders/fired.ts';
import type { KilnPlan } from '../kiln/kiln.ts';
import { KILNS } from '../kiln/kilns.ts';
import { seededRandom, type Random } from '../kiln/random.ts';
import { CRYSTAL_STEPS, FAST_GLAZE, HARD_GLAZE } from '../kiln/schedules.ts';
import type { ScheduleFile, Setup } from '../kiln/types.ts';
import type { Table } from './bench.ts';

const SCHEDULES = [FAST_GLAZE, CRYSTAL_STEPS, HARD_GLAZE] as const;
/** Ware in plain view of the elements, and boxed in. */
const COUPLINGS = [1, 0.4] as const;
const FIRINGS = 8;
const SEED = 5;
const AN_HOUR = 3600;

const setupOf = (
  kiln: KilnPlan,
  schedule: ScheduleFile,
  coupling: number,
  random: Random,
  powerLost: number,
): Setup => ({
  seed: random.whole(1, 2 ** 31),
  kiln,
  schedule,
  coupling,
  loadKg: random.between(25, 65),
  roomC: random.between(8, 32),
  roomWarmsC: random.between(0, 6),
  elementWear: 1 / (1 - powerLost),
  couple: { wanderC: 0.2 },
  controller: { waits: random.chance(0.5) },
  logger: {
    intervalSeconds: random.pick([15, 30, 60, 120]),
    noiseC: random.between(0.1, 1),
    rounding: random.pick([null, { unit: 'C', step: 1 }, { unit: 'F', step: 1 }]),
  },
});

const fullSeconds = ({ firing }: Fired): number =>
  firing.truth.fullPower.reduce(
    (sum, { fromSeconds, toSeconds }) => sum + toSeconds - fromSeconds,
    0,
  );

interface Outcome {
  readonly kiln: string;
  readonly schedule: string;
  readonly coupling: number;
  readonly reason: string | null;
  readonly errorPercent: number;
  readonly isInside: boolean;
  readonly widthPercent: number;
}

const outcomeOf = (
  reference: Fired,
  firing: Fired,
): Omit<Outcome, 'kiln' | 'schedule' | 'coupling'> => {
  const course = courseOfTrace(firing.trace, firing.document.elements!.limited);
  const { relative, reason } = relativePower(course, reference.document.elements!.fit);
  if (relative === null) return { reason, errorPercent: NaN, isInside: false, widthPercent: NaN };
  const truth = firing.firing.truth.relativePower / reference.firing.truth.relativePower;
  return {
    reason: null,
    errorPercent: 100 * (relative.value / truth - 1),
    isInside: relative.low <= truth && truth <= relative.high,
    widthPercent: (50 * (relative.high - relative.low)) / relative.value,
  };
};

const row = (name: string, outcomes: readonly Outcome[]): Table['rows'][number] => {
  const told = outcomes.filter(({ reason }) => reason === null);
  const errors = told.map(({ errorPercent }) => Math.abs(errorPercent));
  const inside = told.filter(({ isInside }) => isInside).length;
  return [
    name,
    outcomes.length,
    `${((100 * (outcomes.length - told.length)) / outcomes.length).toFixed(0)} %`,
    quantile(
      told.map(({ errorPercent }) => errorPercent),
      0.5,
    ).toFixed(1),
    quantile(errors, 0.5).toFixed(1),
    quantile(errors, 0.9).toFixed(1),
    quantile(errors, 1).toFixed(1),
    `${((100 * inside) / told.length).toFixed(0)} %`,
    quantile(
      told.map(({ widthPercent }) => widthPercent),
      0.5,
    ).toFixed(1),
  ];
};

const outcomes = (): Outcome[] => {
  const random = seededRandom(SEED);
  return KILNS.flatMap((kiln) =>
    SCHEDULES.flatMap((schedule) =>
      COUPLINGS.flatMap((coupling) => {
        const own = random.fork(`${kiln.name}, ${schedule.name}, ${coupling}`);
        const reference = fired(setupOf(kiln, schedule, coupling, own, 0));
        return Array.from({ length: FIRINGS }, (): Outcome[] => {
          const firing = fired(setupOf(kiln, schedule, coupling, own, own.between(0, 0.2)));
          if (fullSeconds(firing) < AN_HOUR) return [];
          const outcome = outcomeOf(reference, firing);
          return [{ kiln: kiln.name, schedule: schedule.name, coupling, ...outcome }];
        }).flat();
      }),
    ),
  );
};

const relative = (): Table => {
  const all = outcomes();
  const where = (holds: (outcome: Outcome) => boolean) => all.filter(holds);
  return {
    title: 'Relative power, same schedule, against one reference firing (errors in %)',
    columns: ['firings', 'n', 'null', 'bias', 'median', '90 %', 'worst', '80 % range holds', '± %'],
    rows: [
      row('all', all),
      ...KILNS.map(({ name }) =>
        row(
          name,
          where(({ kiln }) => kiln === name),
        ),
      ),
      ...SCHEDULES.map(({ name }) =>
        row(
          name,
          where(({ schedule }) => schedule === name),
        ),
      ),
      ...COUPLINGS.map((own) =>
        row(
          `coupling ${own}`,
          where(({ coupling }) => coupling === own),
        ),
      ),
    ],
    notes: [
      'Firings at full power for an hour; loads 25–65 kg, also the reference’s; power lost 0–20 %.',
      'Wanted: median ≤ 2.5, worst ≤ 6, range holds 75–90 %, null on at most a third.',
    ],
  };
};

/** Held at a temperature for so long, walls are soaked through and the output tells the loss. */
const SOAK_MINUTES = 30 * 60;
const SOAKS_C = [800, 1000] as const;
const POWERS_LOST = [0, 0.35] as const;

const soak = (atC: number): ScheduleFile => ({
  name: `soak at ${atC}`,
  unit: 'C',
  segments: [{ ratePerHour: 200, target: atC, holdMinutes: SOAK_MINUTES }],
});

/** Full power over the output that a long hold settles at. */
const truePowerToLoss = (kiln: KilnPlan, powerLost: number, atC: number): number => {
  const { firing } = fired(
    {
      seed: 1,
      kiln,
      schedule: soak(atC),
      loadKg: 40,
      roomC: 20,
      elementWear: 1 / (1 - powerLost),
      logger: { intervalSeconds: 120 },
      record: { untilC: atC - 50, atMostHours: 48 },
    },
    { schedule: null },
  );
  const off = firing.truth.shutOffSeconds!;
  const settled = firing.outputPercent.filter(
    (_, i) => firing.atSeconds[i]! > off - 2 * AN_HOUR && firing.atSeconds[i]! < off,
  );
  return 100 / (settled.reduce((sum, value) => sum + value, 0) / settled.length);
};

const trueCeiling = (kiln: KilnPlan, powerLost: number): number => {
  const { firing } = fired(
    {
      seed: 1,
      kiln,
      schedule: {
        name: 'all it has',
        unit: 'C',
        segments: [{ ratePerHour: 'full', target: 1900, holdMinutes: 1 }],
      },
      loadKg: 40,
      roomC: 20,
      elementWear: 1 / (1 - powerLost),
      supply: { wander: 0 },
      logger: { intervalSeconds: 120 },
      record: { untilC: 100, atMostHours: 47 },
    },
    { schedule: null },
  );
  return firing.readingC.reduce((most, value) => Math.max(most, value), 0);
};

const steadyRow = (
  [kiln, schedule, powerLost, atC]: readonly [string, string, number, number],
  [ratio, ceilingC]: readonly [number, number],
  point: Elements['capability'][number],
  told: Elements,
): Table['rows'][number] => [
  kiln,
  schedule,
  powerLost,
  atC,
  ratio.toFixed(2),
  point.powerToLoss.toFixed(2),
  `${point.low.toFixed(2)}–${point.high.toFixed(2)}`,
  ceilingC.toFixed(0),
  told.ceilingC?.toFixed(0) ?? 'null',
  told.ceilingRange === null
    ? ''
    : `${told.ceilingRange.lowC.toFixed(0)}–${told.ceilingRange.highC.toFixed(0)}`,
];

const steady = (): Table => ({
  title: 'Power over steady loss, and the ceiling, from one firing against 30-hour soaks',
  columns: [
    'kiln',
    'fired on',
    'power lost',
    'at °C',
    'true ratio',
    'told',
    '80 % range',
    'true ceiling',
    'told',
    'range',
  ],
  rows: KILNS.flatMap((kiln) =>
    POWERS_LOST.flatMap((powerLost) => {
      const ceilingC = trueCeiling(kiln, powerLost);
      const ratios = SOAKS_C.map((atC) => truePowerToLoss(kiln, powerLost, atC));
      return [FAST_GLAZE, CRYSTAL_STEPS].flatMap((schedule) => {
        const random = seededRandom(SEED);
        const { document } = fired(setupOf(kiln, schedule, 1, random, powerLost));
        const told = document.elements!;
        return SOAKS_C.flatMap((atC, i) => {
          const point = told.capability.find(({ celsius }) => celsius === atC);
          return point === undefined
            ? []
            : [
                steadyRow(
                  [kiln.name, schedule.name, powerLost, atC],
                  [ratios[i]!, ceilingC],
                  point,
                  told,
                ),
              ];
        });
      });
    }),
  ),
});

export default {
  name: 'relative-power',
  run: (): Promise<Table[]> => Promise.resolve([relative(), steady()]),
};
