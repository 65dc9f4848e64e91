import type { GivenMarks } from '../text/given-marks.ts';
import type { DecimalMark } from '../text/number.ts';
import type { Roles } from './find-roles.ts';
import type { TimePlan } from './time-plan.ts';

/** How the rows of a table are turned into numbers. */
export interface ColumnPlan {
  readonly time: TimePlan;
  readonly roles: Roles;
  /** The columns whose numbers are kept: the main temperature first. */
  readonly wanted: readonly number[];
  readonly decimalMark: DecimalMark;
  /** Cells in a whole row. */
  readonly width: number;
  /** A row with fewer cells has lost one, and nothing says which. */
  readonly requiredCells: number;
  /** The column that says to which channel a row belongs, in a long table. */
  readonly seriesColumn: number | null;
  /** The column that holds the unit of the row's temperature. */
  readonly unitColumn: number | null;
  /** The column that says whether the row's temperature is sound. */
  readonly qualityColumn: number | null;
  /** What the person says stands for no reading. */
  readonly noReading: GivenMarks;
  /** Columns of words that are filled in nearly every row; others hold remarks. */
  readonly wordColumns: readonly number[];
  /** The day, counted from 1970-01-01, from which times are counted. */
  readonly originDays: number;
}
