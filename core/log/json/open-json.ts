import { REJECTED_TEXT_CHARS } from '../limits.ts';
import { Refusal } from '../../model/refusal.ts';
import type { PreambleEntry } from '../text/preamble.ts';
import { bestTable } from './find-tables.ts';
import { cellOf, eachRow, type JsonRow, type JsonTable } from './json-table.ts';
import { lazyTable } from './lazy-table.ts';
import { parseJson, type JsonNode, type ParsedJson } from './parse-json.ts';
import { scanRecords, type RecordList } from './scan-records.ts';
import { linesOf, Spans } from './spans.ts';

/** A JSON file as a table of text cells. */
export interface OpenedJson {
  readonly format: 'json' | 'json-lines';
  readonly table: JsonTable;
  readonly entries: readonly PreambleEntry[];
  /** Indices of rows whose record is damaged. */
  readonly damaged: ReadonlySet<number>;
  readonly isCut: boolean;
  /** The 1-based line of a character. */
  readonly lineOf: (at: number) => number;
  readonly textOf: (row: JsonRow) => string;
}

const lineFinder = (text: string): ((at: number) => number) => {
  let lines: Spans | null = null;
  return (at) => (lines ??= linesOf(text)).countUpTo(at);
};

const textFinder =
  (text: string) =>
  ({ from, to }: JsonRow): string =>
    text.slice(from, Math.min(to, from + 2 * REJECTED_TEXT_CHARS));

const isWhole = (text: string): boolean => {
  const { fault, end } = parseJson(text);
  return fault === 'none' && text.slice(end).trim() === '';
};

const opensValue = (text: string): boolean => /^\s*[[{]/.test(text);

/** The lines of a text that are not blank. */
const filledLines = (text: string): Spans => {
  const filled = new Spans();
  const lines = linesOf(text);
  for (let index = 0; index < lines.length; index += 1) {
    const [from, to] = [lines.from(index), lines.to(index)];
    if (text.slice(from, to).trim() !== '') filled.add(from, to);
  }
  return filled;
};

const LOOKED_AT_FOR_LINES = 1 << 20;

/** JSON lines: every line a value of its own, seen by the first two that are not blank. */
const isJsonLines = (text: string): boolean => {
  const head = text.slice(0, LOOKED_AT_FOR_LINES);
  const filled = filledLines(head);
  if (filled.length < 2) return false;
  const line = (index: number): string => head.slice(filled.from(index), filled.to(index));
  return opensValue(line(1)) && isWhole(line(0));
};

const openLines = (text: string): OpenedJson => {
  const { table, damaged } = lazyTable(text, filledLines(text));
  return {
    format: 'json-lines',
    table,
    entries: [],
    damaged,
    isCut: damaged.has(table.rows.length - 1),
    lineOf: lineFinder(text),
    textOf: textFinder(text),
  };
};

/** The single values in and around a list that was taken out of its text. */
const entriesIn = (node: JsonNode | null): PreambleEntry[] => {
  if (node?.kind !== 'object') return [];
  return node.entries.flatMap(([key, value]) =>
    value.kind === 'scalar' ? [{ key, value: cellOf(value) }] : entriesIn(value),
  );
};

/** A file that is one long list of records, read record by record. */
const openList = (text: string, { records, around }: RecordList): OpenedJson => {
  const { table, damaged } = lazyTable(text, records);
  const outside = parseJson(around);
  return {
    format: 'json',
    table,
    entries: entriesIn(outside.node),
    damaged,
    isCut: outside.fault !== 'none' || damaged.has(table.rows.length - 1),
    lineOf: lineFinder(text),
    textOf: textFinder(text),
  };
};

/** Values written one after the other without lines to part them, as one list. */
const parseSequence = (text: string): ParsedJson => {
  const items: JsonNode[] = [];
  let last = parseJson(text);
  while (last.node !== null) {
    items.push(last.node);
    if (last.fault !== 'none' || !opensValue(text.slice(last.end, last.end + 64))) break;
    last = parseJson(text, last.end);
  }
  const [first] = items;
  if (items.length < 2 || first === undefined) return { ...last, node: first ?? null };
  const node: JsonNode = { kind: 'array', items, from: first.from, to: last.end, isCut: false };
  return { ...last, node };
};

/** The one table of a whole JSON file; where the file is cut, its last row may be incomplete. */
const openWhole = (text: string): OpenedJson | null => {
  const { node, end, fault } = parseSequence(text);
  if (node === null || node.kind === 'scalar') return null;
  const found = bestTable(node);
  const rest = text.slice(end, end + 64).trim();
  const isBroken = fault === 'broken' || (fault === 'none' && rest !== '');
  const isTable = found !== null && found.table.rows.length > 1 && found.table.names.length > 1;
  if (isBroken && !isTable) return null;
  if (found === null || found.table.rows.length === 0) {
    throw new Refusal('not-readable', 'no list of readings was found in this JSON');
  }
  const cut = [...eachRow(found.table)].flatMap((row, index) => (row.isCut ? [index] : []));
  return {
    format: 'json',
    table: found.table,
    entries: found.entries,
    damaged: new Set(cut),
    isCut: fault !== 'none' || isBroken,
    lineOf: lineFinder(text),
    textOf: textFinder(text),
  };
};

/**
 * Opens a JSON text; null if it is none.
 *
 * @throws Refusal `not-readable` if it is nested too deeply or holds no list
 */
export const openJson = (text: string): OpenedJson | null => {
  if (isJsonLines(text)) return openLines(text);
  const list = scanRecords(text);
  return list === null ? openWhole(text) : openList(text, list);
};
