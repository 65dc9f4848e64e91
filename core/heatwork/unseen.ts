import { doseOfSegment, type Arrhenius } from '../cones/arrhenius.ts';
import type { Trace } from '../model/trace.ts';
import { lowerBound } from '../numeric/search.ts';
import { SECONDS_PER_HOUR } from '../units.ts';
import { marginOf } from './margins.ts';
import type { TopOfFiring } from './top-of-firing.ts';

/**
 * What the time between far-apart samples may have hidden: how many °C less or more end point of the
 * cone nearest to the result, both as magnitudes.
 */
export interface Unseen {
  readonly coolerC: number;
  readonly hotterC: number;
  /** Whether any time near the top was unseen. */
  readonly any: boolean;
}

/** Time between samples is unseen when longer than this and than three usual intervals (chosen) … */
const LONG_SECONDS = 600;
const LONG_INTERVALS = 3;
/** … or when longer than this in any case. */
const TOO_LONG_SECONDS = 1200;
/** Unseen time that could not have come nearer to the top than this is left alone. */
const NEAR_TOP_C = 150;
/** A kiln may for a while climb or fall faster than it was seen to near the top (chosen). */
const FASTER = 1.5;
/** Where no climb or no fall was seen (common practice: 100–300 °C/h from the peak). */
const USUAL_CLIMB_C_PER_HOUR = 150;
const USUAL_FALL_C_PER_HOUR = 250;
const FALL_STRETCH_C = 200;
const LEAST_FALL_C_PER_HOUR = 20;

interface Interval {
  readonly hours: number;
  readonly fromC: number;
  readonly toC: number;
}

interface Pace {
  readonly upCPerHour: number;
  readonly downCPerHour: number;
}

/** Where the course between two samples turns. */
interface Bend {
  readonly apexC: number;
  readonly atHours: number;
}

/** Longer than this between two samples is unseen. */
const longSeconds = ({ summary }: Trace): number =>
  Math.min(
    Math.max(LONG_SECONDS, LONG_INTERVALS * summary.medianIntervalSeconds),
    TOO_LONG_SECONDS,
  );

/** The mean rate of falling that was seen in the first stretch under the top, or what is usual. */
const fallRate = (trace: Trace, { topC, topAtSeconds }: TopOfFiring): number => {
  const { atSeconds, smoothC } = trace;
  const long = longSeconds(trace);
  let [fallC, fallSeconds] = [0, 0];
  for (let i = lowerBound(atSeconds, topAtSeconds) + 1; i < atSeconds.length; i += 1) {
    if (smoothC[i]! < topC - FALL_STRETCH_C) break;
    const span = atSeconds[i]! - atSeconds[i - 1]!;
    const drop = smoothC[i - 1]! - smoothC[i]!;
    // Holds and unseen time are no fall.
    if (span > long || drop * SECONDS_PER_HOUR < LEAST_FALL_C_PER_HOUR * span) continue;
    fallC += drop;
    fallSeconds += span;
  }
  return fallSeconds > 0 ? (fallC * SECONDS_PER_HOUR) / fallSeconds : USUAL_FALL_C_PER_HOUR;
};

/** As hot as it can have been: straight up, then down to where the record goes on. */
const hottest = ({ hours, fromC, toC }: Interval, pace: Pace): Bend => {
  const rise = toC - fromC + pace.downCPerHour * hours;
  const atHours = rise / (pace.upCPerHour + pace.downCPerHour);
  return { atHours, apexC: fromC + pace.upCPerHour * atHours };
};

/** As cool as it can have been: straight down, then up to where the record goes on. */
const coolest = ({ hours, fromC, toC }: Interval, pace: Pace): Bend => {
  const fall = fromC - toC + pace.upCPerHour * hours;
  const atHours = fall / (pace.upCPerHour + pace.downCPerHour);
  return { atHours, apexC: fromC - pace.downCPerHour * atHours };
};

/** At least as steep as the interval itself. */
const paceOver = ({ hours, fromC, toC }: Interval, usual: Pace): Pace => ({
  upCPerHour: Math.max(usual.upCPerHour, (toC - fromC) / hours),
  downCPerHour: Math.max(usual.downCPerHour, (fromC - toC) / hours),
});

const unseenIntervals = (trace: Trace, topC: number, usual: Pace): Interval[] => {
  const { atSeconds, celsius, joinedAt } = trace;
  const long = longSeconds(trace);
  const intervals: Interval[] = [];
  for (let i = 1; i < atSeconds.length; i += 1) {
    const span = atSeconds[i]! - atSeconds[i - 1]!;
    // Between two logs nothing is counted, and nothing was bridged.
    if (span <= long || i === joinedAt) continue;
    const [fromC, toC] = [celsius[i - 1]!, celsius[i]!];
    const interval = { hours: span / SECONDS_PER_HOUR, fromC, toC };
    const reached = hottest(interval, paceOver(interval, usual)).apexC;
    if (reached > topC - NEAR_TOP_C) intervals.push(interval);
  }
  return intervals;
};

/**
 * Bounds what happened between far-apart samples near the top: no faster up than half again the
 * climb before it, no faster down than half again the fall that was seen. Several such times are independent,
 * so their effects add as squares.
 */
export const unseenTime = (
  trace: Trace,
  top: TopOfFiring,
  kinetics: Arrhenius,
  dose: number,
): Unseen => {
  const usual: Pace = {
    upCPerHour: FASTER * (top.rampRateCPerHour ?? USUAL_CLIMB_C_PER_HOUR),
    downCPerHour: FASTER * fallRate(trace, top),
  };
  const margin = marginOf(kinetics, dose) ?? 0;
  const shiftC = (interval: Interval, { apexC, atHours }: Bend): number => {
    const { fromC, toC, hours } = interval;
    const straight = doseOfSegment(kinetics, fromC, toC, hours);
    const first = doseOfSegment(kinetics, fromC, apexC, atHours);
    const second = doseOfSegment(kinetics, apexC, toC, hours - atHours);
    // The straight line is part of the dose; what is left without it never is less than nothing.
    return (marginOf(kinetics, Math.max(dose - straight, 0) + first + second) ?? margin) - margin;
  };
  const intervals = unseenIntervals(trace, top.topC, usual);
  const rootSum = (bend: typeof hottest): number =>
    Math.hypot(...intervals.map((one) => shiftC(one, bend(one, paceOver(one, usual)))));
  return { coolerC: rootSum(coolest), hotterC: rootSum(hottest), any: intervals.length > 0 };
};
