import { describe, expect, it } from 'vitest';
import { PLANNED_COLUMNS, TRACE_COLUMNS } from '../../../renderer/legs/leg-columns.ts';
import { wording } from '../../../core/wording/wording.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const { rows } = wording(exampleDocument('troubled-firing'), 'C').legs;

const leaves = (columns: typeof PLANNED_COLUMNS): typeof PLANNED_COLUMNS =>
  columns.flatMap((column) => ('columns' in column ? [...(column.columns ?? [])] : [column]));

const cellsOf = (columns: typeof PLANNED_COLUMNS, row: number) =>
  leaves(columns).map((column) =>
    'accessorFn' in column ? column.accessorFn(rows[row]!, row) : null,
  );

describe('the columns of the legs', () => {
  it('set planned beside driven, then the verdict', () => {
    expect(leaves(PLANNED_COLUMNS).map(({ id }) => id)).toEqual([
      ...['number', 'name'],
      ...['planned-rate', 'planned-to', 'planned-lasted', 'planned-ended'],
      ...['actual-rate', 'actual-to', 'actual-lasted', 'actual-ended'],
      'verdict',
    ]);
    const { planned, actual, verdict, name } = rows[3]!;
    expect(cellsOf(PLANNED_COLUMNS, 3)).toEqual([
      ...['4', name],
      ...[planned!.rate, planned!.to, planned!.lasted, planned!.ended],
      ...[actual!.rate, actual!.to, actual!.lasted, actual!.ended],
      verdict,
    ]);
  });

  it('leave a dash where nothing was planned', () => {
    const free = rows.findIndex(({ planned }) => planned === null);
    expect(cellsOf(PLANNED_COLUMNS, free).slice(2, 6)).toEqual(['–', '–', '–', '–']);
  });

  it('are fewer where there is no plan', () => {
    expect(leaves(TRACE_COLUMNS)).toHaveLength(6);
  });
});
