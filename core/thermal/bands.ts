import type { Band } from '../model/document.ts';
import type { Trace } from '../model/trace.ts';
import { interpolate, lowerBound } from '../numeric/search.ts';
import {
  celsius,
  celsiusPerHour,
  seconds,
  SECONDS_PER_HOUR,
  SECONDS_PER_MINUTE,
} from '../units.ts';

/** A stretch of temperature in which something happens to the ware. */
interface Phase {
  readonly name: string;
  readonly fromC: number;
  readonly toC: number;
}

/**
 * Phases on the way up and down. Drying and burnout: common practice. Bound water: common practice,
 * sources 350–800 °C. Quartz inverts at 573 °C, cristobalite at 220–226 °C, glaze crystals grow
 * 1025–800 °C on cooling; ware dunts 600–500 and 250–200 °C (reference notes, seen).
 */
const PHASES: readonly Phase[] = [
  { name: 'drying', fromC: 80, toC: 130 },
  { name: 'bound-water', fromC: 350, toC: 600 },
  { name: 'quartz', fromC: 550, toC: 600 },
  { name: 'burnout', fromC: 700, toC: 900 },
  { name: 'crystal-growth', fromC: 1025, toC: 800 },
  { name: 'quartz', fromC: 600, toC: 550 },
  { name: 'dunting', fromC: 600, toC: 500 },
  { name: 'cristobalite', fromC: 250, toC: 200 },
];

/** Candling is below this (common practice); it is told of firings that start below the other. */
const CANDLING_BELOW_C = 100;
const STARTS_COLD_BELOW_C = 60;
/** The chart's rates are those over the last 100 °C (cone maker's chart, 2016). */
const LAST_STRETCH_C = 100;
/** Crystals begin to grow here, so the first cooling ends here. */
const FIRST_COOLING_TO_C = 1025;
/** Ripple of a hold at the top is neither climb nor cooling: this much under it, or three noises. */
const RIPPLE_C = 2;
/** A phase narrower than this says nothing of a rate (chosen). */
const NARROWEST_C = 10;

/** The fastest rate is one that was kept up for this long (chosen: ware does not feel less). */
const KEPT_UP_SECONDS = 5 * SECONDS_PER_MINUTE;
/** Slopes less sure than this, or than a fifth of themselves, are noise (chosen). */
const SURE_C_PER_HOUR = 10;
const SURE_SHARE = 0.2;
/** A phase that went by unseen for more than this share is left out (chosen). */
const UNSEEN_SHARE = 0.5;

/** When a firing went through a stretch of temperature. */
export interface Pass {
  readonly startSeconds: number;
  readonly endSeconds: number;
}

const crossing = (trace: Trace, before: number, levelC: number): number => {
  const { atSeconds, smoothC } = trace;
  const after = Math.min(before + 1, atSeconds.length - 1);
  const change = smoothC[after]! - smoothC[before]!;
  const share = change === 0 ? 0 : (levelC - smoothC[before]!) / change;
  return (
    atSeconds[before]! + Math.min(Math.max(share, 0), 1) * (atSeconds[after]! - atSeconds[before]!)
  );
};

/**
 * When the firing first went through a phase from end to end, among the samples of one direction: up
 * to the first reading at the far end, from the last reading before that at the near end. Null if it
 * did not go through wholly.
 */
const passThrough = (
  trace: Trace,
  fromC: number,
  toC: number,
  first: number,
  last: number,
): Pass | null => {
  const sign = toC > fromC ? 1 : -1;
  const isThere = (i: number, levelC: number): boolean => sign * (trace.smoothC[i]! - levelC) >= 0;
  let end = first;
  while (end <= last && !isThere(end, toC)) end += 1;
  if (end > last) return null;
  let start = end - 1;
  while (start >= first && sign * (trace.smoothC[start]! - fromC) > 0) start -= 1;
  if (start < first) return null;
  return {
    startSeconds: crossing(trace, start, fromC),
    endSeconds: crossing(trace, end - 1, toC),
  };
};

/**
 * The fastest slope that was kept up during a pass, as the mean over a sliding window; at least the
 * pass's own mean rate. Windows whose slopes are mostly noise are passed over.
 */
