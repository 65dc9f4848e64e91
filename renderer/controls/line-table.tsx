import './line-table.css';
import { useVirtualizer } from '@tanstack/react-virtual';
import { useRef, type ReactNode } from 'react';

interface LineTableProps<Row> {
  readonly label: string;
  /** What the columns hold; the first is a number. */
  readonly heads: readonly [string, string, string];
  readonly rows: readonly Row[];
  /** The three cells of a row, each with the role `cell`. */
  readonly cellsOf: (row: Row) => ReactNode;
  /** Sets the widths of the columns and the height of the whole. */
  readonly className: string;
}

/** A first guess at a row's height in pixels; each is measured once it is drawn. */
const ROW_HEIGHT = 26;

/** Lines of a file beside what is said of them; only those in sight are drawn. */
export const LineTable = <Row,>({
  label,
  heads,
  rows,
  cellsOf,
  className,
}: LineTableProps<Row>) => {
  const frame = useRef<HTMLDivElement>(null);
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => frame.current,
    estimateSize: () => ROW_HEIGHT,
    overscan: 8,
  });
  return (
    <div
      ref={frame}
      className={`line-table ${className}`}
      role="table"
      tabIndex={0}
      aria-label={label}
      aria-rowcount={rows.length + 1}
    >
      <div role="rowgroup" className="line-table-head">
        <div role="row" aria-rowindex={1} className="line-row">
          {heads.map((head, index) => (
            <span key={head} role="columnheader" className={index === 0 ? 'number' : ''}>
              {head}
            </span>
          ))}
        </div>
      </div>
      <div role="rowgroup" className="line-table-body" style={{ height: virtual.getTotalSize() }}>
        {virtual.getVirtualItems().map(({ index, start, key }) => (
          <div
            key={key}
            ref={virtual.measureElement}
            data-index={index}
            role="row"
            aria-rowindex={index + 2}
            className="line-row line-placed"
            style={{ transform: `translateY(${start}px)` }}
          >
            {cellsOf(rows[index]!)}
          </div>
        ))}
      </div>
    </div>
  );
};
