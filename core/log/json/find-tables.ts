import { MAX_SERIES } from '../limits.ts';
import { scanStamp } from '../time/stamp.ts';
import type { PreambleEntry } from '../text/preamble.ts';
import {
  cellOf,
  tableOfColumns,
  tableOfKeyed,
  tableOfRecords,
  tableOfRows,
  tableOfSeries,
  type JsonTable,
} from './json-table.ts';
import type { JsonArray, JsonNode, JsonObject } from './parse-json.ts';

/** A table found somewhere in a JSON value, and the single values that stand beside it. */
export interface FoundTable {
  readonly table: JsonTable;
  readonly entries: readonly PreambleEntry[];
}

/** Of an array's members, at least this share makes its kind (chosen): the rest may be damaged. */
const MOSTLY = 0.6;
const FEWEST_KEYED = 3;
const NAME_LISTS = ['columns', 'fields', 'header', 'headers', 'names', 'keys', 'labels'];
const ROW_LISTS = ['data', 'rows', 'values', 'points', 'records', 'readings'];
const LABELS = [
  'name',
  'label',
  'channel',
  'sensor',
  'series',
  'target',
  'id',
  'key',
  'metric',
  'zone',
];

const isMostly = (items: readonly JsonNode[], kind: JsonNode['kind']): boolean =>
  items.length > 0 && items.filter((item) => item.kind === kind).length >= MOSTLY * items.length;

/** The single values in an object, and in the objects in it, by their names. */
const scalarsOf = (object: JsonObject, name = ''): PreambleEntry[] =>
  object.entries.flatMap(([key, node]) => {
    const inner = name === '' ? key : `${name}.${key}`;
    if (node.kind === 'object') return scalarsOf(node, inner);
    return node.kind === 'scalar' ? [{ key: inner, value: cellOf(node) }] : [];
  });

const arraysOf = (object: JsonObject): (readonly [string, JsonArray])[] =>
  object.entries.flatMap(([key, node]) => (node.kind === 'array' ? [[key, node] as const] : []));

/** The arrays of single values in an object, and in the objects in it, by their names. */
const scalarArrays = (object: JsonObject, name: string): (readonly [string, JsonArray])[] =>
  object.entries.flatMap(([key, node]) => {
    const inner = name === '' ? key : `${name}.${key}`;
    if (node.kind === 'object') return scalarArrays(node, inner);
    const isColumn = node.kind === 'array' && isMostly(node.items, 'scalar');
    return isColumn ? [[inner, node] as const] : [];
  });

const isScalarEntry = ([, node]: readonly [string, JsonNode]): boolean => node.kind === 'scalar';

/** Arrays of single values, as long as each other, side by side. */
const columnar = (object: JsonObject): JsonTable | null => {
  const arrays = scalarArrays(object, '');
  const longest = Math.max(0, ...arrays.map(([, { items }]) => items.length));
  const alike = arrays.filter(([, { items }]) => items.length >= longest - 1 && items.length > 1);
  return alike.length < 2 ? null : tableOfColumns(alike.map(([key, { items }]) => [key, items]));
};

/** `{ "columns": [...], "data": [[...], ...] }`. */
const splitTable = (object: JsonObject): JsonTable | null => {
  const arrays = arraysOf(object);
  const names = arrays.find(([key]) => NAME_LISTS.includes(key.toLowerCase()))?.[1];
  const rows = arrays.find(
    ([key, { items }]) => ROW_LISTS.includes(key.toLowerCase()) && isMostly(items, 'array'),
  )?.[1];
  if (names === undefined || rows === undefined) return null;
  const texts = names.items.map((item) => (item.kind === 'object' ? nameIn(item) : cellOf(item)));
  return tableOfRows(rows.items, texts);
};

const nameIn = (object: JsonObject): string => {
  const named = object.entries.find(([key]) => LABELS.includes(key.toLowerCase()));
  return named === undefined ? '' : cellOf(named[1]);
};

