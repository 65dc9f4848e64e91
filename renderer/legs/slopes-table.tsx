import { prose } from '../../core/report/clean.ts';

/** One stretch and how the kiln went through it, each cell said. */
export interface SlopeRow {
  readonly name: string;
  readonly cells: readonly string[];
}

interface SlopesTableProps {
  readonly caption: string;
  readonly heads: readonly string[];
  readonly rows: readonly SlopeRow[];
}

/** Stretches with their slopes. */
export const SlopesTable = ({ caption, heads, rows }: SlopesTableProps) => (
  <div className="table-frame" role="group" aria-label={caption} tabIndex={0}>
    <table className="sheet-table slopes-table">
      <caption className="table-caption">{caption}</caption>
      <thead>
        <tr>
          {heads.map((head, index) => (
            <th key={head} scope="col" className={index > 1 ? 'number' : ''}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, cells }, row) => (
          <tr key={row}>
            <th scope="row">{prose(name)}</th>
            {cells.map((text, index) => (
              <td key={heads[index + 1]} className={index > 0 ? 'number' : ''}>
                {prose(text)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);
