import type { Fired } from '../../builders/fired.ts';
import { USUAL_COUPLE } from '../../kiln/couple.ts';
import { Elements, type ElementsPlan } from '../../kiln/elements.ts';
import { BACKED_BRICK, KILNS, THICK_BRICK, THIN_BRICK } from '../../kiln/kilns.ts';
import type { Random } from '../../kiln/random.ts';
import { FAST_GLAZE, GLAZE_WITH_HOLD, SLOW_BISQUE } from '../../kiln/schedules.ts';
import type { Setup } from '../../kiln/types.ts';
import { plain, type FaultCase, type FaultRow, type Off } from './fault-row.ts';

const faultBegins = ({ firing }: Fired): number => firing.truth.faults[0]!.fromSeconds;
const momentOff: Off = (firing, finding) =>
  Math.abs(finding.evidence[0]!.fromSeconds - faultBegins(firing)) / 60;
const faultMinutes = ({ firing }: Fired): number => {
  const { fromSeconds, toSeconds } = firing.truth.faults[0]!;
  return (toSeconds - fromSeconds) / 60;
};

/** The share of full power that goes with a circuit; in an unevenly wired kiln not the n-th part. */
const shareOf = (elements: ElementsPlan, circuit: number): number => {
  const live = new Elements(elements, 1);
  const whole = live.shareOfNew(elements.ratedVolts);
  live.openCircuit(circuit);
  return 1 - live.shareOfNew(elements.ratedVolts) / whole;
};

/** A circuit that takes a share between two goes at heat: at full power, or with an output logged. */
const lostCircuit = (
  random: Random,
  [least, most]: readonly [number, number],
  withOutput: boolean,
): FaultCase => {
  const kiln = random.pick(KILNS);
  const choices = [2, 3, 4, 5, 6, 8, 10, 12].flatMap((circuits) => {
    const elements = { ...kiln.elements, circuits };
    return Array.from({ length: circuits }, (_, circuit) => ({ elements, circuit }));
  });
  const { elements, circuit } = random.pick(
    choices.filter((choice) => {
      const share = shareOf(choice.elements, choice.circuit);
      return share >= least && share <= most;
    }),
  );
  const when = { heatingPastC: random.between(780, 920) };
  const faults = [{ kind: 'circuit-open' as const, when, circuit }];
  const schedule = withOutput ? random.pick([GLAZE_WITH_HOLD, SLOW_BISQUE]) : FAST_GLAZE;
  const setup = plain(random, { kiln: { ...kiln, elements }, schedule, faults });
  return { setup, told: { options: { kiln: { circuits: elements.circuits } }, withOutput } };
};

const shareOff: Off = (_, { figures }, { setup }) => {
  const fault = setup.faults?.find(({ kind }) => kind === 'circuit-open');
  const circuit = fault?.kind === 'circuit-open' ? fault.circuit : NaN;
  return Math.abs(figures['lostPercent']! - 100 * shareOf(setup.kiln.elements, circuit));
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

/** What befalls the kiln. */
export const KILN_ROWS: readonly FaultRow[] = [
  {
    id: 'elements-weak',
    what: 'power lost 11–25 %; short: under 5 %',
    beyond: (random) => worn(random, random.between(0.11, 0.25)),
    short: (random) => worn(random, random.between(0, 0.05)),
  },
  {
    id: 'element-lost',
    what: 'at full power, 15 % of it or more; short: 8–13 %',
    beyond: (random) => lostCircuit(random, [0.15, 0.55], false),
    short: (random) => lostCircuit(random, [0.08, 0.13], false),
    off: { min: momentOff, '% of full power': shareOff },
  },
  {
    id: 'element-lost',
    what: 'with an output logged; the same',
    beyond: (random) => lostCircuit(random, [0.15, 0.4], true),
    short: (random) => lostCircuit(random, [0.08, 0.13], true),
    off: { min: momentOff, '% of full power': shareOff },
  },
  {
    id: 'power-stuck-on',
    what: '17–45 min; short: 3–8 min',
    beyond: (random) => stuck(random, random.between(17, 45)),
    short: (random) => stuck(random, random.between(3, 8)),
    off: {
      min: (firing, { figures }) => Math.abs(figures['stuckMinutes']! - faultMinutes(firing)),
    },
  },
  {
    id: 'power-interrupted',
    what: '6–50 min; short: under 2 min',
    beyond: (random) => cut(random, random.between(6, 50)),
    short: (random) => cut(random, random.between(0.5, 2)),
    off: {
      min: (firing, { figures }) => Math.abs(figures['interruptedMinutes']! - faultMinutes(firing)),
    },
  },
  {
    id: 'heavy-load',
    what: '58–65 kg against 22–28; short: 38–44 against 40',
    beyond: (random) => loaded(random, random.between(22, 28), random.between(58, 65)),
    short: (random) => loaded(random, 40, random.between(38, 44)),
  },
  {
    id: 'ceiling-near',
    what: 'ceiling within 100 °C of the target; short: hardly worn',
    beyond: (random) =>
      random.chance(0.5)
        ? tired(random, THIN_BRICK, random.between(1.68, 1.77))
        : tired(random, BACKED_BRICK, random.between(2.1, 2.2)),
    short: (random) =>
      tired(random, random.pick([THIN_BRICK, THICK_BRICK]), random.between(1, 1.2)),
  },
  {
    id: 'zones-apart',
    what: 'second couple 40–70 °C off; short: under 8 °C',
    beyond: (random) => secondPlace(random, random.between(40, 70)),
    short: (random) => secondPlace(random, random.between(0, 8)),
  },
];
