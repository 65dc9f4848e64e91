/** A label that wants to stand with its middle at `y`. */
export interface Label {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** About how wide a character of the charts' type is, as a share of its size (chosen, generous). */
const CHARACTER_WIDTH = 0.58;

/** About how wide a text will be drawn. */
export const textWidth = (text: string, size: number): number =>
  text.length * size * CHARACTER_WIDTH;

const leftEdge = ({ text, x, anchor }: Label, size: number): number => {
  const width = textWidth(text, size);
  if (anchor === 'start') return x;
  return anchor === 'end' ? x - width : x - width / 2;
};

const collide = (a: Label, b: Label, size: number): boolean => {
  const [leftA, leftB] = [leftEdge(a, size), leftEdge(b, size)];
  const apart =
    leftA + textWidth(a.text, size) <= leftB || leftB + textWidth(b.text, size) <= leftA;
  return !apart && Math.abs(a.y - b.y) < size * 1.15;
};

/**
 * Moves labels up or down, in turn and by as little as it takes, until none covers another; one that
 * finds no free place within `[top, bottom]` is left out.
 */
export const placeLabels = (
  labels: readonly Label[],
  size: number,
  top: number,
  bottom: number,
): Label[] => {
  const placed: Label[] = [];
  const steps = [
    0,
    ...Array.from(
      { length: 24 },
      (_, index) => Math.ceil((index + 1) / 2) * size * 0.6 * (index % 2 ? -1 : 1),
    ),
  ];
  for (const label of labels) {
    const free = steps
      .map((step) => ({ ...label, y: label.y + step }))
      .find(
        (moved) =>
          moved.y >= top &&
          moved.y <= bottom &&
          !placed.some((other) => collide(moved, other, size)),
      );
    if (free) placed.push(free);
  }
  return placed;
};

/** A round mark that wants to stand at a point. */
export interface Mark {
  readonly x: number;
  readonly y: number;
}

/**
 * Moves round marks of one radius upwards (then downwards, at the top) until none covers another,
 * in turn, so that a letter stands above its place on the curve.
 */
export const placeMarks = <M extends Mark>(
  marks: readonly M[],
  radius: number,
  top: number,
  bottom: number,
): M[] => {
  const placed: M[] = [];
  for (const mark of marks) {
    const isFree = (y: number) =>
      placed.every((other) => Math.hypot(mark.x - other.x, y - other.y) >= 2 * radius + 1);
    const start = Math.min(Math.max(mark.y, top), bottom);
    const heights = Array.from({ length: 60 }, (_, index) => start - index * (radius / 2));
    const below = Array.from({ length: 60 }, (_, index) => start + index * (radius / 2));
    const y = [...heights, ...below].find((at) => at >= top && at <= bottom && isFree(at)) ?? start;
    placed.push({ ...mark, y });
  }
  return placed;
};
