import type { Box } from './scale.ts';

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

/** A mark's places in the order in which they are tried: upwards, then aside, then downwards. */
const placesFor = ({ x, y }: Mark, radius: number, top: number, bottom: number): Mark[] => {
  const start = Math.min(Math.max(y, top), bottom);
  const step = radius / 2;
  const upwards = Array.from({ length: 60 }, (_, index) => start - index * step);
  const downwards = Array.from({ length: 60 }, (_, index) => start + index * step);
  const aside = [1, -1, 2, -2, 3, -3].map((places) => x + places * (2 * radius + 2));
  return [
    ...upwards.map((at) => ({ x, y: at })),
    ...aside.flatMap((at) => upwards.map((height) => ({ x: at, y: height }))),
    ...downwards.map((at) => ({ x, y: at })),
  ].filter((place) => place.y >= top && place.y <= bottom);
};

/**
 * Moves round marks of one radius until none covers another, in turn: upwards, so that a letter
 * stands above its place on the curve, else aside, and only then down over the curve.
 */
export const placeMarks = <M extends Mark>(
  marks: readonly M[],
  radius: number,
  { left, top, width, height }: Box,
): M[] => {
  const placed: M[] = [];
  for (const mark of marks) {
    const isFree = ({ x, y }: Mark) =>
      x >= left &&
      x <= left + width &&
      placed.every((other) => Math.hypot(x - other.x, y - other.y) >= 2 * radius + 1);
    const places = placesFor(mark, radius, top, top + height);
    placed.push({ ...mark, ...(places.find(isFree) ?? places[0]) });
  }
  return placed;
};
