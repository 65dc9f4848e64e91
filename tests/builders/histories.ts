/**
 * Invented histories of a kiln, with the truth of each. The wear is a law of its own (resistance
 * rising as a power of the firings), not the straight line that core draws.
 */
import type { FiringEntry, Ranged } from '../../core/history/entry.ts';
import { celsius, seconds } from '../../core/units.ts';
import { seededRandom, type SeededRandom } from './random.ts';

const HOUR = 3600;
const DAY_MS = 86_400_000;
/** The invented kiln's first firing. */
const FIRST_DAY_MS = Date.UTC(2023, 0, 9);

/** An instant so many days and hours after the invented kiln's first midnight. */
export const dayAt = (day: number, hour = 8): string =>
  new Date(FIRST_DAY_MS + day * DAY_MS + hour * HOUR * 1000).toISOString().slice(0, 19);

/** A firing of an invented history: a cone 6 load every four days, unless told. */
export const entry = (index: number, change: Partial<FiringEntry> = {}): FiringEntry => ({
  fileName: `firing-${String(index + 1).padStart(2, '0')}.csv`,
  startInstant: dayAt(4 * index),
  durationSeconds: seconds(30 * HOUR),
  heatingSeconds: seconds(10 * HOUR),
  peakAtSeconds: seconds(10 * HOUR),
  peakC: celsius(1215),
  conePosition: 6,
  power: null,
  powerReason: null,
  lastRampPower: null,
  bands: [],
  isGood: true,
  coupleError: null,
  ...change,
});

/** A measured value with an 80 % interval of a share either way. */
export const within = (value: number, share = 0.025): Ranged => ({
  value,
  low: value * (1 - share),
  high: value * (1 + share),
});

/** A history of the given powers; null where a firing could not tell. */
export const ofPowers = (
  powers: readonly (number | null)[],
  change: (index: number) => Partial<FiringEntry> = () => ({}),
): FiringEntry[] =>
  powers.map((power, i) =>
    entry(i, { power: power === null ? null : within(power), ...change(i) }),
  );

/** How an invented kiln wears: what share of cold resistance has been added after n firings. */
export interface Wear {
  /** Firings until resistance is 10 % more. */
  readonly firings: number;
  /** 1: as fast at the end as at the beginning; more: ever faster. */
  readonly power: number;
}

export const wornPower = ({ firings, power }: Wear, n: number): number =>
  1 / (1 + 0.1 * (n / firings) ** power);

/** Standard deviation of what two loads and the supply make of the measured power. */
const SCATTER = 0.016;

export interface SyntheticHistory {
  readonly entries: readonly FiringEntry[];
  /** True firings left, after the last one, until power is below `limit`. */
  readonly left: number;
  readonly limit: number;
  /** True loss of power at the last firing. */
  readonly loss: number;
}

const trueLeft = (wear: Wear, firing: number, limit: number): number => {
  let n = firing;
  while (wornPower(wear, n + 1) >= limit) n++;
  return n - firing;
};

/**
 * A kiln fired until it had lost so much of its power: one firing in eight tells nothing, one kiln in
 * five has had new elements within the record, one in five a supply that sags by day.
 */
export const syntheticHistory = (seed: number, loss: number): SyntheticHistory => {
  const random = seededRandom(seed);
  const wear = { firings: random.between(8, 60), power: random.between(0.8, 1.35) };
  let last = 1;
  while (wornPower(wear, last) > 1 - loss) last++;
  const limit = random.between(0.78, 1 - loss - 0.02);
  const hadOld = random.uniform() < 0.2;
  const sags = random.uniform() < 0.2;
  const old = hadOld ? Math.round(random.between(4, 12)) : 0;
  const entries = Array.from({ length: old + last + 1 }, (_, i) => {
    const isOld = i < old;
    const truth = isOld ? 0.9 - 0.004 * i : wornPower(wear, i - old);
    return firingOf(i, truth, sags, random, limit);
  });
  return { entries, left: trueLeft(wear, last, limit), limit, loss: 1 - wornPower(wear, last) };
};

const firingOf = (
  index: number,
  truth: number,
  sags: boolean,
  random: SeededRandom,
  limit: number,
): FiringEntry => {
  const hour = random.between(0, 24);
  const sag = sags ? 0.02 * Math.cos((2 * Math.PI * (hour + 10 - 15)) / 24) : 0;
  const measured = truth * (1 - sag) * Math.exp(SCATTER * random.normal());
  const isTold = random.uniform() >= 1 / 8;
  return entry(index, {
    startInstant: dayAt(Math.round(index * random.between(3.8, 4.2)), hour),
    power: isTold ? within(measured) : null,
    powerReason: isTold ? null : 'never-at-full-power',
    lastRampPower: limit * Math.exp(0.01 * random.normal()),
  });
};
