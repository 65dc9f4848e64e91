import type { Finding, FindingId } from '../../core/model/finding.ts';
import type { Fired, Told } from '../builders/fired.ts';
import { USUAL_COUPLE } from '../kiln/couple.ts';
import { BACKED_BRICK, KILNS, THICK_BRICK, THIN_BRICK } from '../kiln/kilns.ts';
import type { Random } from '../kiln/random.ts';
import { FAST_GLAZE, GLAZE_WITH_HOLD, SLOW_BISQUE } from '../kiln/schedules.ts';
import type { Setup } from '../kiln/types.ts';

/** A firing, what is told of it, and the earlier firing that it is held against. */
export interface FaultCase {
  readonly setup: Setup;
  readonly told?: Told;
  readonly reference?: Setup;
}

/** How firings with one finding are drawn. To try another id, add its row. */
export interface FaultRow {
  readonly id: FindingId;
  readonly beyond: (random: Random) => FaultCase;
  readonly short: (random: Random) => FaultCase;
  /** How far off the finding's own figure is, where the truth has one. */
  readonly error?: (firing: Fired, finding: Finding) => number;
  readonly errorUnit?: string;
}

/** Loads, rooms, noise and sampling as they come; couples true, so that only the fault differs. */
const plain = (random: Random, more: Pick<Setup, 'kiln' | 'schedule'> & Partial<Setup>): Setup => ({
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

const faultBegins = ({ firing }: Fired): number => firing.truth.faults[0]!.fromSeconds;
const minutesOff = (firing: Fired, finding: Finding): number =>
  Math.abs(finding.evidence[0]!.fromSeconds - faultBegins(firing)) / 60;
const faultMinutes = ({ firing }: Fired): number => {
  const { fromSeconds, toSeconds } = firing.truth.faults[0]!;
  return (toSeconds - fromSeconds) / 60;
};

/** Full power from 590 °C on, and a circuit of some goes. */
const lostCircuit = (random: Random, circuits: number | null): FaultCase => {
  const kiln = random.pick(KILNS);
  const elements = circuits === null ? kiln.elements : { ...kiln.elements, circuits };
  const faults = [
    {
      kind: 'circuit-open' as const,
      when: { heatingPastC: random.between(780, 920) },
      circuit: random.whole(0, elements.circuits - 1),
    },
  ];
  const setup = plain(random, { kiln: { ...kiln, elements }, schedule: FAST_GLAZE, faults });
  return { setup, told: { options: { kiln: { circuits: elements.circuits } } } };
};

const stuck = (random: Random, minutes: number): FaultCase => {
  const schedule = random.pick([GLAZE_WITH_HOLD, FAST_GLAZE, SLOW_BISQUE]);
  const when = { rampEndOf: schedule.segments.length - 1 };
  const faults = [{ kind: 'relay-stuck' as const, when, minutes }];
  return { setup: plain(random, { kiln: random.pick(KILNS), schedule, faults }) };
};

const cut = (random: Random, minutes: number): FaultCase => {
  const schedule = random.pick([GLAZE_WITH_HOLD, FAST_GLAZE, SLOW_BISQUE]);
  const when = { heatingPastC: random.between(300, 1000) };
  const faults = [{ kind: 'power-cut' as const, when, minutes }];
  return { setup: plain(random, { kiln: random.pick(KILNS), schedule, faults }) };
};

/** Two firings of one kiln, so and so much of its power lost in between. */
const worn = (random: Random, powerLost: number): FaultCase => {
  const kiln = random.pick(KILNS);
  return {
    reference: plain(random, { kiln, schedule: FAST_GLAZE }),
    setup: plain(random, { kiln, schedule: FAST_GLAZE, elementWear: 1 / (1 - powerLost) }),
  };
};

const loaded = (random: Random, beforeKg: number, loadKg: number): FaultCase => {
  const kiln = random.pick(KILNS);
  const schedule = FAST_GLAZE;
  return {
    reference: plain(random, { kiln, schedule, loadKg: beforeKg }),
    setup: plain(random, { kiln, schedule, loadKg }),
  };
};

const tired = (random: Random, kiln: Setup['kiln'], elementWear: number): FaultCase => ({
  setup: plain(random, { kiln, schedule: FAST_GLAZE, elementWear }),
});

const secondPlace = (random: Random, offsetC: number): FaultCase => ({
  setup: plain(random, {
    kiln: random.pick(KILNS),
    schedule: random.pick([GLAZE_WITH_HOLD, SLOW_BISQUE]),
    zones: [{ ...USUAL_COUPLE, offsetC: random.chance(0.5) ? offsetC : -offsetC }],
  }),
});

export const FAULT_ROWS: readonly FaultRow[] = [
  {
    id: 'element-lost',
    beyond: (random) => lostCircuit(random, null),
    short: (random) => lostCircuit(random, random.pick([11, 14])),
    error: minutesOff,
    errorUnit: 'min',
  },
  {
    id: 'element-lost',
    beyond: (random) => lostCircuit(random, random.pick([3, 4, 5, 6])),
    short: (random) => lostCircuit(random, random.pick([11, 14])),
    // The fraction of an evenly wired half's circuit; wiring by zones makes it a little other.
    error: ({ document }, { figures }) =>
      Math.abs(figures['lostPercent']! - 100 / document.options.kiln!.circuits!),
    errorUnit: '% of full power',
  },
  {
    id: 'power-stuck-on',
    beyond: (random) => stuck(random, random.between(17, 45)),
    short: (random) => stuck(random, random.between(3, 8)),
    error: (firing, { figures }) => Math.abs(figures['stuckMinutes']! - faultMinutes(firing)),
    errorUnit: 'min',
  },
  {
    id: 'power-interrupted',
    beyond: (random) => cut(random, random.between(6, 50)),
    short: (random) => cut(random, random.between(0.5, 2)),
    error: (firing, { figures }) => Math.abs(figures['interruptedMinutes']! - faultMinutes(firing)),
    errorUnit: 'min',
  },
  {
    id: 'elements-weak',
    beyond: (random) => worn(random, random.between(0.11, 0.25)),
    short: (random) => worn(random, random.between(0, 0.05)),
  },
  {
    id: 'heavy-load',
    beyond: (random) => loaded(random, random.between(22, 28), random.between(58, 65)),
    short: (random) => loaded(random, 40, random.between(38, 44)),
  },
  {
    id: 'ceiling-near',
    beyond: (random) =>
      random.chance(0.5)
        ? tired(random, THIN_BRICK, random.between(1.68, 1.77))
        : tired(random, BACKED_BRICK, random.between(2.1, 2.2)),
    short: (random) =>
      tired(random, random.pick([THIN_BRICK, THICK_BRICK]), random.between(1, 1.2)),
  },
  {
    id: 'zones-apart',
    beyond: (random) => secondPlace(random, random.between(40, 70)),
    short: (random) => secondPlace(random, random.between(0, 8)),
  },
];