const isTimeKey = (key: string): boolean =>
  /^\d{9,19}(?:\.\d+)?$/.test(key) || scanStamp(key) !== null;

/** An object whose keys are times. */
const keyed = (object: JsonObject): JsonTable | null => {
  const { entries } = object;
  if (entries.length < FEWEST_KEYED) return null;
  const times = entries.filter(([key]) => isTimeKey(key)).length;
  return times >= 0.9 * entries.length ? tableOfKeyed(object) : null;
};

/** The best table in each member of a value, if any; looked for once. */
type Inner = ReadonlyMap<JsonNode, FoundTable>;

/** Tables that several members of one value hold, each under its own name. */
const seriesOf = (
  members: readonly (readonly [string, JsonNode])[],
  inner: Inner,
): FoundTable | null => {
  const found = members.flatMap(([name, node]) => {
    const table = inner.get(node);
    const isTable =
      table !== undefined && table.table.rows.length > 1 && table.table.names.length > 1;
    return isTable ? [[name, table] as const] : [];
  });
  if (found.length < 2 || found.length > MAX_SERIES) return null;
  const shape = (table: JsonTable): string => table.names.join('\u0001');
  const [, first] = found[0]!;
  const alike = found.filter(([, { table }]) => shape(table) === shape(first.table));
  if (alike.length < 2) return null;
  return {
    table: tableOfSeries(alike.map(([name, { table }]) => [name, table])),
    entries: first.entries,
  };
};

/** Arrays of objects that hold arrays themselves: a list of series, or one series and its name. */
const inList = (objects: readonly JsonObject[]): FoundTable[] => {
  if (objects.length > MAX_SERIES || !objects.some((object) => arraysOf(object).length > 0))
    return [];
  const inner = innerTables(objects);
  const series = seriesOf(
    objects.map((object, index) => [nameIn(object) || `series ${index + 1}`, object]),
    inner,
  );
  return series === null ? [...inner.values()] : [series];
};

const innerTables = (nodes: readonly JsonNode[]): Inner =>
  new Map(
    nodes.flatMap((node) => {
      const table = bestTable(node);
      return table === null ? [] : [[node, table] as const];
    }),
  );

const inArray = ({ items }: JsonArray): FoundTable[] => {
  const found: FoundTable[] = [];
  if (isMostly(items, 'object')) {
    found.push(...inList(items.filter((item) => item.kind === 'object')));
    found.push({ table: tableOfRecords(items), entries: [] });
  } else if (isMostly(items, 'array')) {
    found.push({ table: tableOfRows(items, null), entries: [] });
  } else if (items.length > 1) {
    found.push({ table: tableOfRows(items, ['value']), entries: [] });
  }
  return found;
};

const inObject = (object: JsonObject): FoundTable[] => {
  const entries = scalarsOf(object);
  const own = [columnar(object), splitTable(object), keyed(object)]
    .filter((table) => table !== null)
    .map((table) => ({ table, entries }));
  const direct = scalarsOf({ ...object, entries: object.entries.filter(isScalarEntry) });
  const inner = innerTables(object.entries.map(([, node]) => node));
  const series = seriesOf(object.entries, inner);
  const deeper = [...(series === null ? [] : [series]), ...inner.values()].map((found) => ({
    ...found,
    entries: [...direct, ...found.entries],
  }));
  return [...own, ...deeper];
};

/** The table with the most cells filled, counted by rows first; of equals the outermost. */
export const bestTable = (node: JsonNode): FoundTable | null => {
  if (node.kind === 'scalar') return null;
  const found = node.kind === 'array' ? inArray(node) : inObject(node);
  const worth = ({ table }: FoundTable): number =>
    table.rows.length * (table.names.length > 1 ? 1 : 0.01);
  return found.reduce<FoundTable | null>(
    (best, one) => (best === null || worth(one) > worth(best) ? one : best),
    null,
  );
};
