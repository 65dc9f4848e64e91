import { celsiusDelta, differenceIn, type TemperatureUnit } from '../../units.ts';
import { linesPath, outlinePath, type Point } from './path.ts';
import { bottomOf, linearScale, type Box, type Scale } from './scale.ts';
import { roundStep } from './ticks.ts';

/** A low lane under the curve: one line about a zero, with what lies above and below it filled. */
export interface Lane {
  readonly box: Box;
  readonly line: string;
  readonly above: string;
  readonly below: string;
  readonly zeroY: number;
  readonly ticks: readonly { readonly value: number; readonly at: number }[];
}

/** How much of the record a lane shows to scale; what goes beyond is drawn at its edge. */
export const SHOWN_SHARE = {
  /** All of it: the largest departure is the one that matters. */
  difference: 1,
  /** The plunge after shut-off would flatten everything else (chosen). */
  slope: 0.96,
} as const;
/** The least that a lane spans about its zero, in the reader's degrees (chosen). */
const LEAST_REACH = 10;

const magnitudeThatMatters = (
  values: readonly number[],
  atSeconds: readonly number[],
  share: number,
): number => {
  const weighted = values
    .map((value, index) => ({
      size: Math.abs(value),
      weight:
        (atSeconds[index + 1] ?? atSeconds[index]!) - (atSeconds[index - 1] ?? atSeconds[index]!),
    }))
    .sort((a, b) => a.size - b.size);
  const total = weighted.reduce((sum, { weight }) => sum + weight, 0);
  let seen = 0;
  for (const { size, weight } of weighted) {
    seen += weight;
    if (seen >= share * total && share < 1) return size;
  }
  return weighted.at(-1)?.size ?? 0;
};

/** Works out a lane for a series in degrees (or degrees per hour); where a value is null nothing is drawn. */
export const laneOf = (
  kind: keyof typeof SHOWN_SHARE,
  atSeconds: readonly number[],
  valuesC: readonly (number | null)[],
  runs: readonly (readonly [number, number])[],
  box: Box,
  time: Scale,
  unit: TemperatureUnit,
): Lane => {
  const known = atSeconds
    .map((at, index) => ({ at, value: valuesC[index] ?? null }))
    .filter((sample): sample is { at: number; value: number } => sample.value !== null)
    .map(({ at, value }) => ({ at, value: differenceIn(celsiusDelta(value), unit) }));
  const matters = magnitudeThatMatters(
    known.map(({ value }) => value),
    known.map(({ at }) => at),
    SHOWN_SHARE[kind],
  );
  const step = roundStep(Math.max(LEAST_REACH, matters), 1);
  const height = linearScale(step, -step, box.top, bottomOf(box));
  const clipped = (value: number) => Math.min(Math.max(value, -step), step);
  const lines = runs.map(([from, to]) =>
    atSeconds.slice(from, to).flatMap((at, index): Point[] => {
      const value = valuesC[from + index] ?? null;
      if (value === null) return [];
      return [[time(at), height(clipped(differenceIn(celsiusDelta(value), unit)))]];
    }),
  );
  const zeroY = height(0);
  const filled = (side: (y: number) => number) =>
    lines.map((line) => outlinePath(closedAt(line, zeroY, side))).join('');
  return {
    box,
    line: linesPath(lines),
    above: filled((y) => Math.min(y, zeroY)),
    below: filled((y) => Math.max(y, zeroY)),
    zeroY,
    ticks: [step, 0, -step].map((value) => ({ value, at: height(value) })),
  };
};

/** A line with everything on the other side of zero pressed onto it, closed along zero. */
const closedAt = (line: readonly Point[], zeroY: number, side: (y: number) => number): Point[] => {
  const [first, last] = [line[0], line.at(-1)];
  if (!first || !last) return [];
  const withCrossings = line.flatMap((point, index): Point[] => {
    const next = line[index + 1];
    if (!next || (point[1] - zeroY) * (next[1] - zeroY) >= 0) return [point];
    const share = (zeroY - point[1]) / (next[1] - point[1]);
    return [point, [point[0] + share * (next[0] - point[0]), zeroY]];
  });
  return [
    [first[0], zeroY],
    ...withCrossings.map(([x, y]): Point => [x, side(y)]),
    [last[0], zeroY],
  ];
};
