import type { Account } from '../account.ts';
import type { TableRead } from '../assemble/table-read.ts';
import type { Text } from '../bytes/text.ts';
import type { ColumnPlan } from '../columns/column-plan.ts';
import { headerUnits } from '../columns/header-units.ts';
import { planColumns } from '../columns/plan-columns.ts';
import { RawColumns } from '../columns/raw-columns.ts';
import { RowReader } from '../columns/row-reader.ts';
import { makeSample, type TableSample } from '../columns/sample.ts';
import { MAX_JSON_BYTES } from '../limits.ts';
import type { ReadingDecisions } from '../../model/options.ts';
import { Refusal } from '../../model/refusal.ts';
import { decideDecimalMark } from '../text/decimal-mark.ts';
import { eachRow, type JsonRows } from './json-table.ts';
import { openJson, type OpenedJson } from './open-json.ts';

const SAMPLED_ROWS = 3000;

/**
 * The cells of rows from all over a table: of all, or of blocks of neighbours spread evenly. They
 * are copied: rows that outlived their reading would make the engine put all rows to come where
 * only a full collection finds them, which doubles the memory that a large file takes.
 */
const sampled = (rows: JsonRows): readonly (readonly string[])[] => {
  const between = (from: number, to: number): (readonly string[])[] =>
    Array.from({ length: to - from }, (_, index) => rows.at(from + index).cells.slice());
  if (rows.length <= SAMPLED_ROWS) return between(0, rows.length);
  const blocks = 30;
  const length = SAMPLED_ROWS / blocks;
  return Array.from({ length: blocks }, (_, block) => {
    const from = Math.floor(((rows.length - length) * block) / (blocks - 1));
    return between(from, from + length);
  }).flat();
};

const sampleOf = (
  { table, entries }: OpenedJson,
  decisions: ReadingDecisions,
  account: Account,
): TableSample => {
  const rows = sampled(table.rows);
  const columns = table.names.map((_, column) =>
    rows.map((cells) => cells[column] ?? '').filter((cell) => cell.length > 0 && cell.length <= 24),
  );
  const decimal = decideDecimalMark(columns);
  const mark = decisions.decimalMark ?? decimal.mark;
  account.decide(
    'decimal-mark',
    mark,
    decisions.decimalMark ? 'given' : decimal.why,
    decimal.certainty,
  );
  return makeSample(
    {
      names: table.names,
      line: null,
      isNamed: table.isNamed,
      aliases: table.names.map((name) => [name.slice(name.lastIndexOf('.') + 1)]),
      units: headerUnits(table.names, null),
      rows,
      decimalMark: mark,
      preamble: { entries, lines: [] },
    },
    decisions.noReadingMarks,
  );
};

/** Reads the rows of the table on the careful path; each stands for its place among the records. */
const readRows = (opened: OpenedJson, plan: ColumnPlan): RowReader => {
  const { rows } = opened.table;
  const columns = new RawColumns(plan.wanted.length, rows.length, plan.seriesColumn !== null);
  const reader = new RowReader(plan, columns);
  let place = 0;
  for (const { cells } of eachRow(opened.table)) {
    place += 1;
    if (opened.damaged.has(place - 1)) {
      reader.reject(place, place === rows.length ? 'half-written' : 'damaged-record');
      continue;
    }
    const time = reader.timeOf(cells);
    if (!Number.isNaN(time)) reader.add(cells, place, time);
    else reader.reject(place, reader.time.isEmpty(cells) ? 'no-time' : 'unreadable-time');
  }
  return reader;
};

/** Whether a text begins as JSON does. */
export const looksLikeJson = (text: Text): boolean => /^[[{]/.test(text.decode(0, 64).trimStart());

/**
 * Reads a JSON file or JSON lines: rows, columns, pairs, nested or keyed readings. Null if the text
 * is no JSON.
 *
 * @throws Refusal naming what is missing
 */
export const readJson = (
  text: Text,
  fileName: string,
  byteLength: number,
  decisions: ReadingDecisions,
  account: Account,
): TableRead | null => {
  if (!looksLikeJson(text)) return null;
  if (text.bytes.length > MAX_JSON_BYTES) {
    const most = MAX_JSON_BYTES / 1024 / 1024;
    throw new Refusal('too-large', `JSON is read up to ${most} MB; export the log as CSV`);
  }
  const opened = openJson(text.decode(0, text.bytes.length));
  if (opened === null) return null;
  account.decide('format', opened.format, 'file-start', 0.98);
  account.decide('header-line', 'none', 'keys', 0.98);
  if (opened.isCut) account.warn('half-written-end');
  const sample = sampleOf(opened, decisions, account);
  const context = { isContinental: false, sectionTime: null };
  const plan = planColumns(sample, decisions, context, account);
  const { columns, series, marks } = readRows(opened, plan);
  return {
    columns,
    plan,
    sample,
    series,
    marks,
    lineOf: (place) => opened.lineOf(opened.table.rows.from(place - 1)),
    linesOf: (places) => places.map((place) => opened.textOf(opened.table.rows.at(place - 1))),
    decisions,
    account,
    source: {
      fileName,
      byteLength,
      format: opened.format,
      encoding: text.encoding,
      delimiter: null,
      decimalMark: plan.decimalMark,
      headerLine: null,
    },
  };
};
