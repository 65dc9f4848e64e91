/** Lines shown from the beginning and from the end of a file (chosen: some screens full). */
const FIRST_LINES = 120;
const LAST_LINES = 40;
/** Neighbours shown on either side of a rejected row. */
const AROUND = 2;

/** The numbers, from 1, of the lines worth showing: the first, the last, and those around others. */
export const pickLines = (count: number, around: readonly number[]): number[] => {
  const picked = new Set<number>();
  const add = (from: number, to: number): void => {
    for (let line = Math.max(1, from); line <= Math.min(count, to); line += 1) picked.add(line);
  };
  add(1, FIRST_LINES);
  for (const line of around) add(line - AROUND, line + AROUND);
  add(count - LAST_LINES + 1, count);
  return [...picked].sort((a, b) => a - b);
};
