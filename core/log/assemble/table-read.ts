import type { Account } from '../account.ts';
import type { ColumnPlan } from '../columns/column-plan.ts';
import type { RawColumns } from '../columns/raw-columns.ts';
import type { TableSample } from '../columns/sample.ts';
import type { CoupleType, ReadingDecisions } from '../../model/options.ts';
import type { Source } from '../../model/source.ts';

/** The text of the lines with these numbers (1-based, rising), in the same order. */
export type LinesOf = (lines: readonly number[]) => readonly string[];

/** A table that was read, whatever its shape, and what is needed to account for it. */
export interface TableRead {
  readonly columns: RawColumns;
  readonly plan: ColumnPlan;
  readonly sample: TableSample;
  /** Channels of a long table by name; empty otherwise. */
  readonly series: ReadonlyMap<string, number>;
  readonly marks: ReadonlyMap<string, number>;
  /** The 1-based line for a row's number in {@link RawColumns.line}. */
  readonly lineOf: (number: number) => number;
  /** The texts for such numbers. */
  readonly linesOf: LinesOf;
  readonly decisions: ReadingDecisions;
  /** The kiln's couple as the person knows it, for voltages of which the file names none. */
  readonly knownCouple?: CoupleType | undefined;
  readonly account: Account;
  readonly source: Pick<
    Source,
    'fileName' | 'byteLength' | 'format' | 'encoding' | 'delimiter' | 'decimalMark' | 'headerLine'
  >;
}
