import type { Text } from '../bytes/text.ts';
import type { ColumnPlan } from '../columns/column-plan.ts';
import type { RawColumns } from '../columns/raw-columns.ts';
import { MAX_COLUMNS } from '../limits.ts';
import { FastStamps, fastNumber, markByte } from './fast-cells.ts';
import type { Layout } from './layout.ts';
import { BLANKS, WHOLE } from './split.ts';

const LINE_FEED = 0x0a;
const CARRIAGE_RETURN = 0x0d;
const QUOTE = 0x22;
const SPACE = 0x20;
const TAB = 0x09;

/** Encodings in which no byte of another character looks like a delimiter. */
const SAFE_ENCODING = /^(?:utf-8|utf-16|windows-125|iso-8859)/;
/** Lines that begin so may be comments. */
const COMMENT_BYTES: readonly number[] = [0x23, 0x25, 0x21, 0x2f];

/**
 * The fast path: rows of plain cells straight from bytes to columns. It takes a row only if every
 * cell that is wanted has a form it knows, and stops at the first that has not; the careful path
 * then reads that line. What it takes, the careful path would have read the same.
 */
export class FastRows {
  /** Where the last run stopped: at the start of a line. */
  at = 0;
  readonly #bytes: Uint8Array;
  readonly #plan: ColumnPlan;
  readonly #columns: RawColumns;
  readonly #stamps: FastStamps;
  readonly #delimiter: number;
  readonly #mark: number;
  /** Where each cell of the current row begins and ends. */
  readonly #from: Int32Array;
  readonly #to: Int32Array;
  #cells = 0;

