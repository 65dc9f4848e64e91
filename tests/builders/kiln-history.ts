/** Logs of one invented kiln whose elements wear, as a logger would have written them. */
import { fire } from '../kiln/fire.ts';
import { THIN_BRICK } from '../kiln/kilns.ts';
import { seededRandom } from '../kiln/random.ts';
import { HARD_GLAZE } from '../kiln/schedules.ts';

export interface WrittenLog {
  readonly name: string;
  readonly text: string;
}

const DAY_MS = 86_400_000;
const FIRST_MS = Date.UTC(2026, 0, 5, 7);

/** A firing every five days; resistance has risen by `wear` (0.1 is a tenth) at the last. */
export const wornKilnLogs = (count: number, wear: number, seed = 3): WrittenLog[] => {
  const random = seededRandom(seed);
  return Array.from({ length: count }, (_, index) => {
    const { atSeconds, readingC } = fire({
      seed: random.whole(1, 2 ** 31),
      kiln: THIN_BRICK,
      schedule: HARD_GLAZE,
      loadKg: random.between(35, 45),
      roomC: random.between(15, 22),
      elementWear: 1 + (wear * index) / Math.max(1, count - 1),
      logger: { intervalSeconds: 60, noiseC: 0.3, rounding: { unit: 'C', step: 1 } },
    });
    const beganMs = FIRST_MS + index * 5 * DAY_MS;
    const rows = Array.from(atSeconds, (at, i) => {
      const stamp = new Date(beganMs + at * 1000).toISOString().slice(0, 19);
      return `${stamp},${readingC[i]!.toFixed(0)}`;
    });
    const name = `firing-${String(index + 1).padStart(2, '0')}.csv`;
    return { name, text: ['time,kiln °C', ...rows, ''].join('\n') };
  });
};
