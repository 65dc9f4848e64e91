import type { FiringPurpose } from '../model/purpose.ts';
import type { Options } from '../model/options.ts';
import type { Trace } from '../model/trace.ts';
import { lowerBound } from '../numeric/search.ts';
import { passBetween, type Pass } from '../thermal/bands.ts';
import { seconds, SECONDS_PER_HOUR } from '../units.ts';
import type { Evidence } from '../model/finding.ts';

/** The wall of ordinary ware, for which limits are given (from memory: thrown ware is 5 to 10 mm). */
export const ORDINARY_MM = 8;
/** Thin ware has edges and handles all the same: no more than twice as fast (chosen). */
const MOST_FACTOR = 2;
/** Beyond some 23 mm nothing is known of studio ware but that it is slow (chosen). */
const LEAST_FACTOR = 1 / 8;

/**
 * A limit of rate for ware of another thickness. Heat and moisture take a time that grows with the
 * square of the wall to pass through it (the Fourier number of the texts on conduction), so the rate
 * that leaves the same difference between skin and core falls with that square.
 */
export const limitFor = (usualCPerHour: number, ware: Options['ware']): number => {
  if (ware === undefined) return usualCPerHour;
  const factor = (ORDINARY_MM / ware.thicknessMm) ** 2;
  return usualCPerHour * Math.min(Math.max(factor, LEAST_FACTOR), MOST_FACTOR);
};

/** How fast the kiln went through a stretch of temperature, at its fastest, and where that lies. */
export interface Passage {
  readonly fastestCPerHour: number;
  readonly evidence: Evidence;
}

/**
 * The fastest rate that was kept up over `keptC` of a stretch, as a magnitude: a hold in the middle
 * does not hide a fast climb on either side of it, and a controller's ripple is none.
 */
const fastestRate = ({ atSeconds, smoothC }: Trace, pass: Pass, keptC: number): number => {
  const from = lowerBound(atSeconds, pass.startSeconds);
  const to = Math.min(lowerBound(atSeconds, pass.endSeconds) + 1, atSeconds.length);
  const sign = Math.sign(smoothC[to - 1]! - smoothC[from]!);
  let fastest = 0;
  let end = from;
  for (let start = from; start < to; start += 1) {
    const wantedC = sign * smoothC[start]! + keptC;
    while (end < to && sign * smoothC[end]! < wantedC) end += 1;
    if (end >= to) break;
    const [beforeC, afterC] = [sign * smoothC[end - 1]!, sign * smoothC[end]!];
    const share = Math.min(Math.max((wantedC - beforeC) / (afterC - beforeC), 0), 1);
    const reached = atSeconds[end - 1]! + share * (atSeconds[end]! - atSeconds[end - 1]!);
    fastest = Math.max(fastest, (keptC * SECONDS_PER_HOUR) / (reached - atSeconds[start]!));
  }
  return fastest;
};

/** The firing's passage through a stretch from end to end; null where the record does not show it. */
export const passageThrough = (
  samples: Trace,
  fromC: number,
  toC: number,
  keptC: number,
): Passage | null => {
  const pass = passBetween(samples, fromC, toC);
  if (pass === null) return null;
  const span = pass.endSeconds - pass.startSeconds;
  const meanCPerHour = (Math.abs(toC - fromC) * SECONDS_PER_HOUR) / span;
  return {
    fastestCPerHour: Math.max(meanCPerHour, fastestRate(samples, pass, keptC)),
    evidence: { fromSeconds: seconds(pass.startSeconds), toSeconds: seconds(pass.endSeconds) },
  };
};

/** Whether ware is known, or taken, to have been fired before: its water and carbon are gone. */
export const wasFiredBefore = (purpose: FiringPurpose | null): boolean =>
  purpose !== null && purpose.purpose !== 'bisque';
