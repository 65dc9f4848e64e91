import { MAX_VALUE_CHARS } from '../limits.ts';
import { isDottedClock } from '../time/dotted-clock.ts';
import { parseDuration } from '../time/duration.ts';
import { daysOfDate, ordersOf } from '../time/date-order.ts';
import { scanStamp, type Stamp } from '../time/stamp.ts';
import { isNoReadingMark } from './marks.ts';
import { parseNumber, type DecimalMark } from './number.ts';
import { parseQuantity } from './quantity.ts';

/** What a cell is by its form alone. */
export type CellClass =
  | 'empty'
  | 'number'
  /** A number with its unit beside it: `25.5 °C`. */
  | 'quantity'
  /** A date with a time of day. */
  | 'stamp'
  | 'date'
  /** A time of day, or hours and minutes elapsed. */
  | 'clock'
  /** Time elapsed in words or with days: `1h 05m`, `2d 03:04:05`. */
  | 'duration'
  | 'mark'
  | 'text';

/** The classes from which a time can be had. */
export const isTimeClass = (kind: CellClass): boolean =>
  kind === 'stamp' || kind === 'date' || kind === 'clock' || kind === 'duration';

export const isNumberClass = (kind: CellClass): boolean => kind === 'number' || kind === 'quantity';

/** Whether the numbers of a date are one in any order. */
const isPossible = (stamp: Stamp): boolean =>
  ordersOf(stamp).some((order) => !Number.isNaN(daysOfDate(stamp.date, order)));

/** The class of a stamp; null if its date cannot be one. */
export const classOfStamp = (stamp: Stamp): CellClass | null => {
  if (stamp.date.length === 0) return 'clock';
  if (!isPossible(stamp)) return null;
  return stamp.clockSeconds === null ? 'date' : 'stamp';
};

/** Classifies a trimmed cell. */
export const classOf = (cell: string, decimalMark: DecimalMark): CellClass => {
  if (cell.length === 0) return 'empty';
  if (cell.length > MAX_VALUE_CHARS) return 'text';
  if (!Number.isNaN(parseNumber(cell, decimalMark))) return 'number';
  // Where the comma stands before decimals, a point between two pairs of digits parts a clock.
  if (decimalMark === ',' && isDottedClock(cell)) return 'clock';
  const stamp = scanStamp(cell);
  const stampClass = stamp === null ? null : classOfStamp(stamp);
  if (stampClass !== null) return stampClass;
  if (!Number.isNaN(parseDuration(cell))) return 'duration';
  if (parseQuantity(cell, decimalMark) !== null) return 'quantity';
  return isNoReadingMark(cell) ? 'mark' : 'text';
};
