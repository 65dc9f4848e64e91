import { doseOfSegment, doseRate, type Arrhenius } from '../cones/arrhenius.ts';
import type { HeatWork } from '../model/document.ts';
import type { Trace } from '../model/trace.ts';
import { seconds, SECONDS_PER_HOUR } from '../units.ts';

/** Points of the curve: one each time this share of the whole has been added. */
const STEP_SHARE = 1 / 250;
/** Before this share the curve is level. */
const BEGINS_SHARE = 1e-4;
/** Steps between samples up to this are integrated as straight in ln(rate): within 1e-3 of them. */
const SMALL_STEP_C = 10;
/** Below this relative change of rate the mean of both ends is as good: within 2e-4 (ratio²/12). */
const FLAT_RATIO = 0.05;

/** Mean of a rate that runs exponentially from one value to another. */
const meanRate = (from: number, to: number): number => {
  const ratio = to / from - 1;
  if (!(Math.abs(ratio) > FLAT_RATIO)) return (from + to) / 2;
  return (to - from) / Math.log1p(ratio);
};

/** The dose at every sample, from 0. */
const runningDose = (
  trace: Trace,
  kinetics: Arrhenius,
  toTruth: (readC: number) => number,
): Float64Array => {
  const { atSeconds, celsius } = trace;
  const running = new Float64Array(atSeconds.length);
  let sum = 0;
  let fromC = toTruth(celsius[0]!);
  let fromRate = doseRate(kinetics, fromC);
  for (let i = 1; i < atSeconds.length; i += 1) {
    const toC = toTruth(celsius[i]!);
    const toRate = doseRate(kinetics, toC);
    const hours = (atSeconds[i]! - atSeconds[i - 1]!) / SECONDS_PER_HOUR;
    const isSmall = Math.abs(toC - fromC) <= SMALL_STEP_C;
    sum += isSmall
      ? hours * meanRate(fromRate, toRate)
      : doseOfSegment(kinetics, fromC, toC, hours);
    running[i] = sum;
    fromC = toC;
    fromRate = toRate;
  }
  return running;
};

/**
 * How one cone's dose grew, thinned so that straight lines between the points are within half a
 * step of it.
 */
export const accumulatedDose = (
  trace: Trace,
  kinetics: Arrhenius,
  toTruth: (readC: number) => number,
): HeatWork['accumulated'] => {
  const running = runningDose(trace, kinetics, toTruth);
  const last = running.length - 1;
  const total = running[last]!;
  const kept = [0];
  let nextDose = total * BEGINS_SHARE;
  for (let i = 1; i < last; i += 1) {
    if (running[i]! < nextDose) continue;
    // The sample before a rise is kept too, so that a long level stretch stays level.
    if (kept.at(-1)! < i - 1 && running[i]! - running[i - 1]! > total * STEP_SHARE)
      kept.push(i - 1);
    kept.push(i);
    nextDose = running[i]! + total * STEP_SHARE;
  }
  if (last > 0) kept.push(last);
  return kept.map((i) => ({ atSeconds: seconds(trace.atSeconds[i]!), dose: running[i]! }));
};
