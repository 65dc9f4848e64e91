import type { AnalysisDocument } from '../../core/model/document.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { wording } from '../../core/wording/wording.ts';

/** The one thing about a firing that a list of firings says. */
export interface Standout {
  /** Null where there is nothing to act on or to watch. */
  readonly severityWord: string | null;
  readonly text: string;
}

/** The gravest finding of a firing that asks for attention; else that there is none. */
export const standoutOf = (document: AnalysisDocument, unit: TemperatureUnit): Standout => {
  const [gravest] = wording(document, unit).findings;
  return gravest === undefined || gravest.severity === 'note'
    ? { severityWord: null, text: 'nothing to act on or to watch' }
    : { severityWord: gravest.severityWord, text: gravest.title.text };
};
