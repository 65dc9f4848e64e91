import { useTable } from '@tanstack/react-table';
import { Button } from 'react-aria-components';
import type { LegWords } from '../../core/wording/legs.ts';
import { prose } from '../../core/report/clean.ts';
import { legFeatures, PLANNED_COLUMNS, TRACE_COLUMNS } from './leg-columns.ts';

interface LegsTableProps {
  readonly caption: string;
  readonly rows: readonly LegWords[];
  /** Shows a leg on the curve, by its place in the rows; null where it has no place there. */
  readonly show: (index: number) => (() => void) | null;
}

/** Where a new group of columns begins, a line stands. */
const GROUP_STARTS = new Set(['planned-rate', 'actual-rate', 'planned', 'actual', 'verdict']);
const NUMBERS = /^(number|(planned|actual)-)/;

const classOf = (column: string): string =>
  [NUMBERS.test(column) ? 'number' : '', GROUP_STARTS.has(column) ? 'group-start' : '']
    .join(' ')
    .trim();

/** The legs as a table; with a schedule, planned beside driven. */
export const LegsTable = ({ caption, rows, show }: LegsTableProps) => {
  const hasPlan = rows.some(({ planned }) => planned !== null);
  const table = useTable({
    features: legFeatures,
    columns: hasPlan ? PLANNED_COLUMNS : TRACE_COLUMNS,
    data: rows,
  });
  return (
    <div className="table-frame" role="group" aria-label={caption} tabIndex={0}>
      <table className="sheet-table legs-table">
        <caption className="unseen">{caption}</caption>
        <thead>
          {table.getHeaderGroups().map((group) => (
            <tr key={group.id}>
              {group.headers.map((header) =>
                header.isPlaceholder ? (
                  <td key={header.id} colSpan={header.colSpan} />
                ) : (
                  <th
                    key={header.id}
                    scope={header.subHeaders.length > 0 ? 'colgroup' : 'col'}
                    colSpan={header.colSpan}
                    className={classOf(header.column.id)}
                  >
                    <table.FlexRender header={header} />
                  </th>
                ),
              )}
            </tr>
          ))}
        </thead>
        <tbody>
          {table.getRowModel().rows.map((row) => {
            const onShow = show(row.index);
            return (
              <tr key={row.id} className={row.original.departs ? 'departs' : ''}>
                {row.getAllCells().map((cell) => {
                  const { id } = cell.column;
                  const text = prose(cell.getValue() as string);
                  if (id === 'name')
                    return (
                      <th key={cell.id} scope="row">
                        {onShow ? (
                          <Button className="button-link" onPress={onShow}>
                            {text}
                          </Button>
                        ) : (
                          text
                        )}
                      </th>
                    );
                  return (
                    <td key={cell.id} className={classOf(id)}>
                      {id === 'verdict' && row.original.departs && text !== '–' ? (
                        <strong>{text}</strong>
                      ) : (
                        text
                      )}
                    </td>
                  );
                })}
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
};
