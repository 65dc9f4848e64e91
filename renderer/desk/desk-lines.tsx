import { useMemo, useState } from 'react';
import type { ReadingShown } from '../../core/log/show/shown.ts';
import { clean } from '../../core/report/clean.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { count, counted } from '../../core/wording/speech.ts';
import { LineTable } from '../controls/line-table.tsx';
import { Pick } from '../controls/pick.tsx';
import { fateWords, listedLines, type ListedLine } from './line-words.ts';

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
      <span role="cell" className="number line-number">
        {line}
      </span>
      <span role="cell" className="line-raw">
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
  const all = useMemo(() => listedLines(reading.lines, reading.lineCount), [reading]);
  const rejected = useMemo(() => all.filter(isRejected), [all]);
  const shown = only === null || rejected.length === 0 ? all : rejected;
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
      <LineTable
        label={`The file, line by line: ${counted(reading.lineCount, 'line')}`}
        heads={['line', 'as it stands in the file', 'as it is read']}
        rows={shown}
        cellsOf={(one) => <Cells one={one} unit={unit} />}
        className="desk-lines"
      />
    </section>
  );
};
