import type { ColumnPlan } from '../columns/column-plan.ts';
import { STATES, type RawColumns } from '../columns/raw-columns.ts';
import { timeColumnsOf, type TimePlan } from '../columns/time-plan.ts';
import type { LinesOf } from '../assemble/table-read.ts';
import type { DayOrder } from '../time/date-order.ts';
import { TimeReader } from '../time/time-reader.ts';
import { splitLine, type Dialect } from './split.ts';

/** So many of the rows without a time are looked at. */
const LOOKED_AT = 200;

const swapped = (order: DayOrder): DayOrder | null => {
  if (order === 'day-first') return 'month-first';
  return order === 'month-first' ? 'day-first' : null;
};

/**
 * The order of day and month that reads rows which the planned one could not: a part beyond 12 that
 * stood in none of the sampled lines settles it for the whole column. Null if there are none.
 */
export const otherOrder = (
  columns: RawColumns,
  plan: ColumnPlan,
  dialect: Dialect,
  linesOf: LinesOf,
): DayOrder | null => {
  const order = 'order' in plan.time ? swapped(plan.time.order) : null;
  if (order === null || timeColumnsOf(plan.time).length === 0) return null;
  const lines: number[] = [];
  for (let row = 0; row < columns.length && lines.length < LOOKED_AT; row += 1) {
    if (STATES[columns.state[row]!] === 'unreadable-time') lines.push(columns.line[row]!);
  }
  if (lines.length === 0) return null;
  const time = { ...plan.time, order } as TimePlan;
  const reader = new TimeReader(time, plan.originDays, plan.decimalMark);
  const read = linesOf(lines).filter((text) => {
    const { cells } = splitLine(text, dialect);
    return !Number.isNaN(reader.read(cells, 0));
  });
  return read.length > lines.length / 2 ? order : null;
};
