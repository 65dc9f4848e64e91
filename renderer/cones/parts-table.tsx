import { Button } from 'react-aria-components';
import type { HeatWork } from '../../core/model/document.ts';
import type { Span } from '../../core/model/scalars.ts';
import { prose } from '../../core/report/clean.ts';
import type { PartWords } from '../../core/wording/heat-work.ts';

interface PartsTableProps {
  readonly words: readonly PartWords[];
  readonly parts: HeatWork['parts'];
  readonly onShowStretch: ((span: Span) => void) | undefined;
}

/** Where the heat-work came from, part by part in order of time. */
export const PartsTable = ({ words, parts, onShowStretch }: PartsTableProps) => (
  <table className="sheet-table cones-parts">
    <caption className="unseen">Where the heat-work came from</caption>
    <thead>
      <tr>
        <th scope="col">part of the firing</th>
        <th scope="col" colSpan={2}>
          of the dose
        </th>
        <th scope="col">on the cone scale</th>
      </tr>
    </thead>
    <tbody>
      {words.map(({ index, name, share, added }) => {
        const { doseShare, fromSeconds, toSeconds } = parts[index]!;
        return (
          <tr key={index}>
            <th scope="row">
              {onShowStretch ? (
                <Button
                  className="button-link"
                  onPress={() => onShowStretch({ fromSeconds, toSeconds })}
                >
                  {prose(name)}
                </Button>
              ) : (
                prose(name)
              )}
            </th>
            <td className="cones-share">
              <svg aria-hidden="true" viewBox="0 0 100 8" preserveAspectRatio="none">
                <rect className="share-whole" width={100} height={8} />
                <rect className="share-part" width={100 * doseShare} height={8} />
              </svg>
            </td>
            <td className="number">{prose(share)}</td>
            <td>{prose(added)}</td>
          </tr>
        );
      })}
    </tbody>
  </table>
);
