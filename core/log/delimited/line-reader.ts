import type { RowReader } from '../columns/row-reader.ts';
import { classOf, isNumberClass, isTimeClass } from '../text/cell-class.ts';
import { isNoReadingMark } from '../text/marks.ts';
import { AsideLines, type Aside } from './aside-lines.ts';
import type { Layout } from './layout.ts';
import { HeaderWatch } from './header-watch.ts';
import type { SectionClock } from './section-clock.ts';
import { timeColumnsOf } from '../columns/time-plan.ts';
import { isCutShort } from './cut-short.ts';
import { splitLine } from './split.ts';
import { fitsKinds, lookAt } from './survey.ts';

const COMMENT = /^\s*(?:#|%|!|\/\/)/;
/** A line without any letter or digit is drawn, not written. */
const HAS_CHARACTERS = /[\p{L}\p{N}]/u;
const LETTERS = /\p{L}/gu;
/** More than this share of letters makes a line words rather than a damaged row (chosen). */
const WORDY = 0.3;
/** Longer tails than this, and than a tenth of the rows, are rows that went bad, not a footer. */
const LONGEST_FOOTER = 60;

const isWordy = (text: string): boolean => {
  const bare = text.replace(/\s+/g, '');
  const letters = bare.match(LETTERS)?.length ?? 0;
  return letters > WORDY * bare.length || !/\d/.test(bare);
};

/** Whether a cell begins with a word: a label or a remark rather than a spoilt number or time. */
const isLabel = (cell: string): boolean => /^\p{L}/u.test(cell) && !isNoReadingMark(cell);

/** Takes the lines after the header one by one and tells rows from everything else. */
export class LineReader {
  readonly aside: Aside = { blank: 0, comment: 0, header: 0, table: 0, text: 0, footer: 0 };
  /** The same lines by their numbers, as far as they are kept. */
  readonly asideLines = new AsideLines();
  readonly #layout: Layout;
  readonly #rows: RowReader;
  readonly #watch: HeaderWatch;
  readonly #sections: SectionClock | null;
  readonly #hasComments: boolean;
  #line = 0;
  /** Rows there were when the last break since a good row came: a footer begins there, if any. */
  #breakAt: number | null = null;

  constructor(layout: Layout, rows: RowReader, sections: SectionClock | null) {
    this.#layout = layout;
    this.#rows = rows;
    const names = layout.sample.isNamed ? layout.sample.aliases.flat() : [];
    this.#watch = new HeaderWatch(layout.header, names, sections !== null);
    this.#sections = sections;
    this.#hasComments = !layout.sample.rows.some(([first = '']) => COMMENT.test(first));
  }

  /** Whether the lines now belong to another table, so that no row may be taken from them. */
  get isElsewhere(): boolean {
    return this.#watch.isElsewhere;
  }

  /** Notes that a row was read on the fast path. */
  noteGoodRow(): void {
    this.#breakAt = null;
    this.#watch.noteRow();
  }

  /** Reads one line (or the lines that one quoted cell runs over). */
  read(text: string, line: number, isUnterminated: boolean): void {
    this.#line = line;
    if (text.trim() === '') return this.#break('blank');
    if (this.#hasComments && COMMENT.test(text)) {
      this.#setAside('comment', line);
      return;
    }
    const { cells } = splitLine(text, this.#layout.survey.dialect);
    if (cells.every((cell) => cell === '')) return this.#break('blank');
    if (!HAS_CHARACTERS.test(text)) return this.#break('text');
    if (this.#sections?.note(cells) === true) return this.#break('text');
    const seen = this.#watch.note(text, cells, () => this.#fits(cells));
    if (seen === 'header') {
      this.#setAside('header', line);
      return;
    }
    if (seen === 'elsewhere' || this.#isOuter(cells)) {
      this.#setAside('table', line);
      return;
    }
    this.#readRecord(cells, text, line, isUnterminated);
  }

  /** Takes the footer, if there is one, back out of the rows. */
  finish(): void {
    const { columns } = this.#rows;
    if (this.#breakAt === null) return;
    const tail = columns.length - this.#breakAt;
    if (tail > LONGEST_FOOTER && tail > 0.1 * columns.length) return;
    for (let row = this.#breakAt; row < columns.length; row += 1) {
      this.#setAside('footer', columns.line[row]!);
    }
    columns.cutTo(this.#breakAt);
  }

  #setAside(kind: keyof Aside, line: number): void {
    this.aside[kind] += 1;
    this.asideLines.note(line, kind);
  }

  #break(kind: 'blank' | 'text'): void {
    this.#setAside(kind, this.#line);
    this.#breakAt ??= this.#rows.columns.length;
  }

  #isOuter(cells: readonly string[]): boolean {
    if (!this.#layout.isNested) return false;
    return cells.findIndex((cell) => cell !== '') < this.#layout.survey.leading;
  }

  /** Whether cells could be a row of this table by what they hold. */
  #fits(cells: readonly string[]): boolean {
    const { plan } = this.#rows;
    const main = cells[plan.roles.temperature] ?? '';
    const kind = classOf(main, plan.decimalMark);
    const isMark = kind === 'mark' || plan.noReading.isWord(main);
    return isNumberClass(kind) || isMark || kind === 'empty';
  }

  #readRecord(cells: readonly string[], text: string, line: number, isUnterminated: boolean): void {
    const time = this.#rows.timeOf(cells);
    const { plan } = this.#rows;
    if (Number.isNaN(time) || !this.#isRecord(cells, text)) {
      this.#readUntimed(cells, text, line, isUnterminated);
      return;
    }
    // A bare number is a weak sign of a time: beside words where rows have none, it is none.
    if (plan.time.form === 'number' && this.#hasOddWords(cells)) return this.#break('text');
    this.#breakAt = null;
    if (cells.length < plan.requiredCells) {
      const reason = isUnterminated ? 'half-written' : 'too-few-cells';
      this.#rows.reject(line, this.#isBareRemark(cells) ? 'event' : reason, time);
    } else if (this.#hasSlid(cells)) {
      this.#rows.reject(line, 'too-many-cells', time);
    } else if (isUnterminated) this.#readLast(cells, line, time);
    else this.#rows.add(cells, line, time);
  }

  /** Where rows carry no time of their own, only what looks like a row is one. */
  #isRecord(cells: readonly string[], text: string): boolean {
    const { plan } = this.#rows;
    if (plan.time.form !== 'interval' && plan.time.form !== 'section') return true;
    const { survey } = this.#layout;
    const line = lookAt(text, survey.dialect, plan.decimalMark);
    const isRightWidth = cells.length >= Math.min(2, plan.width) && cells.length <= plan.width + 1;
    return isRightWidth && this.#fits(cells) && fitsKinds(line, survey);
  }

  /** Words in columns that are empty in all rows, or in a row that is too short. */
  #hasOddWords(cells: readonly string[]): boolean {
    const { plan } = this.#rows;
    const { kinds } = this.#layout.survey;
    const isShort = cells.length < plan.requiredCells;
    return cells.some(
      (cell, column) =>
        isLabel(cell) && (kinds[column] === 'empty' || (isShort && kinds[column] !== 'text')),
    );
  }

  /** A time and words, and nothing else: `14:05 Door opened`. */
  #isBareRemark(cells: readonly string[]): boolean {
    const { plan } = this.#rows;
    const used = 'clockColumn' in plan.time ? 2 : 1;
    const rest = cells.slice(used).filter((cell) => cell !== '');
    return (
      rest.length > 0 &&
      rest.some(isLabel) &&
      !rest.some((cell) => this.#isValue(cell)) &&
      !rest.every(isNoReadingMark)
    );
  }

  #isValue(cell: string): boolean {
    const kind = classOf(cell, this.#rows.plan.decimalMark);
    return isNumberClass(kind) || isTimeClass(kind);
  }

  /** Values beyond the last column: the row has one cell too many, and any may be the wrong one. */
  #hasSlid(cells: readonly string[]): boolean {
    return cells.slice(this.#rows.plan.width).some((cell) => this.#isValue(cell));
  }

  /** A last line without its end may break off within its last cell, whatever that holds. */
  #readLast(cells: readonly string[], line: number, time: number): void {
    const { plan } = this.#rows;
    const last = cells.length - 1;
    const isCut = isCutShort(cells, last, this.#layout.sample.rows, plan.decimalMark);
    const isNeeded = last === plan.roles.temperature || timeColumnsOf(plan.time).includes(last);
    if (isCut && isNeeded) this.#rows.reject(line, 'half-written', time);
    else this.#rows.add(isCut ? cells.with(last, '') : cells, line, time);
  }

  #readUntimed(
    cells: readonly string[],
    text: string,
    line: number,
    isUnterminated: boolean,
  ): void {
    const { plan } = this.#rows;
    const kind = classOf(cells[plan.roles.temperature] ?? '', plan.decimalMark);
    const hasReading = isNumberClass(kind) || kind === 'mark';
    const isWhole = cells.length >= plan.requiredCells && hasReading;
    const isUntimed = plan.time.form === 'section' || plan.time.form === 'interval';
    const isTitled = isUntimed && isLabel(cells[0] ?? '');
    if (isTitled || (!isWhole && isWordy(text))) return this.#break('text');
    // A label in the place of the time is a line of totals if nothing but such lines follows.
    if (isLabel(cells['column' in plan.time ? plan.time.column : 0] ?? '')) {
      this.#breakAt ??= this.#rows.columns.length;
    }
    const isMissing = this.#rows.time.isEmpty(cells);
    const reason = isMissing ? 'no-time' : 'unreadable-time';
    this.#rows.reject(line, isUnterminated ? 'half-written' : reason);
  }
}
