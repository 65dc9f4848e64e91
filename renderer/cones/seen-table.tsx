import type { SeenCone } from './pack-cones.ts';

const degrees = (value: number): string => `${Math.round(value)}°`;

/** The cones that were seen, beside what the log predicts of them. */
export const SeenTable = ({ cones }: { readonly cones: readonly SeenCone[] }) => (
  <table className="sheet-table">
    <caption className="unseen">Witness cones, seen and predicted</caption>
    <thead>
      <tr>
        <th scope="col">cone seen</th>
        <th scope="col">where</th>
        <th scope="col" className="number">
          bent, seen
        </th>
        <th scope="col" className="number">
          bent, by the log and all cones seen
        </th>
      </tr>
    </thead>
    <tbody>
      {cones.map(({ name, place, seenDegrees, predictedDegrees }, index) => (
        <tr key={index}>
          <th scope="row">{name}</th>
          <td>{place === '' ? '–' : place}</td>
          <td className="number">{degrees(seenDegrees)}</td>
          <td className="number">
            {predictedDegrees === null ? 'not reckoned' : degrees(predictedDegrees)}
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);
