import { REJECTED_TEXT_CHARS } from '../limits.ts';
import { Refusal } from '../../model/refusal.ts';
import type { PreambleEntry } from '../text/preamble.ts';
import { bestTable } from './find-tables.ts';
import { tableOfRecords, tableOfRows, type JsonRow, type JsonTable } from './json-table.ts';
import { parseJson, type JsonNode, type ParsedJson } from './parse-json.ts';

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

interface Line {
  readonly text: string;
  readonly from: number;
}

const linesOf = (text: string): Line[] => {
  const lines: Line[] = [];
  const ends = /\r\n|\r|\n/g;
  let from = 0;
  for (const end of text.matchAll(ends)) {
    lines.push({ text: text.slice(from, end.index), from });
    from = end.index + end[0].length;
  }
  lines.push({ text: text.slice(from), from });
  return lines;
};

const lineFinder = (text: string): ((at: number) => number) => {
  let starts: number[] | null = null;
  return (at) => {
    starts ??= linesOf(text).map(({ from }) => from);
    let low = 0;
    let high = starts.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (starts[middle]! <= at) low = middle + 1;
      else high = middle;
    }
    return low;
  };
};

const isWhole = (text: string): boolean => {
  const { fault, end } = parseJson(text);
  return fault === 'none' && text.slice(end).trim() === '';
};

const opensValue = (text: string): boolean => /^\s*[[{]/.test(text);

/** JSON lines: every line a value of its own, seen by the first two that are not blank. */
const isJsonLines = (text: string): boolean => {
  const head = text.slice(0, 1 << 20);
  const filled = linesOf(head).filter((line) => line.text.trim() !== '');
  const [first, second] = filled;
  return (
    first !== undefined && second !== undefined && opensValue(second.text) && isWhole(first.text)
  );
};

/** Moves a node's characters to where its line stands in the file. */
const shifted = (node: JsonNode, by: number): JsonNode => ({
  ...node,
  from: node.from + by,
  to: node.to + by,
});

const openLines = (text: string): OpenedJson => {
  const nodes: JsonNode[] = [];
  const damaged = new Set<number>();
  const filled = linesOf(text).filter((line) => line.text.trim() !== '');
  for (const { text: line, from } of filled) {
    const { node, end, fault } = parseJson(line);
    const isSound = fault === 'none' && node !== null && line.slice(end).trim() === '';
    if (!isSound) damaged.add(nodes.length);
    const empty: JsonNode = { kind: 'object', entries: [], from: 0, to: line.length, isCut: true };
    nodes.push(shifted(isSound ? node : empty, from));
  }
  const arrays = nodes.filter((node) => node.kind === 'array').length;
  const table = arrays > nodes.length / 2 ? tableOfRows(nodes, null) : tableOfRecords(nodes);
  const skipped = nodes.length - table.rows.length;
  return {
    format: 'json-lines',
    table,
    entries: [],
    damaged: new Set([...damaged].map((index) => index - skipped)),
    isCut: damaged.has(nodes.length - 1),
    lineOf: lineFinder(text),
    textOf: ({ from, to }) => text.slice(from, Math.min(to, from + 2 * REJECTED_TEXT_CHARS)),
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
  const cut = found.table.rows.flatMap((row, index) => (row.isCut ? [index] : []));
  return {
    format: 'json',
    table: found.table,
    entries: found.entries,
    damaged: new Set(cut),
    isCut: fault !== 'none' || isBroken,
    lineOf: lineFinder(text),
    textOf: ({ from, to }) => text.slice(from, Math.min(to, from + 2 * REJECTED_TEXT_CHARS)),
  };
};

/** Opens a JSON text; null if it is none. */
export const openJson = (text: string): OpenedJson | null =>
  isJsonLines(text) ? openLines(text) : openWhole(text);
