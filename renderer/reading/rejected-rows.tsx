import { useVirtualizer } from '@tanstack/react-virtual';
import { useRef } from 'react';
import { clean } from '../../core/report/clean.ts';
import type { RejectedWords } from '../../core/wording/reading.ts';
import { counted } from '../../core/wording/speech.ts';

interface RejectedRowsProps {
  readonly rows: readonly RejectedWords[];
  /** How many more were counted but are not listed. */
  readonly unlisted: number;
}

/** A first guess at a row's height in pixels; each row is measured once it is drawn. */
const ROW_HEIGHT = 28;

/** Every rejected row that is listed; only those in sight are drawn. */
export const RejectedRows = ({ rows, unlisted }: RejectedRowsProps) => {
  const frame = useRef<HTMLDivElement>(null);
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => frame.current,
    estimateSize: () => ROW_HEIGHT,
    overscan: 6,
  });
  return (
    <>
      <h3>Rejected rows</h3>
      <div
        ref={frame}
        className="rejected"
        role="table"
        tabIndex={0}
        aria-label={`Rejected rows: ${counted(rows.length, 'row')}`}
        aria-rowcount={rows.length + 1}
      >
        <div role="rowgroup" className="rejected-head">
          <div role="row" aria-rowindex={1} className="rejected-row">
            <span role="columnheader" className="number">
              line
            </span>
            <span role="columnheader">why</span>
            <span role="columnheader">text</span>
          </div>
        </div>
        <div role="rowgroup" className="rejected-body" style={{ height: virtual.getTotalSize() }}>
          {virtual.getVirtualItems().map(({ index, start, key }) => {
            const { line, reason, text } = rows[index]!;
            return (
              <div
                key={key}
                ref={virtual.measureElement}
                data-index={index}
                role="row"
                aria-rowindex={index + 2}
                className="rejected-row rejected-placed"
                style={{ transform: `translateY(${start}px)` }}
              >
                <span role="cell" className="number">
                  {line}
                </span>
                <span role="cell">{reason}</span>
                <span role="cell" className="rejected-text">
                  {clean(text)}
                </span>
              </div>
            );
          })}
        </div>
      </div>
      {unlisted > 0 ? (
        <p className="quiet">{`${counted(unlisted, 'more row')} of this kind counted, but not listed.`}</p>
      ) : null}
    </>
  );
};
