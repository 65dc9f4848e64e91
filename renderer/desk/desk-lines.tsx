import { useVirtualizer } from '@tanstack/react-virtual';
import { useMemo, useRef, useState } from 'react';
import type { ReadingShown } from '../../core/log/show/shown.ts';
import { clean } from '../../core/report/clean.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { count, counted } from '../../core/wording/speech.ts';
import { Pick } from '../controls/pick.tsx';
import { fateWords, listedLines, type ListedLine } from './line-words.ts';

/** A first guess at a line's height in pixels; each is measured once it is drawn. */
const LINE_HEIGHT = 26;

const isRejected = (one: ListedLine): boolean =>
  one.kind === 'line' && one.shown.fate.kind === 'rejected';

const Cells = ({ one, unit }: { readonly one: ListedLine; readonly unit: TemperatureUnit }) => {
  if (one.kind === 'gap') {
    return (
      <span role="cell" aria-colspan={3} className="desk-gap">
        {`… ${counted(one.lines, 'line')} not shown here`}
      </span>
    );
  }
  const { line, text, fate } = one.shown;
  return (
    <>
      <span role="cell" className="number desk-line-number">
        {line}
      </span>
      <span role="cell" className="desk-raw">
        {clean(text)}
      </span>
      <span role="cell" className={`desk-fate desk-fate-${fate.kind}`}>
        {fate.kind === 'rejected' ? <span aria-hidden="true">▲ </span> : null}
        {fateWords(fate, unit)}
      </span>
    </>
  );
};

interface DeskLinesProps {
  readonly reading: ReadingShown;
  readonly unit: TemperatureUnit;
}

/** The file's own lines with what became of each beside them; only those in sight are drawn. */
export const DeskLines = ({ reading, unit }: DeskLinesProps) => {
  const [only, setOnly] = useState<'rejected' | null>(null);
  const frame = useRef<HTMLDivElement>(null);
  const all = useMemo(() => listedLines(reading.lines, reading.lineCount), [reading]);
  const rejected = useMemo(() => all.filter(isRejected), [all]);
  const shown = only === null || rejected.length === 0 ? all : rejected;
  const virtual = useVirtualizer({
    count: shown.length,
    getScrollElement: () => frame.current,
    estimateSize: () => LINE_HEIGHT,
    overscan: 8,
  });
  return (
    <section aria-labelledby="desk-lines-title" className="desk-lines-part">
      <h3 id="desk-lines-title">The file, line by line</h3>
      {rejected.length === 0 ? null : (
        <Pick
          label="Show"
          isBeside
          value={only}
          none="all lines"
          choices={[{ value: 'rejected', label: `rejected rows (${count(rejected.length)})` }]}
          onPick={setOnly}
        />
      )}
      <div
        ref={frame}
        className="desk-lines"
        role="table"
        tabIndex={0}
        aria-label={`The file, line by line: ${counted(reading.lineCount, 'line')}`}
        aria-rowcount={shown.length + 1}
      >
        <div role="rowgroup" className="desk-lines-head">
          <div role="row" aria-rowindex={1} className="desk-line">
            <span role="columnheader" className="number">
              line
            </span>
            <span role="columnheader">as it stands in the file</span>
            <span role="columnheader">as it is read</span>
          </div>
        </div>
        <div role="rowgroup" className="desk-lines-body" style={{ height: virtual.getTotalSize() }}>
          {virtual.getVirtualItems().map(({ index, start, key }) => (
            <div
              key={key}
              ref={virtual.measureElement}
              data-index={index}
              role="row"
              aria-rowindex={index + 2}
              className="desk-line desk-line-placed"
              style={{ transform: `translateY(${start}px)` }}
            >
              <Cells one={shown[index]!} unit={unit} />
            </div>
          ))}
        </div>
      </div>
    </section>
  );
};
