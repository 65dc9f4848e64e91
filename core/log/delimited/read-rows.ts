import { MAX_LINE_BYTES, MAX_QUOTED_LINES, SAMPLE_BLOCKS, SAMPLE_BLOCK_LINES } from '../limits.ts';
import { afterLineEnd, lineEndFrom, type Text } from '../bytes/text.ts';
import type { ColumnPlan } from '../columns/column-plan.ts';
import { RawColumns } from '../columns/raw-columns.ts';
import { RowReader } from '../columns/row-reader.ts';
import type { Aside, AsideLines } from './aside-lines.ts';
import type { FastRows } from './fast-rows.ts';
import { makeFastRows } from './fast-rows.ts';
import type { Layout } from './layout.ts';
import { LineReader } from './line-reader.ts';
import { lineText } from './sample-lines.ts';
import { SectionClock } from './section-clock.ts';
import { splitLine } from './split.ts';

/** The rows of a delimited table as numbers, and what else was met on the way. */
export interface RowsRead {
  readonly columns: RawColumns;
  readonly aside: Aside;
  readonly asideLines: AsideLines;
  readonly series: ReadonlyMap<string, number>;
  readonly marks: ReadonlyMap<string, number>;
}

/** After so many quotes that are never closed, no more lines are looked through for their ends. */
const MOST_STRAY_QUOTES = 20;

/** Room to spare, so that a fair guess need not grow: growing holds old and new at once (chosen). */
const SPARE = 1.03;

/** Rows for which room is made at first: what the sampled lines' length lets expect, and a few. */
const expectedRows = (text: Text, layout: Layout): number => {
  // The last sampled ones come from all over a long file, the first from its head alone.
  const rows = layout.sample.rows.slice(-SAMPLE_BLOCKS * SAMPLE_BLOCK_LINES);
  const cells = rows.reduce((sum, row) => sum + row.length + row.join('').length, 0);
  const bytesPerRow = Math.max(4, cells / Math.max(1, rows.length));
  const rowsExpected = (text.bytes.length - layout.startByte) / bytesPerRow;
  return Math.ceil(SPARE * rowsExpected) + 16;
};

/** Reads lines one at a time with the careful path, and lets the fast path run where it can. */
class FileReader {
  readonly #text: Text;
  readonly #layout: Layout;
  readonly #rows: RowReader;
  readonly #lines: LineReader;
  readonly #sections: SectionClock | null;
  readonly #fast: FastRows | null;
  #at: number;
  #line: number;
  /** Quotes that were opened and never closed so far. */
  #strayQuotes = 0;

  constructor(text: Text, layout: Layout, plan: ColumnPlan, isCareful: boolean) {
    const columns = new RawColumns(
      plan.wanted.length,
      expectedRows(text, layout),
      plan.seriesColumn !== null,
    );
    this.#text = text;
    this.#layout = layout;
    this.#rows = new RowReader(plan, columns);
    this.#sections =
      plan.time.form === 'section' ? new SectionClock(this.#rows.time, plan.time.column) : null;
    this.#lines = new LineReader(layout, this.#rows, this.#sections);
    this.#fast = isCareful ? null : makeFastRows(text, layout, plan, columns);
    // The heads of the sections before the first row are read like those after it.
    this.#at = this.#sections === null ? layout.startByte : 0;
    this.#line = this.#sections === null ? layout.startLine : 1;
  }

  read(): RowsRead {
    const { bytes } = this.#text;
    while (this.#at < bytes.length) {
      if (this.#fast !== null && !this.#lines.isElsewhere) this.#runFast(this.#fast);
      if (this.#at < bytes.length) this.#readCarefully();
    }
    this.#lines.finish();
    const { columns, series, marks } = this.#rows;
    const { aside, asideLines } = this.#lines;
    return { columns, aside, asideLines, series, marks };
  }

  #runFast(fast: FastRows): void {
    const rows = fast.run(this.#at, this.#line);
    this.#at = fast.at;
    this.#line += rows;
    if (rows > 0) this.#lines.noteGoodRow();
  }

  #readCarefully(): void {
    const { bytes } = this.#text;
    const line = this.#line;
    const end = lineEndFrom(bytes, this.#at);
    if (end - this.#at > MAX_LINE_BYTES) {
      this.#rows.reject(line, 'line-too-long');
      this.#moveTo(end);
      return;
    }
    const text = this.#withQuotedLines(lineText(this.#text, this.#at, end), end);
    const before = this.#rows.columns.length;
    this.#lines.read(text, line, this.#at >= bytes.length && !this.#endsInLineEnd());
    if (this.#rows.columns.length > before) this.#sections?.advance();
  }

  #endsInLineEnd(): boolean {
    const last = this.#text.bytes[this.#text.bytes.length - 1];
    return last === 0x0a || last === 0x0d;
  }

  #moveTo(end: number): void {
    this.#at = afterLineEnd(this.#text.bytes, end);
    this.#line += 1;
  }

  /** A line and, where a quoted cell runs over its end, the lines until the quote is closed. */
  #withQuotedLines(first: string, end: number): string {
    const { bytes } = this.#text;
    const { dialect } = this.#layout.survey;
    this.#moveTo(end);
    const isHopeful = this.#strayQuotes < MOST_STRAY_QUOTES && first.includes('"');
    if (!isHopeful || !splitLine(first, dialect).isOpen) return first;
    let text = first;
    let at = this.#at;
    for (let more = 1; more <= MAX_QUOTED_LINES && at < bytes.length; more += 1) {
      const next = lineEndFrom(bytes, at);
      if (next - at > MAX_LINE_BYTES) break;
      text += `\n${lineText(this.#text, at, next)}`;
      at = afterLineEnd(bytes, next);
      const { isOpen, isLoose } = splitLine(text, dialect);
      if (isOpen) continue;
      // A quote that closes in the middle of a cell was none that could run over lines.
      if (isLoose === true) break;
      this.#at = at;
      this.#line += more;
      return text;
    }
    this.#strayQuotes += 1;
    return first;
  }
}

/**
 * Reads every row of a delimited table. `isCareful` leaves out the fast path, which must not change
 * any result; tests compare the two.
 */
export const readRows = (
  text: Text,
  layout: Layout,
  plan: ColumnPlan,
  isCareful: boolean,
): RowsRead => new FileReader(text, layout, plan, isCareful).read();
