import type { DayOrder } from '../time/date-order.ts';

/** Where a row's time comes from, and in which form it stands there. */
export type TimePlan =
  /** Date and time of day in one cell. */
  | { readonly form: 'stamp'; readonly column: number; readonly order: DayOrder }
  /** Date in one column, time of day in another. */
  | {
      readonly form: 'date-and-clock';
      readonly column: number;
      readonly clockColumn: number;
      readonly order: DayOrder;
    }
  /** Year, month, day, hour, minute and second in columns of their own; -1 for one that lacks. */
  | { readonly form: 'parts'; readonly columns: readonly number[]; readonly order: 'year-first' }
  /** Time of day, or hours, minutes and seconds elapsed. */
  | { readonly form: 'clock'; readonly column: number }
  /** Hours, minutes and seconds in columns of their own; -1 for seconds that lack. */
  | { readonly form: 'clock-parts'; readonly columns: readonly number[] }
  /** A bare number: since an epoch, a spreadsheet's day, or elapsed. */
  | { readonly form: 'number'; readonly column: number }
  /** No time in the row: one interval after the row before. */
  | { readonly form: 'interval'; readonly seconds: number }
  /** No time in the row: date and clock stand in the head of each section of the file. */
  | { readonly form: 'section'; readonly column: number; readonly order: DayOrder };

/** The columns that a plan takes times from. */
export const timeColumnsOf = (plan: TimePlan): readonly number[] => {
  if (plan.form === 'interval' || plan.form === 'section') return [];
  if (plan.form === 'parts' || plan.form === 'clock-parts')
    return plan.columns.filter((column) => column >= 0);
  return plan.form === 'date-and-clock' ? [plan.column, plan.clockColumn] : [plan.column];
};
