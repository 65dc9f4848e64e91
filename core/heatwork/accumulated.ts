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

/** Longer records are followed at evenly spread samples: this many meet the dose within 1e-4. */
const MOST_SAMPLES = 100_000;

/** The samples to follow, the last one included. */
const followed = (count: number): Uint32Array => {
  const stride = Math.ceil(count / MOST_SAMPLES);
  const steps = Math.ceil((count - 1) / stride);
  return Uint32Array.from({ length: steps + 1 }, (_, k) => Math.min(k * stride, count - 1));
};

/** The dose at each followed sample, from 0. */
const runningDose = (
  { atSeconds, celsius, joinedAt = Infinity }: Trace,
  samples: Uint32Array,
  kinetics: Arrhenius,
  toTruth: (readC: number) => number,
): Float64Array => {
  const running = new Float64Array(samples.length);
  let sum = 0;
  let fromC = toTruth(celsius[0]!);
  let fromRate = doseRate(kinetics, fromC);
  for (let k = 1; k < samples.length; k += 1) {
    const toC = toTruth(celsius[samples[k]!]!);
    const toRate = doseRate(kinetics, toC);
    const span = atSeconds[samples[k]!]! - atSeconds[samples[k - 1]!]!;
    const hours = span / SECONDS_PER_HOUR;
    const isUnseen = samples[k - 1]! < joinedAt && joinedAt <= samples[k]!;
    if (!isUnseen) {
      const isSmall = Math.abs(toC - fromC) <= SMALL_STEP_C;
      sum += isSmall
        ? hours * meanRate(fromRate, toRate)
        : doseOfSegment(kinetics, fromC, toC, hours);
    }
    running[k] = sum;
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
  const samples = followed(trace.atSeconds.length);
  const running = runningDose(trace, samples, kinetics, toTruth);
  const last = running.length - 1;
  const total = running[last]!;
  const kept = [0];
  let nextDose = total * BEGINS_SHARE;
  for (let k = 1; k < last; k += 1) {
    if (running[k]! < nextDose) continue;
    // The sample before a rise is kept too, so that a long level stretch stays level.
    const isRise = running[k]! - running[k - 1]! > total * STEP_SHARE;
    if (isRise && kept.at(-1)! < k - 1) kept.push(k - 1);
    kept.push(k);
    nextDose = running[k]! + total * STEP_SHARE;
  }
  if (last > 0) kept.push(last);
  return kept.map((k) => ({
    atSeconds: seconds(trace.atSeconds[samples[k]!]!),
    dose: running[k]!,
  }));
};
