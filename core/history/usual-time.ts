import { median, robustSigma } from '../numeric/statistics.ts';
import { seconds, type Seconds } from '../units.ts';
import type { FiringEntry } from './entry.ts';

/** Firings to peaks within this of each other are of one kind (chosen: about a cone). */
const LIKE_DELTA_C = 20;
/** Fewer firings of one kind have no usual time (chosen). */
const FEWEST = 3;
/** Longer than usual: by this share and … */
const LONGER_SHARE = 0.1;
/** … by so many times what these firings scatter (chosen). */
const LONGER_SIGMAS = 3;

export interface UsualTime {
  readonly usualSeconds: Seconds | null;
  readonly tookLonger: boolean;
}

/** What firings of the same kind before this one usually took, and whether this one took longer. */
export const usualTime = (entry: FiringEntry, before: readonly FiringEntry[]): UsualTime => {
  const taken = before.flatMap(({ heatingSeconds, peakC }) =>
    heatingSeconds !== null && Math.abs(peakC - entry.peakC) <= LIKE_DELTA_C
      ? [heatingSeconds]
      : [],
  );
  if (taken.length < FEWEST) return { usualSeconds: null, tookLonger: false };
  const usual = median(taken);
  const limit = Math.max(usual * (1 + LONGER_SHARE), usual + LONGER_SIGMAS * robustSigma(taken));
  return {
    usualSeconds: seconds(usual),
    tookLonger: entry.heatingSeconds !== null && entry.heatingSeconds > limit,
  };
};