const fastest = (trace: Trace, pass: Pass, meanCPerHour: number): number => {
  const { atSeconds, slopeCPerHour, slopeErrorCPerHour } = trace;
  const from = lowerBound(atSeconds, pass.startSeconds);
  const to = lowerBound(atSeconds, pass.endSeconds + 1e-6);
  const window = Math.min(KEPT_UP_SECONDS, pass.endSeconds - pass.startSeconds);
  const sign = Math.sign(meanCPerHour);
  let best = meanCPerHour;
  let [first, slopes, errors] = [from, 0, 0];
  for (let i = from; i < to; i += 1) {
    slopes += slopeCPerHour[i]!;
    errors += slopeErrorCPerHour[i]!;
    while (atSeconds[i]! - atSeconds[first]! > window) {
      slopes -= slopeCPerHour[first]!;
      errors -= slopeErrorCPerHour[first]!;
      first += 1;
    }
    // The first windows are not whole yet.
    if (atSeconds[i]! - pass.startSeconds < window && i < to - 1) continue;
    const count = i - first + 1;
    const mean = slopes / count;
    const isSure = errors / count <= Math.max(SURE_C_PER_HOUR, SURE_SHARE * Math.abs(mean));
    if (isSure && sign * mean > sign * best) best = mean;
  }
  return best;
};

const isSeen = ({ summary }: Trace, { startSeconds, endSeconds }: Pass): boolean => {
  const unseen = summary.gaps.reduce((sum, gap) => {
    const overlap = Math.min(gap.toSeconds, endSeconds) - Math.max(gap.fromSeconds, startSeconds);
    return sum + Math.max(overlap, 0);
  }, 0);
  return unseen <= UNSEEN_SHARE * (endSeconds - startSeconds);
};

const bandOf = (trace: Trace, phase: Phase, pass: Pass): Band => {
  const span = pass.endSeconds - pass.startSeconds;
  const mean = ((phase.toC - phase.fromC) * SECONDS_PER_HOUR) / span;
  return {
    name: phase.name,
    fromC: celsius(phase.fromC),
    toC: celsius(phase.toC),
    direction: phase.toC > phase.fromC ? 'heating' : 'cooling',
    seconds: seconds(span),
    meanCPerHour: celsiusPerHour(mean),
    fastestCPerHour: celsiusPerHour(fastest(trace, pass, mean)),
  };
};

/** The phases whose ends depend on the firing: candling, the last stretch, the first cooling. */
const ownPhases = (trace: Trace, topC: number, startC: number): Phase[] => {
  const ripple = Math.max(RIPPLE_C, 3 * trace.summary.noiseC);
  return [
    ...(startC < STARTS_COLD_BELOW_C
      ? [{ name: 'candling', fromC: startC, toC: CANDLING_BELOW_C }]
      : []),
    { name: 'last-stretch', fromC: topC - LAST_STRETCH_C, toC: topC - ripple },
    { name: 'first-cooling', fromC: topC - ripple, toC: FIRST_COOLING_TO_C },
  ].filter(({ name, fromC, toC }) =>
    name === 'first-cooling' ? fromC - toC >= NARROWEST_C : toC - fromC >= NARROWEST_C,
  );
};

interface Course {
  readonly topC: number;
  readonly startC: number;
  readonly passOf: (phase: Pick<Phase, 'fromC' | 'toC'>) => Pass | null;
}

/** The way up from where heating began to the top, and the way down from there. */
const courseOf = (trace: Trace): Course => {
  const { atSeconds, smoothC, summary } = trace;
  const topC = smoothC.reduce((most, value) => Math.max(most, value), -Infinity);
  const top = smoothC.indexOf(topC);
  const start = Math.max(lowerBound(atSeconds, summary.startSeconds ?? 0) - 1, 0);
  const last = atSeconds.length - 1;
  return {
    topC,
    startC: interpolate(atSeconds, smoothC, summary.startSeconds ?? 0),
    passOf: ({ fromC, toC }) => {
      const [first, end] = toC > fromC ? [Math.min(start, top), top] : [top, last];
      const pass = passThrough(trace, fromC, toC, first, end);
      return pass !== null && isSeen(trace, pass) ? pass : null;
    },
  };
};

/**
 * When the firing went through a stretch of temperature from end to end: on the way up to the top
 * where `toC` is the hotter, else on the way down from it. Null if it did not, or mostly unseen.
 */
export const passBetween = (trace: Trace, fromC: number, toC: number): Pass | null =>
  trace.atSeconds.length < 2 ? null : courseOf(trace).passOf({ fromC, toC });

/**
 * How the firing went through the phases of the ware, in order of time: those on the way up before
 * the top, those on the way down after it. Only phases that it went through from end to end, and not
 * mostly unseen, are told. `fastestCPerHour` is the fastest that was kept up for five minutes, from
 * the trace's own slopes, leaving out slopes that are mostly noise.
 */
export const measureBands = (trace: Trace): Band[] => {
  if (trace.atSeconds.length < 2) return [];
  const { topC, startC, passOf } = courseOf(trace);
  const passed = [...PHASES, ...ownPhases(trace, topC, startC)].flatMap((phase) => {
    const pass = passOf(phase);
    return pass === null ? [] : [{ phase, pass }];
  });
  passed.sort((a, b) => a.pass.startSeconds - b.pass.startSeconds);
  return passed.map(({ phase, pass }) => bandOf(trace, phase, pass));
};
