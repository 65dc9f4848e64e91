import { prose } from '../../core/report/clean.ts';
import type { HistoryWords } from '../../core/wording/history.ts';
import { sentence } from '../../core/wording/topic.ts';
import type { Standout } from './standout.ts';

interface FiringsTableProps {
  readonly rows: HistoryWords['rows'];
  /** What stands out in each firing, in the order of the rows. */
  readonly standouts: readonly Standout[];
  readonly marked: readonly number[];
  readonly onOpen: (index: number) => void;
  readonly onLeaveOut: (index: number) => void;
}

/** The firings of a history, each to be opened. */
export const FiringsTable = (props: FiringsTableProps) => {
  const { rows, standouts, marked, onOpen, onLeaveOut } = props;
  return (
    <div className="table-frame" role="group" aria-label="The firings" tabIndex={0}>
      <table className="sheet-table firings-table">
        <caption className="unseen">The firings, each to be opened</caption>
        <thead>
          <tr>
            <th scope="col" className="number">
              #
            </th>
            <th scope="col">Log</th>
            <th scope="col">Began</th>
            <th scope="col" className="number">
              Climb
            </th>
            <th scope="col" className="number">
              Peak
            </th>
            <th scope="col">Cone reached</th>
            <th scope="col" className="number">
              Power (80 % range)
            </th>
            <th scope="col">What stands out</th>
            <td />
          </tr>
        </thead>
        <tbody>
          {rows.map(({ fileName, began, climb, peak, cone, power, note }, index) => {
            const { severityWord, text } = standouts[index] ?? { severityWord: null, text: '' };
            const name = prose(fileName);
            return (
              <tr key={index} className={marked.includes(index) ? 'history-marked' : ''}>
                <td className="number">{index + 1}</td>
                <th scope="row">
                  <button type="button" className="button-link" onClick={() => onOpen(index)}>
                    {name}
                  </button>
                </th>
                <td className="unbroken">{began}</td>
                <td className="number">{climb}</td>
                <td className="number">{peak}</td>
                <td>{cone}</td>
                <td className="number">{power}</td>
                <td>
                  {severityWord === null ? null : <strong>{severityWord}: </strong>}
                  {prose(text)}
                  {note === '' ? null : <span className="muted"> {prose(sentence(note))}.</span>}
                </td>
                <td>
                  <button
                    type="button"
                    className="button-plain"
                    aria-label={`Leave ${name} out`}
                    onClick={() => onLeaveOut(index)}
                  >
                    leave out
                  </button>
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
};
