import { classOf, isNumberClass, isTimeClass, type CellClass } from '../text/cell-class.ts';
import { parseNumber, type DecimalMark } from '../text/number.ts';
import { parseQuantity } from '../text/quantity.ts';

/** What a sample of its cells shows of a column. */
export interface ColumnProfile {
  readonly column: number;
  /** The commonest class among cells that are neither empty nor a mark. */
  readonly kind: CellClass;
  /** Share of the cells that are neither empty nor a mark which are of that class. */
  readonly agreement: number;
  /** Share of the rows in which the cell is not empty. */
  readonly filled: number;
  /** The numbers, NaN where the cell is none. */
  readonly values: Float64Array;
  /** Distinct cells, counted up to {@link DISTINCT_COUNTED}. */
  readonly distinct: number;
  readonly numbers: NumberProfile | null;
}

export interface NumberProfile {
  readonly count: number;
  readonly min: number;
  readonly max: number;
  readonly median: number;
  readonly isConstant: boolean;
  readonly isInteger: boolean;
  /** Share of the steps that do not fall. */
  readonly rising: number;
  /** Whether every step is exactly one. */
  readonly countsUp: boolean;
}

export const DISTINCT_COUNTED = 1000;

const valueOf = (cell: string, kind: CellClass, mark: DecimalMark): number => {
  if (kind === 'number') return parseNumber(cell, mark);
  return kind === 'quantity' ? (parseQuantity(cell, mark)?.value ?? Number.NaN) : Number.NaN;
};

/** The profile of numbers in file order; NaN is passed over. Null for fewer than one. */
export const profileNumbers = (values: Float64Array): NumberProfile | null => {
  const present = values.filter((value) => !Number.isNaN(value));
  if (present.length === 0) return null;
  let rises = 0;
  let ones = 0;
  for (let i = 1; i < present.length; i += 1) {
    if (present[i]! >= present[i - 1]!) rises += 1;
    if (present[i]! === present[i - 1]! + 1) ones += 1;
  }
  const steps = Math.max(1, present.length - 1);
  const sorted = present.slice().sort();
  return {
    count: present.length,
    min: sorted[0]!,
    max: sorted[sorted.length - 1]!,
    median: sorted[sorted.length >> 1]!,
    isConstant: sorted[0] === sorted[sorted.length - 1],
    isInteger: present.every(Number.isInteger),
    rising: rises / steps,
    countsUp: present.length > 1 && ones / steps > 0.95,
  };
};

const dominant = (counts: ReadonlyMap<CellClass, number>): [CellClass, number] => {
  let best: [CellClass, number] = ['empty', 0];
  let total = 0;
  for (const [kind, count] of counts) {
    if (kind === 'empty' || kind === 'mark') continue;
    total += count;
    // Hours and minutes may be written in either way in one column: `3h`, `3:30`.
    const alike = kind === 'duration' ? (counts.get('clock') ?? 0) : 0;
    if (count + alike > best[1]) best = [kind, count + alike];
  }
  return [best[0], total === 0 ? 0 : best[1] / total];
};

/** Profiles one column of sampled rows. Rows too short to reach it count as empty there. */
export const profileColumn = (
  rows: readonly (readonly string[])[],
  column: number,
  mark: DecimalMark,
): ColumnProfile => {
  const counts = new Map<CellClass, number>();
  const values = new Float64Array(rows.length);
  const seen = new Set<string>();
  rows.forEach((row, index) => {
    const cell = row[column] ?? '';
    const kind = classOf(cell, mark);
    counts.set(kind, (counts.get(kind) ?? 0) + 1);
    values[index] = valueOf(cell, kind, mark);
    if (seen.size < DISTINCT_COUNTED) seen.add(cell);
  });
  const [kind, agreement] = dominant(counts);
  return {
    column,
    kind,
    agreement,
    filled: 1 - (counts.get('empty') ?? 0) / Math.max(1, rows.length),
    values,
    distinct: seen.size,
    numbers: isNumberClass(kind) ? profileNumbers(values) : null,
  };
};

/** Profiles every column of the sampled rows. */
export const profileColumns = (
  rows: readonly (readonly string[])[],
  width: number,
  mark: DecimalMark,
): readonly ColumnProfile[] =>
  Array.from({ length: width }, (_, column) => profileColumn(rows, column, mark));

/** Whether nearly all cells of a column are of the class that it is taken for (chosen: 0.8). */
export const agrees = (profile: ColumnProfile): boolean => profile.agreement >= 0.8;

/** Whether a column holds times by their form. */
export const holdsTimes = (profile: ColumnProfile): boolean =>
  isTimeClass(profile.kind) && agrees(profile);
