/**
 * Seeded random numbers for tests, so that every run sees the same firings.
 * The generator is mulberry32 (public domain, by Tommy Ettinger): 32 bits of state, ample for tests.
 */
export interface SeededRandom {
  /** Uniform in [0, 1). */
  readonly uniform: () => number;
  /** Uniform in [low, high). */
  readonly between: (low: number, high: number) => number;
  /** Normal with mean 0 and standard deviation 1 (Box–Muller). */
  readonly normal: () => number;
  /** One of the items, each as likely. */
  readonly pick: <Item>(items: readonly Item[]) => Item;
}

export const seededRandom = (seed: number): SeededRandom => {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let bits = Math.imul(state ^ (state >>> 15), state | 1);
    bits ^= bits + Math.imul(bits ^ (bits >>> 7), bits | 61);
    return ((bits ^ (bits >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    uniform,
    between: (low, high) => low + (high - low) * uniform(),
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    pick: (items) => {
      const item = items[Math.floor(uniform() * items.length)];
      if (item === undefined) throw new Error('nothing to pick from');
      return item;
    },
  };
};
