import { marginOfBend } from '../../heatwork/cone-bend.ts';

/** The bend of a cone whose tip is level with its base: the end point. */
const DOWN_DEGREES = 90;
/** How much further a cone slumps once it has gone well past its end point (chosen, for drawing). */
const SLUMP_DEGREES = 12;
/** Over this many °C past the end point it slumps that far (chosen, for drawing). */
const SLUMP_SPAN_C = 15;

/** The bend short of the end point that belongs to a margin, by halving: the course rises throughout. */
const bendShortOfDown = (marginC: number): number => {
  let [low, high] = [0, DOWN_DEGREES];
  for (let step = 0; step < 20; step++) {
    const middle = (low + high) / 2;
    if (marginOfBend(middle) < marginC) low = middle;
    else high = middle;
  }
  return Math.round(((low + high) / 2) * 10) / 10;
};

/**
 * How far a cone is bent, in degrees: 0 upright, 90 with its tip level with its base. From the margin
 * by which its heat-work passes it (°C of end point), or where that is not told, from its dose.
 */
export const bendDegrees = (dose: number, marginC: number | null): number => {
  if (marginC === null) return dose >= 1 ? DOWN_DEGREES + SLUMP_DEGREES : 0;
  if (marginC <= marginOfBend(0)) return 0;
  if (marginC < 0) return bendShortOfDown(marginC);
  return DOWN_DEGREES + SLUMP_DEGREES * Math.min(1, marginC / SLUMP_SPAN_C);
};
