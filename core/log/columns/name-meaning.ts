import { fold } from '../text/fold.ts';
import { temperatureScale, unitInName, type PrintedUnit } from '../text/unit-text.ts';
import {
  COLD_JUNCTION,
  DERIVED,
  ELSEWHERE,
  INDEX,
  MEASURED,
  OTHER_QUANTITY,
  OUTPUT,
  PROBE,
  SETPOINT,
  HUMIDITY,
  TEMPERATURE,
  TEMPERATURE_WORDS,
  TIME,
  type Vocabulary,
} from './vocabulary.ts';

/** What a column's name says that it holds. */
export type NameMeaning =
  | 'measured'
  | 'temperature'
  | 'probe'
  | 'setpoint'
  | 'output'
  | 'cold-junction'
  | 'elsewhere'
  | 'derived'
  | 'other-quantity'
  | 'index'
  | 'unknown';

/** A name as words: accents, case and marks gone, `kilnTemp_C` split where the case changes. */
export const wordsOf = (name: string): readonly string[] =>
  fold(name.replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2'))
    .split(/[^\p{L}\p{N}%°]+/u)
    .filter((word) => word.length > 0);

/** Without the digits that number places: `t1` → `t`, `zone2` → `zone`. */
const withoutNumber = (word: string): string => word.replace(/\d+$/, '');

const mentions = (vocabulary: Vocabulary, words: readonly string[]): boolean => {
  const phrase = words.join(' ');
  return (
    vocabulary.stems.some((stem) => phrase.includes(stem)) ||
    words.some(
      (word) => vocabulary.words.includes(word) || vocabulary.words.includes(withoutNumber(word)),
    )
  );
};

/** Without what stands in brackets: a unit there is no word of the name. */
const withoutBrackets = (name: string): string => name.replace(/[[({][^[\](){}]*[\])}]/g, ' ');

/** Whether a name speaks of time. Many short words do in one language and not in another. */
export const speaksOfTime = (name: string): boolean =>
  mentions(TIME, wordsOf(withoutBrackets(name))) || mentions(TIME, wordsOf(name).slice(0, 1));

/** `Sample`, `Sample no.`: the number of a reading, where no unit says otherwise. */
const isSampleNumber = ([first, second]: readonly string[]): boolean =>
  first === 'sample' && (second === undefined || INDEX.words.includes(second));

const meaningByWords = (words: readonly string[], unit: PrintedUnit | null): NameMeaning => {
  const scale = temperatureScale(unit);
  const saysTemperature = scale !== null || mentions(TEMPERATURE, words);
  if (mentions(COLD_JUNCTION, words)) return 'cold-junction';
  if (unit === 'rate' || mentions(DERIVED, words)) return 'derived';
  if (mentions(SETPOINT, words)) return 'setpoint';
  // Sensors of two quantities carry both units in their type; the word tells which this one is.
  const isHumidity = mentions(HUMIDITY, words) && !mentions(TEMPERATURE_WORDS, words);
  if (isHumidity) return 'other-quantity';
  if (!saysTemperature && mentions(OUTPUT, words)) return 'output';
  if (!saysTemperature && mentions(OTHER_QUANTITY, words)) return 'other-quantity';
  if (!saysTemperature && (unit === 'other' || unit === 'percent')) return 'other-quantity';
  if (mentions(ELSEWHERE, words)) return 'elsewhere';
  if (!saysTemperature && isSampleNumber(words)) return 'index';
  if (mentions(MEASURED, words)) return 'measured';
  if (saysTemperature) return 'temperature';
  if (mentions(INDEX, words)) return 'index';
  return mentions(PROBE, words) ? 'probe' : 'unknown';
};

/** What the name of a column of numbers says that they are; `unit` is what its header shows. */
export const meaningOf = (
  name: string,
  unit: PrintedUnit | null = unitInName(name),
): NameMeaning => {
  const words = wordsOf(withoutBrackets(name));
  const meaning = meaningByWords(words, unit);
  if (meaning !== 'unknown') return meaning;
  // A unit sign lost altogether, `T1(?)`, was most likely a single sign for degrees.
  if (/[([][?�][)\]]/.test(name)) return 'probe';
  return meaningByWords(wordsOf(name), unit);
};
