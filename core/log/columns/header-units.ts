import { coupleTypeIn } from '../text/couple-text.ts';
import { fold } from '../text/fold.ts';
import { unitInName, unitOfText, type PrintedUnit } from '../text/unit-text.ts';

/** A name that ends in one of the letters of the scales, set off: `kiln_c`, `Oven F`. */
const SET_OFF_LETTER = /^(.*\p{L}.*)[\s_-]([cfk])$/u;
const ANY_LETTER = /^(.*)[\s_-]([a-z])$/u;

/** Whether other columns carry the same name with other letters, so that the letter is a place. */
const isPlaceLetter = (stem: string, letter: string, names: readonly string[]): boolean =>
  names.some((name) => {
    const [, otherStem, otherLetter] = ANY_LETTER.exec(fold(name).trim()) ?? [];
    return otherStem === stem && otherLetter !== letter;
  });

const PLACE_WORDS = /zone|channel|kanal|probe|sensor|sonde|tc|ch|kiln|place|couple/;

/** A heading that is nothing but the letter of a scale, unless others are letters too. */
const isScaleAlone = (name: string, names: readonly string[]): boolean => {
  const isLetter = (other: string): boolean => /^[a-z]$/i.test(other.trim());
  const others = names.filter((other) => other !== name && isLetter(other));
  return /^[cfk]$/i.test(name.trim()) && others.every((other) => /^[tx]$/i.test(other.trim()));
};

const byLetter = (name: string, names: readonly string[]): PrintedUnit | null => {
  if (isScaleAlone(name, names)) return unitOfText(name);
  // `Type K` names a couple, not kelvins.
  if (coupleTypeIn([name]) !== null) return null;
  const [, stem, letter] = SET_OFF_LETTER.exec(fold(name).trim()) ?? [];
  if (stem === undefined || letter === undefined) return null;
  const isUnderscored = /_[cfk]$/i.test(name.trim());
  if (isPlaceLetter(stem, letter, names)) return null;
  if (!isUnderscored && PLACE_WORDS.test(stem)) return null;
  return unitOfText(letter);
};

/**
 * The unit of each column: from the row of units under the names where there is one, else from the
 * name itself.
 */
export const headerUnits = (
  names: readonly string[],
  unitsRow: readonly string[] | null,
): readonly (PrintedUnit | null)[] =>
  names.map((name, column) => {
    const below = unitOfText(unitsRow?.[column] ?? '');
    return below ?? unitInName(name) ?? byLetter(name, names);
  });
