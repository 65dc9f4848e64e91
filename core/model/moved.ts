/** The document's moments, by name; every other name that ends in `Seconds` is a length of time. */
export const MOMENTS: ReadonlySet<string> = new Set([
  'atSeconds',
  'fromSeconds',
  'toSeconds',
  'startSeconds',
  'endSeconds',
  'offSeconds',
  'peakAtSeconds',
]);

/**
 * A part of the document on a clock that began `bySeconds` earlier: every moment in it is later by
 * so much, every length of time and everything else as it was. Not for figures and options, whose
 * names are others' (a finding's `evidence` alone, a document's measured parts).
 */
export const movedBy = <Part>(part: Part, bySeconds: number): Part => {
  if (Array.isArray(part)) return part.map((item) => movedBy<unknown>(item, bySeconds)) as Part;
  if (typeof part !== 'object' || part === null) return part;
  const entries = Object.entries(part).map(([name, value]): [string, unknown] => [
    name,
    MOMENTS.has(name) && typeof value === 'number' ? value + bySeconds : movedBy(value, bySeconds),
  ]);
  return Object.fromEntries(entries) as Part;
};
