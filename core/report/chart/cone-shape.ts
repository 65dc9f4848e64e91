import { outlinePath, type Point } from './path.ts';

/** Cones are set leaning by this much, so that they bend one way (common practice). */
const LEAN_DEGREES = 8;
const STEPS = 24;
const RADIANS = Math.PI / 180;

/** A cone to be drawn: where its foot stands, how long it is and how wide at foot and tip. */
export interface ConeForm {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly foot: number;
  readonly tip: number;
}

/**
 * The middle line of a bent cone from foot to tip, with its direction (0 is up, towards the right).
 * A bend is the angle of the straight line from foot to tip, as the trade reads it: at 90° the tip
 * is level with the foot, and a round bow has then turned through twice that.
 */
const middleLine = (form: ConeForm, bendDegrees: number): [Point, number][] => {
  const lean = LEAN_DEGREES * Math.max(0, 1 - bendDegrees / 90);
  const turn = 2 * bendDegrees * RADIANS;
  const line: [Point, number][] = [];
  let [x, y] = [form.x, form.y];
  for (let step = 0; step <= STEPS; step++) {
    const direction = lean * RADIANS + turn * (step / STEPS);
    line.push([[x, y], direction]);
    const next = lean * RADIANS + turn * ((step + 0.5) / STEPS);
    x += (Math.sin(next) * form.length) / STEPS;
    y -= (Math.cos(next) * form.length) / STEPS;
  }
  return line;
};

/** Where the tip of a bent cone comes to. */
export const coneTip = (form: ConeForm, bendDegrees: number): Point => {
  const last = middleLine(form, bendDegrees).at(-1);
  return last ? last[0] : [form.x, form.y];
};

/** The outline of a cone bent by so many degrees, as the `d` of an SVG path. */
export const conePath = (form: ConeForm, bendDegrees: number): string => {
  const line = middleLine(form, bendDegrees);
  const side = (sign: 1 | -1): Point[] =>
    line.map(([[x, y], direction], step) => {
      const half = (form.foot + (form.tip - form.foot) * (step / STEPS)) / 2;
      return [x + sign * half * Math.cos(direction), y + sign * half * Math.sin(direction)];
    });
  return outlinePath([...side(-1), ...side(1).reverse()]);
};
