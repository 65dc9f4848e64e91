import type { Account } from '../account.ts';
import { headerUnits } from '../columns/header-units.ts';
import { makeSample, type TableSample } from '../columns/sample.ts';
import type { ReadingDecisions } from '../../model/options.ts';
import { EMPTY_PREAMBLE, makePreamble, type Preamble } from '../text/preamble.ts';
import { PREAMBLE_CHARS } from './decide-dialect.ts';
import { placeGivenHeader, placeTable, type TablePlace } from './header.ts';
import { nameColumns } from './name-columns.ts';
import type { LineSample } from './sample-lines.ts';
import type { Survey } from './survey.ts';

/** Where the table of a delimited file stands and what its columns are called. */
export interface Layout {
  readonly survey: Survey;
  readonly sample: TableSample;
  /** 1-based line of the names, or null. */
  readonly headerLine: number | null;
  /** The text of each header line, to know it again further down. */
  readonly header: readonly string[];
  /** Where reading starts: the line's bytes and its 1-based number. */
  readonly startByte: number;
  readonly startLine: number;
  /** Whether records of other kinds, told by where their cells begin, are nested in the table. */
  readonly isNested: boolean;
}

const LONGEST_PREAMBLE = 400;

const preambleAbove = (lines: LineSample, end: number): Preamble =>
  end <= 0
    ? EMPTY_PREAMBLE
    : makePreamble(
        lines.head
          .slice(0, Math.min(end, LONGEST_PREAMBLE))
          .map(({ text }) => text.slice(0, PREAMBLE_CHARS)),
      );

/** Whether names that begin at other columns stand right above the header. */
const hasOuterHeaders = (place: TablePlace, survey: Survey): boolean => {
  const top = place.header[0];
  if (survey.leading === 0 || top === undefined || top === 0) return false;
  const above = survey.lines[top - 1]!;
  const isOuter = above.leading < survey.leading && above.cells.length > 1;
  return isOuter && above.classes.every((kind) => kind === 'text' || kind === 'empty');
};

const accountForHeader = (
  layout: Pick<Layout, 'headerLine' | 'sample'>,
  isGiven: boolean,
  isListed: boolean,
  account: Account,
): void => {
  const choice = layout.headerLine === null ? 'none' : String(layout.headerLine);
  if (isGiven) account.decide('header-line', choice, 'given', 1);
  else if (isListed) account.decide('header-line', choice, 'listed-above', 0.9);
  else if (layout.headerLine === null) account.decide('header-line', choice, 'no-names', 0.8);
  else account.decide('header-line', choice, 'above-data', 0.95);
};

/** The place among the head's lines of one with a given number, or null for no header. */
const indexOfLine = (lines: LineSample, line: number | null): number | null => {
  if (line === null) return null;
  const index = lines.head.findIndex((one) => one.line >= line);
  return index < 0 ? lines.head.length : index;
};

/** Lays out the table that a survey found. Null if its first row is not in the head of the file. */
export const layOut = (
  lines: LineSample,
  survey: Survey,
  decisions: ReadingDecisions,
  account: Account,
): Layout | null => {
  const isGiven = decisions.headerLine !== undefined;
  const place =
    decisions.headerLine === undefined
      ? placeTable(survey, lines.head.length)
      : placeGivenHeader(survey, indexOfLine(lines, decisions.headerLine), lines.head.length);
  if (place === null) return null;
  const [top] = place.header;
  const start = top === undefined ? place.firstRow : place.header[place.header.length - 1]! + 1;
  const texts = [...lines.head, ...lines.body].map(({ text }) => text);
  const preamble = preambleAbove(lines, top ?? place.firstRow);
  const naming = nameColumns(place, survey, texts, preamble);
  const { mark } = survey.decimal;
  const sample = makeSample(
    {
      ...naming,
      units: headerUnits(naming.names, naming.unitsRow),
      rows: survey.rows
        .filter((row) => row >= place.firstRow)
        .map((row) => survey.lines[row]!.cells),
      line: lines.head[top ?? place.firstRow]!.line,
      decimalMark: mark,
      preamble,
    },
    decisions.noReadingMarks,
  );
  const headerLine = top === undefined ? null : lines.head[top]!.line;
  accountForHeader({ headerLine, sample }, isGiven, naming.isListedAbove, account);
  if (naming.unitsLine !== null) {
    const { line } = lines.head[naming.unitsLine]!;
    account.decide('units-row', String(line), 'above-data', 0.95);
  }
  if (place.tables > 1) {
    account.decide('table', `line ${lines.head[start]!.line}`, 'most-rows', 0.8);
  }
  account.decide('decimal-mark', mark, survey.decimal.why, survey.decimal.certainty);
  return {
    survey,
    sample,
    headerLine,
    header: place.header.map((index) => texts[index]!),
    startByte: lines.head[start]?.from ?? 0,
    startLine: lines.head[start]?.line ?? 1,
    isNested: hasOuterHeaders(place, survey),
  };
};
