import type { RejectionId } from '../ids.ts';
import { MAX_SERIES } from '../limits.ts';
import { isNoReadingMark } from '../text/marks.ts';
import { parseNumber } from '../text/number.ts';
import { parseQuantity } from '../text/quantity.ts';
import { temperatureScale, unitOfText } from '../text/unit-text.ts';
import { TimeReader } from '../time/time-reader.ts';
import type { ColumnPlan } from './column-plan.ts';
import { isBadQuality } from './find-quality.ts';
import { type RawColumns, READ, stateOf } from './raw-columns.ts';

const LETTER = /\p{L}/u;

/**
 * The careful path: turns the cells of one row into numbers, or into the reason why it has none.
 * Whatever faster path there is hands every row to it that it does not know by heart.
 */
export class RowReader {
  readonly plan: ColumnPlan;
  readonly columns: RawColumns;
  readonly time: TimeReader;
  /** Names of the channels of a long table in the order met. */
  readonly series = new Map<string, number>();
  /** How often each mark stood for a missing reading. */
  readonly marks = new Map<string, number>();

  constructor(plan: ColumnPlan, columns: RawColumns) {
    this.plan = plan;
    this.columns = columns;
    this.time = new TimeReader(plan.time, plan.originDays, plan.decimalMark);
  }

  /** Reads the time alone; NaN if there is none to read. */
  timeOf(cells: readonly string[]): number {
    return this.time.read(cells, this.columns.length);
  }

  /** Adds a row whose time has been read. */
  add(cells: readonly string[], line: number, time: number): void {
    const row = this.columns.add(line, READ);
    this.columns.time[row] = time;
    this.columns.noteOffset(row, this.time.offsetMinutes);
    this.#readSeries(cells, row);
    this.plan.wanted.forEach((column, index) => {
      this.columns.values[index]![row] = this.#value(cells[column] ?? '');
    });
    const reason = this.#readMain(cells, row);
    if (reason !== null) this.columns.state[row] = stateOf(reason);
  }

  /** Adds a row that is rejected as a whole; `time` is NaN if it has none. */
  reject(line: number, reason: RejectionId, time = Number.NaN): void {
    const row = this.columns.add(line, stateOf(reason));
    this.columns.time[row] = time;
  }

  #value(cell: string): number {
    const { decimalMark } = this.plan;
    const value = parseNumber(cell, decimalMark);
    if (!Number.isNaN(value) || cell === '') return value;
    return parseQuantity(cell, decimalMark)?.value ?? Number.NaN;
  }

  #readSeries(cells: readonly string[], row: number): void {
    if (this.plan.seriesColumn === null) return;
    const name = cells[this.plan.seriesColumn] ?? '';
    const known = this.series.get(name) ?? this.series.size;
    // Names beyond the limit share the last number: they are counted, and none of them is read.
    const number = Math.min(known, MAX_SERIES);
    if (known < MAX_SERIES) this.series.set(name, number);
    this.columns.series[row] = number;
  }

  /** The reason why the main temperature of a row cannot be used, or null. */
  #readMain(cells: readonly string[], row: number): RejectionId | null {
    const cell = cells[this.plan.roles.temperature] ?? '';
    if (!Number.isNaN(this.columns.values[0]![row]!)) {
      return this.#isUnsound(cells) ? 'no-reading' : this.#noteUnit(cells, cell, row);
    }
    if (cell === '') return this.#isRemark(cells, row) ? 'event' : 'no-reading';
    if (isNoReadingMark(cell) || this.plan.noReading.isWord(cell)) {
      this.marks.set(cell, (this.marks.get(cell) ?? 0) + 1);
      return 'no-reading';
    }
    return LETTER.test(cell) && !/\d/.test(cell) ? 'event' : 'unreadable-temperature';
  }

  /** Whether the row says of itself that its value is none; notes the word as a mark. */
  #isUnsound(cells: readonly string[]): boolean {
    const { qualityColumn } = this.plan;
    const quality = qualityColumn === null ? '' : (cells[qualityColumn] ?? '');
    if (quality === '' || !isBadQuality(quality)) return false;
    this.marks.set(quality, (this.marks.get(quality) ?? 0) + 1);
    return true;
  }

  #noteUnit(cells: readonly string[], cell: string, row: number): RejectionId | null {
    const { unitColumn, decimalMark } = this.plan;
    const beside = unitColumn === null ? null : unitOfText(cells[unitColumn] ?? '');
    const last = cell.charCodeAt(cell.length - 1);
    const isBare = last >= 48 && last <= 57;
    const unit = isBare ? beside : (parseQuantity(cell, decimalMark)?.unit ?? beside);
    if (unit === null || unit === 'degrees') return null;
    const scale = temperatureScale(unit);
    if (scale === null) return isBare ? null : 'unreadable-temperature';
    this.columns.units.note(row, scale, this.columns.capacity);
    return null;
  }

  /** Whether a row without any reading holds words where rows of readings hold none. */
  #isRemark(cells: readonly string[], row: number): boolean {
    if (this.columns.values.some((column) => !Number.isNaN(column[row]!))) return false;
    const { wordColumns, seriesColumn } = this.plan;
    return cells.some(
      (cell, column) =>
        LETTER.test(cell) &&
        column !== seriesColumn &&
        !wordColumns.includes(column) &&
        Number.isNaN(this.#value(cell)) &&
        !isNoReadingMark(cell) &&
        !this.plan.noReading.isWord(cell) &&
        !this.#isTimeColumn(column),
    );
  }

  #isTimeColumn(column: number): boolean {
    const { time } = this.plan;
    return (
      ('column' in time && time.column === column) ||
      ('clockColumn' in time && time.clockColumn === column)
    );
  }
}
