import { fold } from '../text/fold.ts';
import { isNoReadingMark } from '../text/marks.ts';
import { wordsOf } from './name-meaning.ts';
import type { TableSample } from './sample.ts';

/** Names of the column that says whether a value is sound; common practice, no source. */
const QUALITY_NAMES: ReadonlySet<string> = new Set([
  ...['quality', 'status', 'validity', 'qualitat', 'qualite', 'calidad', 'qualita', 'kwaliteit'],
  ...['qual', 'stat', 'zustand', 'estado', 'etat', 'stato', 'gultigkeit', 'flag'],
]);
/** Words for a sound value, and for one that is none, in six languages; common practice, no source. */
const GOOD: ReadonlySet<string> = new Set([
  ...['good', 'ok', 'okay', 'valid', 'normal', 'gut', 'gultig', 'bon', 'bonne', 'valide', 'bueno'],
  ...['buena', 'valido', 'buono', 'buona', 'goed', 'geldig', 'measured', 'o', 'v'],
]);
const BAD =
  /^(?:bad|poor|schlecht|ungultig|mauvais|malo|mala|cattiv|slecht|ongeldig|non valid|comm)/;

/** OPC DA quality: 192 and above is good, below 64 bad (OPC Data Access 2.05, 6.8). */
const GOOD_CODE = 192;
const UNCERTAIN_CODE = 64;

/** Whether the cell of such a column says that the row's value is no reading. */
export const isBadQuality = (cell: string): boolean => {
  if (/^\d{1,5}$/.test(cell)) return Number(cell) < UNCERTAIN_CODE;
  const folded = fold(cell).trim();
  return BAD.test(folded) || isNoReadingMark(cell);
};

const isGood = (cell: string): boolean =>
  /^\d{1,5}$/.test(cell) ? Number(cell) >= GOOD_CODE : GOOD.has(fold(cell).trim());

/**
 * The column that says row by row whether the value is sound: named for it, and good in most rows.
 * Where several are, the first behind the column `value`, else the first of all; null without one.
 */
export const findQuality = (sample: TableSample, value: number): number | null => {
  if (!sample.isNamed) return null;
  const columns = sample.names.flatMap((name, column) =>
    wordsOf(name).some((word) => QUALITY_NAMES.has(word)) ? [column] : [],
  );
  const sound = columns.filter((column) => {
    const cells = sample.rows.map((row) => row[column] ?? '').filter((cell) => cell !== '');
    return cells.length > 0 && cells.filter(isGood).length >= cells.length / 2;
  });
  return sound.find((column) => column > value) ?? sound[0] ?? null;
};
