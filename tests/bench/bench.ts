/** One figure as printed: words stay as they are, numbers are rounded to three digits. */
export type Cell = string | number;

/** A bench's result. Figures that belong together stand in one row; nothing here is asserted. */
export interface Table {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
  /** What a reader must know to judge the figures. */
  readonly notes?: readonly string[];
}

/** What a file `tests/bench/<name>.bench.ts` exports as its default. */
export interface Bench {
  readonly name: string;
  run(): Promise<Table | readonly Table[]>;
}

const shown = (cell: Cell): string => {
  if (typeof cell === 'string') return cell;
  return Number.isInteger(cell) || Math.abs(cell) >= 1000
    ? String(Math.round(cell))
    : cell.toPrecision(3);
};

/** The table in Markdown with aligned columns, ready for tests/bench/README.md. */
export const printed = ({ title, columns, rows, notes = [] }: Table): string => {
  const cells = [columns, ...rows].map((row) => row.map(shown));
  const widths = columns.map((_, column) =>
    Math.max(...cells.map((row) => (row[column] ?? '').length)),
  );
  const line = (row: readonly string[]): string =>
    `| ${widths.map((width, column) => (row[column] ?? '').padEnd(width)).join(' | ')} |`;
  const [head = [], ...body] = cells;
  const rule = line(widths.map((width) => '-'.repeat(width)));
  return [`### ${title}`, '', line(head), rule, ...body.map(line), '', ...notes, ''].join('\n');
};

/** The middle one of some measured values (the mean of the middle two). */
export const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  return ((sorted[Math.floor(middle)] ?? NaN) + (sorted[Math.ceil(middle) - 1] ?? NaN)) / 2;
};

/**
 * Median times in milliseconds of several pieces of work that are to be compared. They take turns,
 * so that a slow minute of the machine falls on all of them alike.
 */
export const medianMsOf = async <Name extends string>(
  rounds: number,
  contenders: Readonly<Record<Name, () => unknown>>,
): Promise<Record<Name, number>> => {
  const entries = Object.entries<() => unknown>(contenders);
  const times = new Map(entries.map(([name]) => [name, [] as number[]]));
  for (let round = 0; round < rounds; round++) {
    for (const [name, work] of entries) {
      const start = performance.now();
      await work();
      times.get(name)?.push(performance.now() - start);
    }
  }
  return Object.fromEntries([...times].map(([name, taken]) => [name, median(taken)])) as Record<
    Name,
    number
  >;
};