  constructor(text: Text, layout: Layout, plan: ColumnPlan, columns: RawColumns) {
    const { delimiter } = layout.survey.dialect;
    this.#bytes = text.bytes;
    this.#plan = plan;
    this.#columns = columns;
    this.#stamps = new FastStamps(
      'order' in plan.time ? plan.time.order : 'year-first',
      plan.originDays,
    );
    this.#delimiter = delimiter === BLANKS ? -1 : delimiter.charCodeAt(0);
    this.#mark = markByte(plan.decimalMark);
    const most = Math.min(plan.width, MAX_COLUMNS) + 1;
    this.#from = new Int32Array(most);
    this.#to = new Int32Array(most);
  }

  /** Takes rows from `from` on, the first of them being `line`; returns how many. */
  run(from: number, line: number): number {
    const { length } = this.#bytes;
    let rows = 0;
    this.at = from;
    while (this.at < length) {
      const end = this.#delimiter < 0 ? this.#splitAtBlanks(this.at) : this.#splitAtMarks(this.at);
      if (end < 0 || !this.#take(line + rows)) break;
      rows += 1;
      const isPair = this.#bytes[end] === CARRIAGE_RETURN && this.#bytes[end + 1] === LINE_FEED;
      this.at = end + (isPair ? 2 : 1);
    }
    return rows;
  }

  /** Finds the cells of a line; its end, or -1 for a line that needs care. */
  #splitAtMarks(start: number): number {
    const bytes = this.#bytes;
    const delimiter = this.#delimiter;
    const { length } = bytes;
    const most = this.#from.length - 1;
    let cell = 0;
    let at = start;
    if (COMMENT_BYTES.includes(bytes[at]!)) return -1;
    for (;;) {
      while (bytes[at] === SPACE) at += 1;
      if (bytes[at] === QUOTE) {
        this.#from[cell] = at + 1;
        at += 1;
        while (at < length && bytes[at] !== QUOTE && bytes[at]! > CARRIAGE_RETURN) at += 1;
        if (at >= length || bytes[at] !== QUOTE) return -1;
        this.#to[cell] = at;
        at += 1;
      } else {
        this.#from[cell] = at;
        // A blank beyond ASCII may hide a quote, and below the line ends there are only NULs and tabs.
        if (bytes[at]! >= 0x80) return -1;
        while (at < length && bytes[at]! > CARRIAGE_RETURN && bytes[at] !== delimiter) at += 1;
        if (at >= length) return -1;
        this.#to[cell] = at;
      }
      const byte = bytes[at];
      cell += 1;
      if (byte === LINE_FEED || byte === CARRIAGE_RETURN) {
        this.#cells = cell;
        return at;
      }
      if (byte !== delimiter || cell >= most) return -1;
      at += 1;
    }
  }

  #splitAtBlanks(start: number): number {
    const bytes = this.#bytes;
    const { length } = bytes;
    const most = this.#from.length - 1;
    let cell = 0;
    let at = start;
    if (COMMENT_BYTES.includes(bytes[at]!)) return -1;
    while (at < length) {
      let byte = bytes[at]!;
      if (byte === LINE_FEED || byte === CARRIAGE_RETURN) {
        this.#cells = cell;
        return at;
      }
      if (byte === SPACE || byte === TAB) {
        at += 1;
        continue;
      }
      if (byte === QUOTE || cell >= most) return -1;
      this.#from[cell] = at;
      while (byte > SPACE && byte < 0x80) {
        at += 1;
        if (at >= length) return -1;
        byte = bytes[at]!;
      }
      if (byte >= 0x80 || byte === 0) return -1;
      this.#to[cell] = at;
      cell += 1;
    }
    return -1;
  }

  /** Where a cell ends without the blanks behind it. */
  #trimmedEnd(cell: number): number {
    let to = this.#to[cell]!;
    const from = this.#from[cell]!;
    while (to > from && this.#bytes[to - 1] === SPACE) to -= 1;
    return to;
  }

  #time(): number {
    const { time } = this.#plan;
    const bytes = this.#bytes;
    if (!('column' in time) || time.form === 'section') return Number.NaN;
    const from = this.#from[time.column]!;
    const to = this.#trimmedEnd(time.column);
    if (time.form === 'stamp') return this.#stamps.stamp(bytes, from, to);
    if (time.form === 'number') return fastNumber(bytes, from, to, this.#mark);
    if (time.form === 'clock') return this.#stamps.clock(bytes, from, to);
    const clockFrom = this.#from[time.clockColumn]!;
    return this.#stamps.dateAndClock(
      bytes,
      from,
      to,
      clockFrom,
      this.#trimmedEnd(time.clockColumn),
    );
  }

  /** Adds the row whose cells were found; false if any wanted cell needs care. */
  #take(line: number): boolean {
    const { requiredCells, wanted } = this.#plan;
    if (this.#cells < requiredCells) return false;
    const time = this.#time();
    if (Number.isNaN(time)) return false;
    const columns = this.#columns;
    columns.reserve();
    const row = columns.length;
    for (let index = 0; index < wanted.length; index += 1) {
      const column = wanted[index]!;
      let value = Number.NaN;
      if (column < this.#cells) {
        const from = this.#from[column]!;
        const to = this.#trimmedEnd(column);
        value = fastNumber(this.#bytes, from, to, this.#mark);
        if (Number.isNaN(value) && (index === 0 || to > from)) return false;
      }
      columns.values[index]![row] = value;
    }
    columns.time[row] = time;
    columns.line[row] = line;
    columns.state[row] = 0;
    columns.noteOffset(row, this.#stamps.offsetMinutes);
    columns.length = row + 1;
    return true;
  }
}

/** The fast path for a table, or null where rows need more than their own cells to be read. */
export const makeFastRows = (
  text: Text,
  layout: Layout,
  plan: ColumnPlan,
  columns: RawColumns,
): FastRows | null => {
  const { dialect } = layout.survey;
  const isPlain =
    [plan.seriesColumn, plan.unitColumn, plan.qualityColumn].every((one) => one === null) &&
    !layout.isNested;
  const isTimed = ['stamp', 'date-and-clock', 'clock', 'number'].includes(plan.time.form);
  const isSingleByte = dialect.delimiter === BLANKS || dialect.delimiter.charCodeAt(0) < 0x80;
  const isPlainDialect =
    !dialect.isWrapped &&
    dialect.delimiter !== WHOLE &&
    !dialect.isBracketed &&
    [dialect.labels, dialect.joins, dialect.cuts].every((special) => special === null);
  const isSafe = isPlain && isTimed && isSingleByte && isPlainDialect;
  if (!isSafe || dialect.delimiter === '"' || !SAFE_ENCODING.test(text.encoding)) return null;
  return new FastRows(text, layout, plan, columns);
};
