import { MAX_NAME_CHARS } from '../limits.ts';
import { speaksOfTime } from '../columns/name-meaning.ts';
import { isTimeClass } from '../text/cell-class.ts';
import { epochUnit } from '../time/numeric-time.ts';
import { unitInName } from '../text/unit-text.ts';
import type { Preamble } from '../text/preamble.ts';
import { alignNames, namesOverCuts } from './align-names.ts';
import { headerCells, unitsLine, type TablePlace } from './header.ts';
import { namesInStatement } from './brackets.ts';
import { BLANKS } from './split.ts';
import type { Survey } from './survey.ts';

export interface ColumnNames {
  readonly names: readonly string[];
  readonly isNamed: boolean;
  readonly aliases: readonly (readonly string[])[];
  /** The cells of the row of units, and its place among the lines; null without one. */
  readonly unitsRow: readonly string[] | null;
  readonly unitsLine: number | null;
  readonly isListedAbove: boolean;
}

const ALIGNED_ROWS = 40;

/** Names made different where the file repeats one, so that each can be asked for. */
const distinct = (names: readonly string[]): string[] => {
  const seen = new Map<string, number>();
  return names.map((name) => {
    const count = (seen.get(name) ?? 0) + 1;
    seen.set(name, count);
    return count === 1 ? name : `${name} (${count})`;
  });
};

const numbered = (names: readonly string[], width: number): string[] =>
  Array.from({ length: width }, (_, column) => {
    const name = names[column]?.trim() ?? '';
    return name === '' ? `column ${column + 1}` : name.slice(0, MAX_NAME_CHARS);
  });

/** `Sig1: Time (min)`, `Sig2: Temperature (°C)` one below the other: the names of the columns. */
const listedAbove = (preamble: Preamble, width: number): readonly string[] | null => {
  const stems = new Map<string, string[]>();
  for (const { key, value } of preamble.entries) {
    const [, stem, digits] = /^(.*?)[\s_.-]*(\d{1,3})$/.exec(key) ?? [];
    if (stem === undefined || digits === undefined || value === '') continue;
    const list = stems.get(stem) ?? [];
    if (Number(digits) === list.length + 1) list.push(value);
    stems.set(stem, list);
  }
  const lists = [...stems.values()].filter((list) => list.length === width);
  return lists.find((list) => list.some((name) => unitInName(name) !== null)) ?? null;
};

/**
 * Names over the cells that they mean: where rows have one cell more than the header, and times
 * stand one cell behind the name that speaks of them, the first cells (row names, weekdays) have none.
 */
const overTheirCells = (names: readonly string[], survey: Survey): readonly string[] => {
  const { width, kinds, rows, lines } = survey;
  if (names.length !== width - 1) return names;
  const isEpoch = (column: number): boolean => {
    const numbers = rows.map((row) => Number(lines[row]!.cells[column]));
    return epochUnit(Math.min(...numbers), Math.max(...numbers)) !== null;
  };
  const isTimeAt = (column: number): boolean =>
    isTimeClass(kinds[column] ?? 'empty') || isEpoch(column);
  const isBehind = names.some(
    (name, column) => speaksOfTime(name) && isTimeAt(column + 1) && !isTimeAt(column),
  );
  return isBehind ? ['', ...names] : names;
};

const cellsOf = (index: number, survey: Survey, texts: readonly string[]): readonly string[] => {
  const line = survey.lines[index]!;
  const { delimiter, cuts } = survey.dialect;
  if (cuts === null && delimiter !== BLANKS) return overTheirCells(headerCells(line), survey);
  const rows = survey.rows.slice(0, ALIGNED_ROWS).map((row) => texts[row]!);
  if (cuts !== null) return namesOverCuts(texts[index]!, rows, cuts);
  return alignNames(
    texts[index]!.replace(/^[#;%!*/']+/, (signs) => ' '.repeat(signs.length)),
    rows,
    survey.width,
  );
};

/** Joins the parts that stand over one column, leaving out what was said already. */
const joined = (parts: readonly string[]): string =>
  parts.filter((part, index) => part !== '' && parts.indexOf(part) === index).join(' ');

/** Names the columns of a table from the lines of its header, or from a list above it. */
export const nameColumns = (
  place: TablePlace,
  survey: Survey,
  texts: readonly string[],
  preamble: Preamble,
): ColumnNames => {
  const { width } = survey;
  if (place.header.length === 0) {
    const { labels, isBracketed } = survey.dialect;
    const inStatement = isBracketed ? namesInStatement(texts[place.firstRow]!) : null;
    const listed = labels ?? inStatement ?? listedAbove(preamble, width);
    return {
      names: distinct(numbered(listed ?? [], width)),
      isNamed: listed !== null,
      aliases: [],
      unitsRow: null,
      unitsLine: null,
      isListedAbove: listed !== null,
    };
  }
  const units = unitsLine(place.header, survey);
  const nameRows = place.header
    .filter((index) => index !== units)
    .map((index) => cellsOf(index, survey, texts));
  const aliases = Array.from({ length: width }, (_, column) =>
    nameRows.map((cells) => cells[column] ?? '').filter((cell) => cell !== ''),
  );
  return {
    names: distinct(numbered(aliases.map(joined), width)),
    isNamed: true,
    aliases,
    unitsRow: units === null ? null : cellsOf(units, survey, texts),
    unitsLine: units,
    isListedAbove: false,
  };
};
