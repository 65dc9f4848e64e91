import { prose } from '../../core/report/clean.ts';
import type { DecisionWords } from '../../core/wording/reading.ts';

/** Every decision of the reader, why it was taken and how sure it is. */
export const DecisionsTable = ({ decisions }: { readonly decisions: readonly DecisionWords[] }) => (
  <table className="sheet-table">
    <caption className="table-caption">What was decided, and why</caption>
    <thead>
      <tr>
        <th scope="col">decided</th>
        <th scope="col">certainty</th>
      </tr>
    </thead>
    <tbody>
      {decisions.map(({ said, certainty, isGuess }, index) => (
        <tr key={index}>
          <td>{prose(said)}</td>
          <td className="unbroken">
            {isGuess ? (
              <strong>
                <span aria-hidden="true">◇ </span>
                {certainty}
              </strong>
            ) : (
              certainty
            )}
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);
