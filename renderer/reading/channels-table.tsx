import type { Channel } from '../../core/model/source.ts';
import { clean } from '../../core/report/clean.ts';
import { unitName } from '../../core/wording/reading-ids.ts';

const ROLES: Readonly<Record<Channel['role'], string>> = {
  temperature: 'a temperature',
  setpoint: 'the setpoint',
  output: 'the controller’s output',
  'cold-junction': 'the cold junction',
  other: 'something else',
};

/** The columns that were met, what each was taken for and whether it was used. */
export const ChannelsTable = ({ channels }: { readonly channels: readonly Channel[] }) => (
  <table className="sheet-table">
    <caption className="table-caption">Channels in the file</caption>
    <thead>
      <tr>
        <th scope="col">channel</th>
        <th scope="col">taken for</th>
        <th scope="col">in</th>
        <th scope="col">used</th>
      </tr>
    </thead>
    <tbody>
      {channels.map(({ name, column, unit, role, chosen }) => (
        <tr key={column}>
          <th scope="row">{name === '' ? `column ${column + 1}` : clean(name)}</th>
          <td>{ROLES[role]}</td>
          <td>{unit === null ? '–' : unitName(unit)}</td>
          <td>{chosen ? 'yes' : 'no'}</td>
        </tr>
      ))}
    </tbody>
  </table>
);
