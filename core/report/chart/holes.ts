import type { Span } from '../../model/scalars.ts';

/** Holes in order of time, those that touch or overlap made one. */
export const mergedHoles = (holes: readonly Span[]): Span[] => {
  const merged: Span[] = [];
  for (const hole of [...holes].sort((a, b) => a.fromSeconds - b.fromSeconds)) {
    const last = merged.at(-1);
    if (!last || hole.fromSeconds > last.toSeconds) merged.push(hole);
    else if (hole.toSeconds > last.toSeconds) {
      merged[merged.length - 1] = { fromSeconds: last.fromSeconds, toSeconds: hole.toSeconds };
    }
  }
  return merged;
};

/**
 * The runs of indices of a time series between which no hole lies: a line is drawn through each run
 * and none across a hole. A run of one sample has nothing to draw and is left out.
 */
export const unbrokenRuns = (
  atSeconds: readonly number[],
  holes: readonly Span[],
): (readonly [from: number, to: number])[] => {
  const sorted = mergedHoles(holes);
  const runs: [number, number][] = [];
  let begin = 0;
  let hole = 0;
  for (let index = 1; index <= atSeconds.length; index++) {
    const before = atSeconds[index - 1] ?? 0;
    const now = atSeconds[index] ?? Infinity;
    while (hole < sorted.length && (sorted[hole]?.toSeconds ?? 0) <= before) hole++;
    const from = sorted[hole]?.fromSeconds ?? Infinity;
    const isHole = index === atSeconds.length || (from < now && from >= before);
    if (!isHole) continue;
    if (index - begin > 1) runs.push([begin, index]);
    begin = index;
  }
  return runs;
};
