import { MAX_COLUMNS } from '../limits.ts';
import {
  cellOf,
  Columns,
  fillCells,
  isHeaderRow,
  type JsonRow,
  type JsonRows,
  type JsonTable,
} from './json-table.ts';
import { parseJson, type JsonNode } from './parse-json.ts';
import type { Spans } from './spans.ts';

/** A table whose rows are read from the text each time they are asked for. */
export interface LazyTable {
  readonly table: JsonTable;
  /** Rows whose record breaks off or is malformed. */
  readonly damaged: ReadonlySet<number>;
}

/** The record in a stretch of text, or null if it is damaged. */
const recordIn = (text: string, from: number, to: number): JsonNode | null => {
  const record = text.slice(from, to);
  const { node, end, fault } = parseJson(record);
  return fault === 'none' && record.slice(end).trim() === '' ? node : null;
};

/** Reads rows on demand with the columns that a first pass has met. */
class LazyRows implements JsonRows {
  readonly length: number;
  readonly #text: string;
  readonly #spans: Spans;
  readonly #skipped: number;
  readonly #cells: (node: JsonNode) => string[];

  constructor(text: string, spans: Spans, skipped: number, cells: (node: JsonNode) => string[]) {
    this.length = spans.length - skipped;
    this.#text = text;
    this.#spans = spans;
    this.#skipped = skipped;
    this.#cells = cells;
  }

  from(index: number): number {
    return this.#spans.from(index + this.#skipped);
  }

  at(index: number): JsonRow {
    const from = this.#spans.from(index + this.#skipped);
    const to = this.#spans.to(index + this.#skipped);
    const node = recordIn(this.#text, from, to);
    return { cells: node === null ? [] : this.#cells(node), from, to, isCut: node === null };
  }
}

/** What a first pass over all records shows of them. */
interface Census {
  readonly columns: Columns;
  readonly damaged: number[];
  readonly arrays: number;
  readonly widest: number;
  readonly first: readonly string[];
}

const takeCensus = (text: string, spans: Spans): Census => {
  const columns = new Columns();
  const damaged: number[] = [];
  let arrays = 0;
  let widest = 0;
  let first: readonly string[] = [];
  for (let index = 0; index < spans.length; index += 1) {
    const node = recordIn(text, spans.from(index), spans.to(index));
    if (node === null) damaged.push(index);
    else if (node.kind === 'array') {
      arrays += 1;
      if (index === 0) first = node.items.map(cellOf);
      else widest = Math.max(widest, node.items.length);
    } else fillCells(node, '', columns, []);
  }
  return { columns, damaged, arrays, widest: Math.max(widest, first.length), first };
};

/**
 * The table of records that stand in stretches of a text, as objects or as arrays. Memory holds
 * where each begins, not what is in it.
 */
export const lazyTable = (text: string, spans: Spans): LazyTable => {
  const census = takeCensus(text, spans);
  if (census.arrays <= spans.length / 2) {
    const { columns, damaged } = census;
    const cells = (node: JsonNode): string[] => {
      const filled: string[] = [];
      fillCells(node, '', columns, filled);
      return filled;
    };
    const rows = new LazyRows(text, spans, 0, cells);
    return { table: { names: columns.names, isNamed: true, rows }, damaged: new Set(damaged) };
  }
  const skipped = isHeaderRow(census.first) ? 1 : 0;
  const known = skipped === 1 ? census.first : [];
  const width = Math.min(MAX_COLUMNS, census.widest);
  const names = Array.from({ length: width }, (_, i) => known[i] ?? `column ${i + 1}`);
  const cells = (node: JsonNode): string[] =>
    node.kind === 'array' ? node.items.map(cellOf) : [cellOf(node)];
  return {
    table: { names, isNamed: skipped === 1, rows: new LazyRows(text, spans, skipped, cells) },
    damaged: new Set(census.damaged.map((index) => index - skipped)),
  };
};
