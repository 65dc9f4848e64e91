import type { Account } from '../account.ts';
import type { ReadingDecisions } from '../../model/options.ts';
import { Refusal } from '../../model/refusal.ts';
import type { DecimalDecision } from '../text/decimal-mark.ts';
import {
  declaredDecimalMark,
  declaredDelimiter,
  makePreamble,
  type Preamble,
} from '../text/preamble.ts';
import type { LineSample } from './sample-lines.ts';
import { areBracketed } from './brackets.ts';
import { joinCommas } from './comma-joins.ts';
import { areLabelled, glueLabels, labelsOf } from './labels.ts';
import { findFixedWidth } from './fixed-width.ts';
import {
  BLANKS,
  FIXED,
  WHOLE,
  isWrappedLine,
  plainDialect,
  splitLine,
  type Dialect,
} from './split.ts';
import { surveyLines, type Survey } from './survey.ts';

/** In this order where two do equally well: the least likely to stand inside a cell first. */
const USUAL: readonly string[] = ['\t', ';', '|', ',', BLANKS, FIXED];
/** Signs that stand in times or names themselves are not among these. */
const UNUSUAL: readonly string[] = ['~', '^', '!', '$', '&', '@', '*', '\\'];

/** A delimiter stands in at least this share of the lines, unless the table is tiny (chosen). */
const STANDS_IN = 0.02;
const WRAPPED_SHARE = 0.8;
const PREAMBLE_LINES = 80;
export const PREAMBLE_CHARS = 400;

/** A share of another dialect's score that still leaves some doubt. */
const certaintyAgainst = (best: number, next: number): number =>
  best === 0 ? 0.3 : Math.min(0.99, 0.6 + 0.4 * (1 - next / best));

/** The decimal mark that the person or the file says, or null. */
const settledMark = (decisions: ReadingDecisions, opening: Preamble): DecimalDecision | null => {
  if (decisions.decimalMark !== undefined) {
    return { mark: decisions.decimalMark, why: 'given', certainty: 1 };
  }
  const declared = declaredDecimalMark(opening);
  return declared === null ? null : { mark: declared, why: 'declared', certainty: 0.98 };
};

/** Numbers that were put together again across a comma. */
const TORN_COMMA: DecimalDecision = { mark: ',', why: 'rows-agree', certainty: 0.75 };

const NAMED_DELIMITERS: ReadonlyMap<string, string> = new Map([
  ...([
    [' ', BLANKS],
    ['tab', '\t'],
    ['\\t', '\t'],
    ['comma', ','],
    ['semicolon', ';'],
  ] as const),
]);

/** The delimiter that the person gives, by its sign or its name. */
const givenDelimiter = (given: string): string => {
  const delimiter = NAMED_DELIMITERS.get(given) ?? given;
  if (delimiter.length === 1 || delimiter === BLANKS || delimiter === FIXED) return delimiter;
  throw new Refusal(
    'bad-option',
    `“${given}” cannot stand between cells; give one sign, tab, blanks or fixed`,
  );
};

/** Tries dialects on the sampled lines. */
class Surveyor {
  readonly #texts: readonly string[];
  readonly #filled: readonly string[];
  readonly #mark: DecimalDecision | null;
  readonly #isWrapped: boolean;
  readonly #isLabelled: boolean;
  readonly #isBracketed: boolean;

  constructor(texts: readonly string[], mark: DecimalDecision | null) {
    this.#texts = texts;
    this.#filled = texts.filter((text) => text.trim() !== '');
    this.#mark = mark;
    const wrapped = this.#filled.filter(isWrappedLine).length;
    this.#isWrapped = wrapped > 0 && wrapped >= WRAPPED_SHARE * this.#filled.length;
    this.#isLabelled = areLabelled(this.#filled);
    this.#isBracketed = areBracketed(this.#filled);
  }

  /** The survey with one delimiter, with torn numbers put together. */
  with(delimiter: string): Survey {
    const fixed = delimiter === FIXED ? findFixedWidth(this.#filled) : null;
    if (fixed !== null) return surveyLines(this.#texts, fixed, this.#mark);
    const dialect: Dialect = {
      ...plainDialect(delimiter, this.#isWrapped),
      labels: this.#labelsWith(delimiter),
      isBracketed: this.#isBracketed,
    };
    const plain = surveyLines(this.#texts, dialect, this.#mark);
    const joining = joinCommas(plain);
    return joining === null ? plain : surveyLines(this.#texts, joining, TORN_COMMA);
  }

  #labelsWith(delimiter: string): readonly string[] | null {
    if (!this.#isLabelled) return null;
    const dialect = { ...plainDialect(delimiter, this.#isWrapped), isBracketed: this.#isBracketed };
    const labels = labelsOf(this.#filled.map((text) => splitLine(glueLabels(text), dialect).cells));
    return labels.length === 0 ? null : labels;
  }

  /** The best of several, and the score of the next. */
  bestOf(delimiters: readonly string[]): { best: Survey | undefined; next: number } {
    const ranked = delimiters
      .filter((delimiter) => this.#isPresent(delimiter))
      .map((delimiter) => this.with(delimiter))
      .sort((one, other) => other.score - one.score);
    return { best: ranked[0], next: ranked[1]?.score ?? 0 };
  }

  #isPresent(delimiter: string): boolean {
    if (delimiter === BLANKS) return true;
    if (delimiter === FIXED) return findFixedWidth(this.#filled) !== null;
    const holding = this.#filled.filter((text) => text.includes(delimiter)).length;
    return holding >= 2 && holding >= STANDS_IN * this.#filled.length;
  }
}

/**
 * Finds what stands between the cells, and the decimal mark, by trying each dialect on the sampled
 * lines and taking the one in which most lines are rows of one shape. Null if none makes a table.
 *
 * @throws Refusal `bad-option` for a delimiter that can be none
 */
export const decideDialect = (
  sample: LineSample,
  decisions: ReadingDecisions,
  account: Account,
): Survey | null => {
  const texts = [...sample.head, ...sample.body].map(({ text }) => text);
  const opening = makePreamble(
    sample.head.slice(0, PREAMBLE_LINES).map(({ text }) => text.slice(0, PREAMBLE_CHARS)),
  );
  const surveyor = new Surveyor(texts, settledMark(decisions, opening));
  if (decisions.delimiter !== undefined) {
    const delimiter = givenDelimiter(decisions.delimiter);
    account.decide('delimiter', delimiter, 'given', 1);
    return surveyor.with(delimiter);
  }
  const declared = declaredDelimiter(opening);
  const asDeclared = declared === null ? null : surveyor.with(declared);
  if (asDeclared !== null && asDeclared.rows.length > 1) {
    account.decide('delimiter', asDeclared.dialect.delimiter, 'declared', 0.98);
    return asDeclared;
  }
  let { best, next } = surveyor.bestOf(USUAL);
  if (best === undefined || best.score < 1) {
    const others = surveyor.bestOf(UNUSUAL);
    if ((others.best?.score ?? 0) > (best?.score ?? 0)) ({ best, next } = others);
  }
  if (best === undefined || best.rows.length === 0) best = surveyor.with(WHOLE);
  if (best.rows.length === 0) return null;
  const certainty = certaintyAgainst(best.score, next);
  account.decide('delimiter', best.dialect.delimiter, 'rows-agree', certainty);
  return best;
};
