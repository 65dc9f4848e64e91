/**
 * A seeded source of randomness: xoshiro128** (Blackman and Vigna, "Scrambled linear pseudorandom
 * number generators", ACM Trans. Math. Softw. 47, 2021), its state filled from the seed by a
 * Weyl sequence through a 32-bit finaliser. The same seed gives the same numbers on any machine.
 */
export interface Random {
  /** Uniform in [0, 1). */
  uniform(): number;
  /** Uniform in [low, high). */
  between(low: number, high: number): number;
  /** A whole number in [low, high], both ends included. */
  whole(low: number, high: number): number;
  /** Standard normal, by the method of Box and Muller (Ann. Math. Stat. 29, 1958). */
  normal(): number;
  pick<Item>(items: readonly Item[]): Item;
  /** True with the given probability. */
  chance(probability: number): boolean;
  /** A stream of its own, so that drawing more of one thing never shifts another. */
  fork(name: string): Random;
}

/** The four words of the generator's state; not all zero. */
export type RandomState = readonly [number, number, number, number];

const rotatedLeft = (word: number, by: number): number => (word << by) | (word >>> (32 - by));

/** The bare generator: each call gives the next 32 bits as an unsigned number. */
export const xoshiro = (state: RandomState): (() => number) => {
  let [a, b, c, d] = state;
  return () => {
    const drawn = Math.imul(rotatedLeft(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotatedLeft(d, 11);
    return drawn;
  };
};

/** Step of the Weyl sequence: 2³² divided by the golden ratio, to the nearest odd number. */
const WEYL_STEP = 0x9e3779b9;

const stateFrom = (seed: number): RandomState => {
  let weyl = seed >>> 0;
  const word = (): number => {
    weyl = (weyl + WEYL_STEP) >>> 0;
    let mixed = weyl;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return mixed ^ (mixed >>> 16);
  };
  return [word(), word(), word(), word() | 1];
};

/** Mixes a name into a seed (32-bit FNV-1a over its UTF-16 units). */
const seedFor = (seed: number, name: string): number => {
  let hash = 0x811c9dc5 ^ seed;
  for (let i = 0; i < name.length; i++) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193);
  return hash >>> 0;
};

export const seededRandom = (seed: number): Random => {
  const next = xoshiro(stateFrom(seed));
  const uniform = (): number => next() / 2 ** 32;
  const whole = (low: number, high: number): number =>
    low + Math.floor(uniform() * (high - low + 1));
  return {
    uniform,
    between: (low, high) => low + (high - low) * uniform(),
    whole,
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    pick: (items) => items[whole(0, items.length - 1)]!,
    chance: (probability) => uniform() < probability,
    fork: (name) => seededRandom(seedFor(seed, name)),
  };
};
