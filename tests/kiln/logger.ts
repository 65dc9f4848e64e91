import type { TimedFault } from './faults.ts';
import type { Random } from './random.ts';
import type { LoggerPlan, Rounding } from './types.ts';

/** Moments at which the logger takes a sample, from 0 to `untilSeconds`; gaps and thinning applied. */
export const sampleTimes = (
  plan: LoggerPlan,
  untilSeconds: number,
  faults: readonly TimedFault[],
  random: Random,
): Float64Array => {
  const times: number[] = [];
  let due = 0;
  while (due <= untilSeconds) {
    const at = due === 0 ? 0 : due + plan.jitterSeconds * random.normal();
    const on = faults.filter((it) => it.fromSeconds <= at && at < it.toSeconds);
    const coarse = on.find(({ fault }) => fault.kind === 'log-coarse')?.fault;
    const gap = on.some(({ fault }) => fault.kind === 'log-gap');
    if (!gap && at > (times.at(-1) ?? -1) && at <= untilSeconds) times.push(at);
    due += coarse?.kind === 'log-coarse' ? coarse.intervalSeconds : plan.intervalSeconds;
  }
  return Float64Array.from(times);
};

/** A value recorded every step, at the given moments; straight lines between steps. */
export const sampled = (
  steps: Float64Array,
  stepSeconds: number,
  times: Float64Array,
): Float64Array =>
  times.map((at) => {
    const place = Math.min(at / stepSeconds, steps.length - 1);
    const before = Math.floor(place);
    const here = steps[before]!;
    const share = place - before;
    return share === 0 ? here : here + share * (steps[before + 1]! - here);
  });

/** The same for what jumps or may be missing: the value at the last step before. */
export const held = (steps: Float64Array, stepSeconds: number, times: Float64Array): Float64Array =>
  times.map((at) => steps[Math.min(Math.floor(at / stepSeconds + 1e-9), steps.length - 1)]!);

/** A reading rounded to whole steps of its unit, back in °C. */
export const rounded = (celsius: number, rounding: Rounding | null): number => {
  if (rounding === null) return celsius;
  const { unit, step } = rounding;
  if (unit === 'C') return Math.round(celsius / step) * step;
  return (Math.round((celsius * 1.8 + 32) / step) * step - 32) / 1.8;
};

/** What the logger writes down for readings without noise, its line's faults included. */
export const loggedReadings = (
  cleanC: Float64Array,
  times: Float64Array,
  plan: LoggerPlan,
  faults: readonly TimedFault[],
  random: Random,
): Float64Array => {
  const noise = random.fork('noise');
  const leaps = random.fork('leaps');
  let lastC = cleanC[0]!;
  return cleanC.map((celsius, i) => {
    const at = times[i]!;
    let readingC = celsius + plan.noiseC * noise.normal();
    for (const { fault, fromSeconds, toSeconds } of faults) {
      if (at < fromSeconds || at >= toSeconds) continue;
      if (fault.kind === 'couple-open') return NaN;
      if (fault.kind === 'couple-flat') return lastC;
      if (fault.kind === 'couple-spikes' && leaps.chance(1 / fault.everySamples)) {
        readingC += fault.sizeC * leaps.between(0.3, 1) * (leaps.chance(0.5) ? 1 : -1);
      }
    }
    lastC = rounded(readingC, plan.rounding);
    return lastC;
  });
};
