import type { Account } from '../account.ts';
import type { ReadingDecisions } from '../../model/options.ts';
import type { DecimalDecision } from '../text/decimal-mark.ts';
import {
  declaredDecimalMark,
  declaredDelimiter,
  makePreamble,
  type Preamble,
} from '../text/preamble.ts';
import type { LineSample } from './sample-lines.ts';
import { areLabelled, joinCommas } from './comma-joins.ts';
import { findFixedWidth } from './fixed-width.ts';
import { BLANKS, FIXED, isWrappedLine, plainDialect, type Dialect } from './split.ts';
import { surveyLines, type Survey } from './survey.ts';

/** In this order where two do equally well: the least likely to stand inside a cell first. */
const USUAL: readonly string[] = ['\t', ';', '|', ',', BLANKS];
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

const nonBlank = (sample: LineSample): string[] =>
  [...sample.head, ...sample.body].map(({ text }) => text).filter((text) => text.trim() !== '');

const present = (texts: readonly string[], delimiters: readonly string[]): string[] =>
  delimiters.filter((delimiter) => {
    if (delimiter === BLANKS) return true;
    const holding = texts.filter((text) => text.includes(delimiter)).length;
    return holding >= 2 && holding >= STANDS_IN * texts.length;
  });

const bestOf = (surveys: readonly Survey[]): { best: Survey | undefined; next: number } => {
  const ranked = [...surveys].sort((one, other) => other.score - one.score);
  return { best: ranked[0], next: ranked[1]?.score ?? 0 };
};

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

/**
 * Finds what stands between the cells, and the decimal mark, by trying each dialect on the sampled
 * lines and taking the one in which most lines are rows of one shape. Null if none makes a table.
 */
export const decideDialect = (
  sample: LineSample,
  decisions: ReadingDecisions,
  account: Account,
): Survey | null => {
  const texts = [...sample.head, ...sample.body].map(({ text }) => text);
  const filled = nonBlank(sample);
  const opening = makePreamble(
    sample.head.slice(0, PREAMBLE_LINES).map(({ text }) => text.slice(0, PREAMBLE_CHARS)),
  );
  const wrapped = filled.filter(isWrappedLine).length;
  const isWrapped = filled.length > 0 && wrapped >= WRAPPED_SHARE * filled.length;
  const mark = settledMark(decisions, opening);
  const isLabelled = areLabelled(filled);
  const surveyIn = (dialect: Dialect): Survey => surveyLines(texts, dialect, mark);
  const survey = (delimiter: string): Survey => {
    const plain = surveyIn({ ...plainDialect(delimiter, isWrapped), isLabelled });
    const joining = joinCommas(plain);
    return joining === null ? plain : surveyLines(texts, joining, TORN_COMMA);
  };
  if (decisions.delimiter !== undefined) {
    const delimiter = decisions.delimiter === ' ' ? BLANKS : decisions.delimiter;
    account.decide('delimiter', delimiter, 'given', 1);
    const fixed = delimiter === FIXED ? findFixedWidth(filled) : null;
    return fixed === null ? survey(delimiter) : surveyIn(fixed);
  }
  const declared = declaredDelimiter(opening);
  if (declared !== null) {
    const asDeclared = survey(declared);
    if (asDeclared.rows.length > 1) {
      account.decide('delimiter', declared, 'declared', 0.98);
      return asDeclared;
    }
  }
  const fixed = findFixedWidth(filled);
  const usual = present(filled, USUAL).map(survey);
  let { best, next } = bestOf(fixed === null ? usual : [...usual, surveyIn(fixed)]);
  if (best === undefined || best.score < 1) {
    const others = bestOf(present(filled, UNUSUAL).map(survey));
    if ((others.best?.score ?? 0) > (best?.score ?? 0)) ({ best, next } = others);
  }
  if (best === undefined || best.rows.length === 0) return null;
  const certainty = certaintyAgainst(best.score, next);
  account.decide('delimiter', best.dialect.delimiter, 'rows-agree', certainty);
  return best;
};
