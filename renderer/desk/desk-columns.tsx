import type { ShownColumn, ShownRole } from '../../core/log/show/shown.ts';
import type { Options } from '../../core/model/options.ts';
import type { Decision } from '../../core/model/source.ts';
import { clean } from '../../core/report/clean.ts';
import { unitName } from '../../core/wording/reading-ids.ts';
import { Choice } from '../controls/choice.tsx';
import { toldReading } from '../reading/reading-choices.ts';
import { ownChoice } from './desk-choices.ts';
import { ROLE_CHOICES, roleNow, roleTold } from './desk-roles.ts';

interface DeskColumnsProps {
  readonly columns: readonly ShownColumn[];
  readonly decisions: readonly Decision[];
  readonly options: Options;
  readonly onOptions: (next: Options) => void;
}

/** The reader's decisions on the roles that no log can do without. */
const DECIDED_AS: Partial<Record<ShownRole, string>> = {
  temperature: 'temperature-column',
  time: 'time-column',
};

/** Why a column was taken for what it is, where that is a guess. */
const guessAt = ({ role }: ShownColumn, decisions: readonly Decision[]): string | undefined => {
  const what = role === null ? undefined : DECIDED_AS[role];
  const own = what === undefined ? null : ownChoice(decisions, what);
  return own?.isGuess === true ? own.why : undefined;
};

/** The columns as they were split off, with their first cells, and what each is taken for. */
export const DeskColumns = ({ columns, decisions, options, onOptions }: DeskColumnsProps) => {
  const isDecided = columns.some(({ role }) => role !== null);
  return (
    <div className="table-frame" role="group" aria-label="Columns" tabIndex={0}>
      <table className="sheet-table desk-columns">
        <caption className="table-caption">Columns</caption>
        <thead>
          <tr>
            <th scope="col">column</th>
            <th scope="col">its first cells</th>
            <th scope="col">taken for</th>
          </tr>
        </thead>
        <tbody>
          {columns.map((column, index) => (
            <tr key={index}>
              <th scope="row">
                {clean(column.name)}
                {column.unit === null ? null : (
                  <span className="quiet desk-column-unit">{unitName(column.unit)}</span>
                )}
              </th>
              <td className="desk-cells">
                {column.cells.map((cell, at) => (
                  <span key={at} className="desk-cell">
                    {clean(cell)}
                  </span>
                ))}
              </td>
              <td>
                <Choice
                  label={`${clean(column.name)} is taken for`}
                  isLabelHidden
                  value={isDecided ? roleNow(columns, column) : null}
                  {...(isDecided ? {} : { none: 'not decided yet' })}
                  hint={guessAt(column, decisions)}
                  choices={ROLE_CHOICES}
                  onChoice={(role) => {
                    if (role === null) return;
                    onOptions(toldReading(options, roleTold(columns, column, role)));
                  }}
                />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};
