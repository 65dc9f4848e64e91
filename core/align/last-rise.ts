import type { Trace } from '../model/trace.ts';

/** Less than this is a controller's ordinary settling (chosen) … */
const SETTLING_C = 2;
/** … or so many times the noise. */
const SETTLING_SIGMAS = 3;

/** A reading this far from a level or less is at it, °C. */
export const settlingOf = ({ summary }: Trace): number =>
  Math.max(SETTLING_C, SETTLING_SIGMAS * summary.noiseC);

/**
 * The sample at which the last rise before a sample begins: the lowest after whatever stood higher
 * by more than the settling and fell back, so that it was no part of the rise.
 *
 * @param from the first sample that is looked at
 * @param to the sample after the last one of the rise
 */
export const lastRiseBegins = (trace: Trace, from: number, to: number): number => {
  const { smoothC } = trace;
  const settlingC = settlingOf(trace);
  let lowest = Math.max(from, to - 1);
  for (let i = lowest; i >= from; i--) {
    if (smoothC[i]! < smoothC[lowest]!) lowest = i;
    if (smoothC[i]! > smoothC[lowest]! + settlingC) break;
  }
  return lowest;
};
