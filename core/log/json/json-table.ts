import { MAX_COLUMNS, MAX_NAME_CHARS } from '../limits.ts';
import type { JsonNode, JsonObject } from './parse-json.ts';

/** A row of a JSON table, and the characters it was made from. */
export interface JsonRow {
  /** Its cells as text; those that the record lacks are left out, as records may share few names. */
  readonly cells: readonly string[];
  readonly from: number;
  readonly to: number;
  /** Whether its record breaks off. */
  readonly isCut: boolean;
}

/** The rows of a table, which need not all be in memory. */
export interface JsonRows {
  readonly length: number;
  /** The row at an index below {@link length}. */
  readonly at: (index: number) => JsonRow;
  /** Where that row begins, without reading it. */
  readonly from: (index: number) => number;
}

/** A table found in a JSON file. */
export interface JsonTable {
  readonly names: readonly string[];
  readonly isNamed: boolean;
  readonly rows: JsonRows;
}

/** Rows that are in memory. */
export const rowsInMemory = (rows: readonly JsonRow[]): JsonRows => ({
  length: rows.length,
  at: (index) => rows[index]!,
  from: (index) => rows[index]!.from,
});

/** All rows of a table, one by one. */
export function* eachRow({ rows }: Pick<JsonTable, 'rows'>): Generator<JsonRow> {
  for (let index = 0; index < rows.length; index += 1) yield rows.at(index);
}

/** The text of a scalar as a cell; what JSON writes for "nothing" is an empty cell. */
export const cellOf = (node: JsonNode): string => {
  if (node.kind !== 'scalar') return '';
  return !node.isString && /^(?:null|none|undefined)$/i.test(node.text) ? '' : node.text.trim();
};

/** The characters of a node, and whether it breaks off. */
const placeOf = (node: JsonNode): Omit<JsonRow, 'cells'> => ({
  from: node.from,
  to: node.to,
  isCut: node.kind !== 'scalar' && node.isCut,
});

/** Gathers columns by name in the order in which they are met. */
export class Columns {
  readonly names: string[] = [];
  readonly #byName = new Map<string, number>();

  indexOf(name: string): number | null {
    const cut = name.slice(0, MAX_NAME_CHARS);
    const known = this.#byName.get(cut);
    if (known !== undefined) return known;
    if (this.names.length >= MAX_COLUMNS) return null;
    this.#byName.set(cut, this.names.length);
    this.names.push(cut);
    return this.names.length - 1;
  }
}

/** Puts the scalars of a record into cells, nested ones under names joined by points. */
export const fillCells = (
  node: JsonNode,
  name: string,
  columns: Columns,
  cells: string[],
): void => {
  if (node.kind === 'scalar') {
    const column = columns.indexOf(name);
    if (column !== null) cells[column] = cellOf(node);
    return;
  }
  const members: (readonly [string, JsonNode])[] =
    node.kind === 'object'
      ? [...node.entries]
      : node.items.map((item, index) => [String(index + 1), item] as const);
  for (const [key, member] of members)
    fillCells(member, name === '' ? key : `${name}.${key}`, columns, cells);
};

/** The table of records with names: one row each, whatever keys they have. */
export const tableOfRecords = (records: readonly JsonNode[]): JsonTable => {
  const columns = new Columns();
  const rows = records.map((record) => {
    const cells: string[] = [];
    fillCells(record, '', columns, cells);
    return { cells, ...placeOf(record) };
  });
  return { names: columns.names, isNamed: true, rows: rowsInMemory(rows) };
};

/** Whether a row holds names: several words, and nothing that begins like a number. */
export const isHeaderRow = (cells: readonly string[]): boolean =>
  cells.length > 1 && cells.every((cell) => cell !== '' && !/^[\d.+-]/.test(cell));

/** The table of rows without names; `names` come from elsewhere, or from a first row of words. */
export const tableOfRows = (
  items: readonly JsonNode[],
  names: readonly string[] | null,
): JsonTable => {
  const rows = items.map((item) => ({
    cells: item.kind === 'array' ? item.items.map(cellOf) : [cellOf(item)],
    ...placeOf(item),
  }));
  const [first] = rows;
  const isHeader = names === null && first !== undefined && isHeaderRow(first.cells);
  const body = isHeader ? rows.slice(1) : rows;
  const width = Math.min(
    MAX_COLUMNS,
    body.reduce((most, { cells }) => Math.max(most, cells.length), 0),
  );
  const known = names ?? (isHeader ? first.cells : []);
  const all = Array.from({ length: width }, (_, column) => known[column] ?? `column ${column + 1}`);
  return { names: all, isNamed: known.length > 0, rows: rowsInMemory(body) };
};

/** The table of arrays that stand side by side under their names. */
export const tableOfColumns = (
  columns: readonly (readonly [string, readonly JsonNode[]])[],
): JsonTable => {
  const shown = columns.slice(0, MAX_COLUMNS);
  const length = Math.max(...shown.map(([, items]) => items.length));
  const rows = Array.from({ length }, (_, row) => {
    const [first] = shown;
    const at = first?.[1][row];
    return {
      cells: shown.map(([, items]) => (items[row] === undefined ? '' : cellOf(items[row]))),
      ...(at === undefined ? { from: 0, to: 0, isCut: false } : placeOf(at)),
    };
  });
  const names = shown.map(([name]) => name.slice(0, MAX_NAME_CHARS));
  return { names, isNamed: true, rows: rowsInMemory(rows) };
};

/** The table of an object whose keys are times: the key becomes the first column. */
export const tableOfKeyed = (object: JsonObject): JsonTable => {
  const columns = new Columns();
  columns.indexOf('time');
  const rows = object.entries.map(([key, node]) => {
    const cells = [key];
    if (node.kind === 'array')
      node.items.forEach((item, index) => fillCells(item, `value ${index + 1}`, columns, cells));
    else fillCells(node, node.kind === 'scalar' ? 'value' : '', columns, cells);
    return { cells, ...placeOf(node) };
  });
  return { names: columns.names, isNamed: true, rows: rowsInMemory(rows) };
};

/** One long table of several series: the name of each goes before its rows' cells. */
export const tableOfSeries = (series: readonly (readonly [string, JsonTable])[]): JsonTable => {
  const columns = new Columns();
  columns.indexOf('series');
  const rows = series.flatMap(([name, table]) => {
    const places = table.names.map((column) => columns.indexOf(column));
    return [...eachRow(table)].map(({ cells, ...place }) => {
      const placed: string[] = [name];
      cells.forEach((cell, index) => {
        const place = places[index];
        if (place != null) placed[place] = cell;
      });
      return { cells: placed, ...place };
    });
  });
  return { names: columns.names, isNamed: true, rows: rowsInMemory(rows) };
};
