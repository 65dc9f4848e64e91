import { errorFunction } from 'simple-statistics';

export interface TrendTest {
  /** Pairs that rise less pairs that fall. */
  readonly s: number;
  /** Chance of an S at most this low where there is no trend. */
  readonly chanceOfFall: number;
}

/** Up to here the distribution of S is counted out; beyond, the normal is as good (Gilbert: n > 10). */
const EXACT_UP_TO = 10;

const score = (values: readonly number[]): number => {
  let s = 0;
  for (let i = 0; i < values.length; i++) {
    for (let j = i + 1; j < values.length; j++) s += Math.sign(values[j]! - values[i]!);
  }
  return s;
};

/** How many orders of n values have 0, 1, 2 … inversions, each as a share of all orders. */
const inversionShares = (n: number): number[] => {
  let shares = [1];
  for (let length = 2; length <= n; length++) {
    const next = new Array<number>(shares.length + length - 1).fill(0);
    shares.forEach((share, inversions) => {
      for (let more = 0; more < length; more++) next[inversions + more]! += share / length;
    });
    shares = next;
  }
  return shares;
};

const exactChance = (n: number, s: number): number => {
  const pairs = (n * (n - 1)) / 2;
  // S = pairs − 2·inversions, so a low S is many inversions.
  return inversionShares(n)
    .slice((pairs - s) / 2)
    .reduce((sum, share) => sum + share, 0);
};

const tieTerm = (values: readonly number[]): number => {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts.values()].reduce((sum, t) => sum + t * (t - 1) * (2 * t + 5), 0);
};

/**
 * The Mann–Kendall test for a fall. H. B. Mann, "Nonparametric tests against trend", Econometrica 13
 * (1945) 245; variance with ties and the correction for continuity as in M. G. Kendall, "Rank
 * Correlation Methods". The values stand in order of time.
 */
export const mannKendall = (values: readonly number[]): TrendTest => {
  const n = values.length;
  const s = score(values);
  const ties = tieTerm(values);
  if (ties === 0 && n <= EXACT_UP_TO) return { s, chanceOfFall: exactChance(n, s) };
  const deviation = Math.sqrt((n * (n - 1) * (2 * n + 5) - ties) / 18);
  const z = deviation === 0 ? 0 : (s + 1) / deviation;
  return { s, chanceOfFall: (1 + errorFunction(z / Math.SQRT2)) / 2 };
};
