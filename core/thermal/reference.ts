import { zAnalysisDocument } from '../model/document.ts';
import type { KnownKiln } from './fit-kiln.ts';

export type NoReference = 'no-reference' | 'reference-unreadable' | 'no-reference-fit';

/** What the reference firing's document says of the kiln, or why it says nothing. */
export type Reference =
  | { readonly known: KnownKiln; readonly reason: null }
  | { readonly known: null; readonly reason: NoReference };

/**
 * Takes the kiln out of an earlier good firing's document, as it came from a file. Whatever is not
 * such a document is `reference-unreadable`; one whose firing allowed no fit, `no-reference-fit`.
 */
export const readReference = (document: unknown): Reference => {
  if (document === undefined) return { known: null, reason: 'no-reference' };
  const parsed = zAnalysisDocument.safeParse(document);
  if (!parsed.success) return { known: null, reason: 'reference-unreadable' };
  const fit = parsed.data.elements?.fit ?? null;
  return fit === null ? { known: null, reason: 'no-reference-fit' } : { known: fit, reason: null };
};
