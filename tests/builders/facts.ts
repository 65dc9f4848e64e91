/**
 * Facts of one invented firing for the detectors' tests: a cone 6 glaze load on a schedule whose
 * times are whole minutes, driven leg by leg. Unless told otherwise it goes exactly as planned.
 */
import { positionOfCone, type Cone } from '../../core/model/cone.ts';
import type { AlignedLeg, Alignment, Elements, HeatWork } from '../../core/model/document.ts';
import type { Schedule } from '../../core/model/schedule.ts';
import type { Source } from '../../core/model/source.ts';
import type { TraceSummary } from '../../core/model/trace.ts';
import { celsius, celsiusDelta, celsiusPerHour, seconds } from '../../core/units.ts';
import type { Facts } from '../../core/findings/facts.ts';
import { traceFrom, type CurvePoint, type TraceOptions } from './trace.ts';

export const START_C = 20;

/** What a firing that never needed full power says of its kiln. */
export const NOTHING_OF_ELEMENTS: Elements = {
  limited: [],
  capability: [],
  ceilingC: null,
  ceilingRange: null,
  ceilingAtLeastC: null,
  hottestCone: null,
  fit: null,
  fitReason: 'never-at-full-power',
  relativePower: null,
  relativePowerReason: 'no-reference',
  relativeLoad: null,
};

/** 100 °C/h to 120, half an hour there; 150 °C/h to 1020; 60 °C/h to 1215, a quarter hour there. */
export const SCHEDULE: Schedule = {
  name: 'invented cone 6 glaze',
  cone: '6',
  segments: [
    { rateCPerHour: celsiusPerHour(100), minutes: null, targetC: celsius(120), holdMinutes: 30 },
    { rateCPerHour: celsiusPerHour(150), minutes: null, targetC: celsius(1020), holdMinutes: 0 },
    { rateCPerHour: celsiusPerHour(60), minutes: null, targetC: celsius(1215), holdMinutes: 15 },
  ],
};

export type LegName =
  'firstRamp' | 'dryingHold' | 'middleRamp' | 'lastRamp' | 'topHold' | 'cooling';

interface Leg {
  readonly segment: number | null;
  readonly kind: AlignedLeg['kind'];
  readonly minutes: number;
  readonly toC: number;
}

/** What the schedule asks, leg by leg, and the kiln's own cooling after it. */
export const PLANNED: Readonly<Record<LegName, Leg>> = {
  firstRamp: { segment: 0, kind: 'ramp', minutes: 60, toC: 120 },
  dryingHold: { segment: 0, kind: 'hold', minutes: 30, toC: 120 },
  middleRamp: { segment: 1, kind: 'ramp', minutes: 360, toC: 1020 },
  lastRamp: { segment: 2, kind: 'ramp', minutes: 195, toC: 1215 },
  topHold: { segment: 2, kind: 'hold', minutes: 15, toC: 1215 },
  cooling: { segment: null, kind: 'cooling', minutes: 693, toC: 60 },
};

const NAMES = Object.keys(PLANNED) as LegName[];

/** How legs went otherwise than planned; null for one that never happened. */
export type Driven = Partial<
  Record<
    LegName,
    (Partial<Pick<Leg, 'minutes' | 'toC'>> & { readonly verdict?: AlignedLeg['verdict'] }) | null
  >
>;

type Course = AlignedLeg['planned'];

const courses = (legs: readonly (Leg | null)[]): (Course | null)[] => {
  let at = 0;
  let fromC = START_C;
  return legs.map((leg) => {
    if (leg === null) return null;
    const course = {
      startSeconds: seconds(at * 60),
      endSeconds: seconds((at + leg.minutes) * 60),
      startC: celsius(fromC),
      endC: celsius(leg.toC),
      rateCPerHour: celsiusPerHour(((leg.toC - fromC) / leg.minutes) * 60),
    };
    at += leg.minutes;
    fromC = leg.toC;
    return course;
  });
};

const drivenLegs = (driven: Driven): (Leg | null)[] =>
  NAMES.map((name) => (driven[name] === null ? null : { ...PLANNED[name], ...driven[name] }));

