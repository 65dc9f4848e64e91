import { LineTable } from '../controls/line-table.tsx';
import { clean } from '../../core/report/clean.ts';
import type { RejectedWords } from '../../core/wording/reading.ts';
import { counted } from '../../core/wording/speech.ts';

interface RejectedRowsProps {
  readonly rows: readonly RejectedWords[];
  /** How many more were counted but are not listed. */
  readonly unlisted: number;
}

const Cells = ({ line, reason, text }: RejectedWords) => (
  <>
    <span role="cell" className="number line-number">
      {line}
    </span>
    <span role="cell">{reason}</span>
    <span role="cell" className="line-raw">
      {clean(text)}
    </span>
  </>
);

/** Every rejected row that is listed. */
export const RejectedRows = ({ rows, unlisted }: RejectedRowsProps) => (
  <>
    <h3>Rejected rows</h3>
    <LineTable
      label={`Rejected rows: ${counted(rows.length, 'row')}`}
      heads={['line', 'why', 'text']}
      rows={rows}
      cellsOf={Cells}
      className="rejected"
    />
    {unlisted > 0 ? (
      <p className="quiet">{`${counted(unlisted, 'more row')} of this kind counted, but not listed.`}</p>
    ) : null}
  </>
);
