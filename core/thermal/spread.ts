import type { KilnFit } from './fit-kiln.ts';
import type { Wall } from './wall-model.ts';

/** Half the width of an 80 % interval of the normal distribution, in standard deviations. */
const NORMAL_80 = 1.2816;
/**
 * What the model leaves out, as a standard deviation of the power over steady loss (from the bench
 * `relative-power`: see this room's README).
 */
const MODEL_SHARE = 0.05;
/** Forward differences in the fit's parameters, which are of order 1 (chosen). */
const DIFFERENCE = 1e-3;

/** Wall and power of a fit, as far as its spread moves them. */
export interface Spread {
  readonly wall: Wall;
  readonly power: number;
}

/** A quantity of the fit with its 80 % interval, by the gradient in what is not surely known. */
export const spreadOf = (
  fit: KilnFit,
  quantity: (spread: Spread) => number,
): { value: number; low: number; high: number } => {
  const moved = (memory: number, rise: number, power: number): number =>
    quantity({
      wall: {
        memorySeconds: fit.wall.memorySeconds * Math.exp(memory),
        conductivityRise: fit.wall.conductivityRise + rise,
      },
      // The fit knows power times memory; power alone falls as the memory grows.
      power: fit.power * Math.exp(power - memory),
    });
  const value = moved(0, 0, 0);
  const gradient = [moved(DIFFERENCE, 0, 0), moved(0, DIFFERENCE, 0), moved(0, 0, DIFFERENCE)].map(
    (there) => (there - value) / DIFFERENCE,
  );
  const places = [0, 1, 4];
  let variance = (gradient[2]! * MODEL_SHARE) ** 2;
  places.forEach((row, i) =>
    places.forEach((column, j) => {
      variance += gradient[i]! * gradient[j]! * fit.covariance[row]![column]!;
    }),
  );
  const half = NORMAL_80 * Math.sqrt(Math.max(0, variance));
  return { value, low: value - half, high: value + half };
};