const alignmentOf = (driven: Driven): Alignment => {
  const planned = courses(NAMES.map((name) => PLANNED[name])) as Course[];
  const actual = courses(drivenLegs(driven));
  const legs = NAMES.map((name, i): AlignedLeg => {
    const { segment, kind } = PLANNED[name];
    const course = actual[i] as AlignedLeg['actual'];
    const verdict = course === null ? 'missing' : (driven[name]?.verdict ?? 'as-planned');
    return { segment, kind, planned: planned[i]!, actual: course, verdict };
  });
  return {
    confidence: 0.9,
    legs,
    planned: [
      { atSeconds: seconds(0), celsius: celsius(START_C) },
      ...planned.map(({ endSeconds, endC }) => ({ atSeconds: endSeconds, celsius: endC })),
    ],
    setpointDisagreementSeconds: null,
  };
};

const cornersOf = (driven: Driven): CurvePoint[] => [
  [0, START_C],
  ...courses(drivenLegs(driven)).flatMap((course): CurvePoint[] =>
    course === null ? [] : [[course.endSeconds / 60, course.endC]],
  ),
];

interface HeatWorkOptions {
  readonly rangeCones?: number;
  readonly bound?: HeatWork['cone']['bound'];
}

/** Heat-work that came out at a position, with an 80 % range of ± `rangeCones`. */
export const heatWorkAt = (
  position: number | null,
  target: Cone | null = '6',
  { rangeCones = 0.5, bound = 'both-ways' }: HeatWorkOptions = {},
): HeatWork => {
  const off = position === null || target === null ? 0 : position - positionOfCone(target);
  const verdictFor = (cones: number) => (cones < 0 ? 'under' : 'over');
  const span = { fromSeconds: seconds(540 * 60), toSeconds: seconds(645 * 60) };
  return {
    cone: {
      label: null,
      position,
      lowPosition: position === null ? null : position - rangeCones,
      highPosition: position === null ? null : position + rangeCones,
      bound,
    },
    equivalentC: null,
    byCone: [],
    target:
      target === null
        ? null
        : {
            cone: target,
            dose: Math.exp(off),
            marginC: celsiusDelta(off * 20),
            verdict: Math.abs(off) <= 0.5 ? 'within' : verdictFor(off),
          },
    accumulated: [
      { atSeconds: span.fromSeconds, dose: 0.06 },
      { atSeconds: span.toSeconds, dose: 1 },
    ],
    parts: [{ kind: 'ramp', ...span, doseShare: 1, positions: null }],
    remedies: [],
    coupleErrorC: null,
    assumptions: [],
  };
};

const SOURCE: Source = {
  fileName: 'invented.csv',
  byteLength: 20_000,
  sha256: null,
  format: 'delimited',
  encoding: 'utf-8',
  delimiter: ',',
  decimalMark: '.',
  headerLine: 1,
  rowsRead: 1354,
  rowsKept: 1354,
  rowsRejected: 0,
  rejected: [],
  time: { columns: ['minutes'], kind: 'elapsed', pattern: 'minutes', assumptions: [] },
  channels: [],
  decisions: [],
  warnings: [],
};

/** The facts of a firing driven leg by leg; `options` say how its log was taken. */
export const firingFacts = (driven: Driven = {}, options: TraceOptions = {}): Facts => {
  const samples = traceFrom(cornersOf(driven), { noiseC: 0.5, resolutionC: 0.1, ...options });
  return {
    options: { cone: '6' },
    source: SOURCE,
    trace: samples.summary,
    samples,
    zones: [],
    schedule: SCHEDULE,
    alignment: alignmentOf(driven),
    heatWork: heatWorkAt(6.1),
    bands: [],
    load: { state: 'as-meant', refireTo: null },
    overshoots: [],
    elements: NOTHING_OF_ELEMENTS,
  };
};

/** The facts of a firing that went as planned, but for what is told. */
export const facts = (overrides: Partial<Facts> = {}): Facts => ({
  ...firingFacts(),
  ...overrides,
});

/** The same facts with another summary of the trace, in both places that hold it. */
export const withTrace = (base: Facts, change: Partial<TraceSummary>): Facts => {
  const summary = { ...base.trace, ...change };
  return { ...base, trace: summary, samples: { ...base.samples, summary } };
};

/** The same facts with an alignment that is trusted less. */
export const withConfidence = (base: Facts, confidence: number): Facts => ({
  ...base,
  alignment: base.alignment && { ...base.alignment, confidence },
});

/** The facts of a firing for which no schedule was given. */
export const withoutSchedule = (base: Facts = facts()): Facts => ({
  ...base,
  schedule: null,
  alignment: null,
});
