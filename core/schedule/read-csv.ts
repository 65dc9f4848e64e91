import type { Cone } from '../model/cone.ts';
import type { Schedule, Segment } from '../model/schedule.ts';
import type { TemperatureUnit } from '../units.ts';
import { badSchedule, MOST_SEGMENTS } from './bounds.ts';
import { scheduleCone, segmentFrom } from './segment-entry.ts';

/** The columns of a schedule's table, in any order and without those that are empty. */
export const CSV_COLUMNS = ['rate_per_hour', 'minutes', 'target', 'hold_minutes'] as const;
type Column = (typeof CSV_COLUMNS)[number];

interface Heading {
  name: string | null;
  cone: Cone | null;
  unit: TemperatureUnit;
}

/** A `# key: value` line above the table; other comments are passed over. */
const readComment = (heading: Heading, comment: string, line: number): void => {
  const [key = '', ...rest] = comment.split(':');
  const value = rest.join(':').trim();
  switch (key.trim().toLowerCase()) {
    case 'name':
      heading.name = value;
      break;
    case 'cone':
      heading.cone = scheduleCone(value, line);
      break;
    case 'unit':
      if (value !== 'C' && value !== 'F')
        throw badSchedule(`unit "${value}" is neither C nor F`, line);
      heading.unit = value;
      break;
  }
};

const columnsOf = (cells: readonly string[], line: number): Column[] => {
  const columns = cells.map((cell) => {
    const column = CSV_COLUMNS.find((name) => name === cell.toLowerCase());
    if (column !== undefined) return column;
    throw badSchedule(
      `the column "${cell}" is not part of a schedule; its columns are ${CSV_COLUMNS.join(', ')}`,
      line,
    );
  });
  if (new Set(columns).size < columns.length) throw badSchedule('a column is named twice', line);
  if (!columns.includes('target')) throw badSchedule('there is no column "target"', line);
  return columns;
};

const numberIn = (cell: string, column: Column, line: number): number => {
  if (/^[+-]?(\d+\.?\d*|\.\d+)$/.test(cell)) return Number(cell);
  throw badSchedule(`"${cell}" in the column ${column} is not a number`, line);
};

const readRow = (
  cells: readonly string[],
  columns: readonly Column[],
  unit: TemperatureUnit,
  line: number,
): Segment => {
  if (cells.length > columns.length) {
    throw badSchedule(`${cells.length} values stand under ${columns.length} columns`, line);
  }
  const cellOf = (column: Column) => cells[columns.indexOf(column)] ?? '';
  const numberOrNull = (column: Column) =>
    cellOf(column) === '' ? null : numberIn(cellOf(column), column, line);
  const target = numberOrNull('target');
  if (target === null) throw badSchedule('the target is missing', line);
  const isFull = cellOf('rate_per_hour').toLowerCase() === 'full';
  return segmentFrom(
    {
      ratePerHour: isFull ? 'full' : numberOrNull('rate_per_hour'),
      minutes: numberOrNull('minutes'),
      target,
      holdMinutes: numberOrNull('hold_minutes') ?? 0,
      line,
    },
    unit,
  );
};

const unquoted = (cell: string): string =>
  cell
    .trim()
    .replace(/^"(.*)"$/, '$1')
    .trim();

/**
 * Reads a schedule in the project's CSV form: `# unit:`, `# cone:` and `# name:` lines, a line of
 * column names, a segment a line. Semicolons and tabs, as some spreadsheets write, serve as well.
 *
 * @throws Refusal `bad-schedule` or `unknown-cone` with the line to blame.
 */
export const readCsvSchedule = (text: string, fallbackName: string): Schedule => {
  const heading: Heading = { name: null, cone: null, unit: 'C' };
  const segments: Segment[] = [];
  let columns: Column[] | null = null;
  let delimiter = ',';
  for (const [index, raw] of text.split(/\r\n|\r|\n/).entries()) {
    const line = index + 1;
    const bare = raw.trim();
    if (bare === '') continue;
    if (bare.startsWith('#')) {
      if (segments.length > 0) continue;
      readComment(heading, bare.slice(1), line);
      continue;
    }
    if (columns === null) {
      delimiter = [';', '\t'].find((mark) => bare.includes(mark)) ?? ',';
      columns = columnsOf(bare.split(delimiter).map(unquoted), line);
      continue;
    }
    if (segments.length >= MOST_SEGMENTS)
      throw badSchedule(`more than ${MOST_SEGMENTS} segments`, line);
    segments.push(readRow(bare.split(delimiter).map(unquoted), columns, heading.unit, line));
  }
  if (segments.length === 0) throw badSchedule('there is no segment in it');
  const name = heading.name?.trim() ?? '';
  return { name: name === '' ? fallbackName : name, cone: heading.cone, segments };
};
