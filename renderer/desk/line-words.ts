import type { LineFate, ShownLine } from '../../core/log/show/shown.ts';
import {
  celsius,
  SECONDS_PER_HOUR,
  temperatureIn,
  type TemperatureUnit,
} from '../../core/units.ts';
import { rejectionReason } from '../../core/wording/reading-ids.ts';
import { plainNumber } from '../../core/wording/speech.ts';

type Aside = Extract<LineFate, { kind: 'aside' }>['what'];

const ASIDE: Readonly<Record<Exclude<Aside, null>, string>> = {
  blank: 'blank',
  comment: 'a comment',
  header: 'the names once more',
  table: 'of another table',
  text: 'words, no row',
  footer: 'the foot of the table',
};

const pad = (value: number): string => String(value).padStart(2, '0');

/** A moment on the log's own clock, to the second: `1:05:30`, `−0:10:00`. */
export const clockText = (atSeconds: number): string => {
  const whole = Math.round(Math.abs(atSeconds));
  const hours = Math.floor(whole / SECONDS_PER_HOUR);
  const minutes = Math.floor(whole / 60) % 60;
  return `${atSeconds < 0 && whole > 0 ? '−' : ''}${hours}:${pad(minutes)}:${pad(whole % 60)}`;
};

/** A reading to the tenth, as far as a logger's own digits matter. */
export const readingText = (degrees: number, unit: TemperatureUnit): string =>
  `${plainNumber(temperatureIn(celsius(degrees), unit), 1)} °${unit}`;

/** What became of a line, in a few words. */
export const fateWords = (fate: LineFate, unit: TemperatureUnit): string => {
  switch (fate.kind) {
    case 'kept':
      return `${clockText(fate.atSeconds)}  ${readingText(fate.celsius, unit)}`;
    case 'rejected':
      return `rejected: ${rejectionReason(fate.reason)}`;
    case 'names':
      return 'names of the columns';
    case 'above':
      return 'above the table';
    case 'aside':
      return fate.what === null ? 'no row' : ASIDE[fate.what];
    case 'other-firing':
      return 'of another firing';
    case 'row':
      return 'a row that is not used';
    case 'unread':
      return 'not understood';
  }
};

/** A line that is shown, or how many are not. */
export type ListedLine =
  | { readonly kind: 'line'; readonly shown: ShownLine }
  | { readonly kind: 'gap'; readonly lines: number };

/** The lines in order, with what is left out between them. */
export const listedLines = (lines: readonly ShownLine[], lineCount: number): ListedLine[] => {
  const listed: ListedLine[] = [];
  let before = 0;
  for (const shown of lines) {
    if (shown.place > before + 1) listed.push({ kind: 'gap', lines: shown.place - before - 1 });
    listed.push({ kind: 'line', shown });
    before = shown.place;
  }
  if (lineCount > before) listed.push({ kind: 'gap', lines: lineCount - before });
  return listed;
};
