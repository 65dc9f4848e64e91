/** A point of a drawing. */
export type Point = readonly [x: number, y: number];

/** Coordinates to a tenth: finer than any eye, and a third of the text. */
const coordinate = (value: number): string => String(Math.round(value * 10) / 10);

const pair = ([x, y]: Point): string => `${coordinate(x)} ${coordinate(y)}`;

/** An open line through points, as the `d` of an SVG path; empty for fewer than two. */
export const linePath = (points: readonly Point[]): string =>
  points.length < 2 ? '' : `M${points.map(pair).join('L')}`;

/** Several lines as one path: a hole between them stays a hole. */
export const linesPath = (lines: readonly (readonly Point[])[]): string =>
  lines.map(linePath).join('');

/** A closed outline through points. */
export const outlinePath = (points: readonly Point[]): string =>
  points.length < 3 ? '' : `${linePath(points)}Z`;
