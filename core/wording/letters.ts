import type { Finding, FindingId } from '../model/finding.ts';

/** A, B, … Z, AA, AB, … */
export const letterOf = (index: number): string => {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letterOf(Math.floor(index / 26) - 1) + last;
};

/** `note B`: where a document's findings tell of something; null where none does. */
export const noteOn = (findings: readonly Finding[], id: FindingId): string | null => {
  const index = findings.findIndex((finding) => finding.id === id);
  return index < 0 ? null : `note ${letterOf(index)}`;
};
