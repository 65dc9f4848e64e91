import { useId } from 'react';
import { DrawnCone, REACH } from './drawn-cone.tsx';
import type { PackCone } from './pack-cones.ts';

const SPACE = 132;
const VIEW_HEIGHT = 166;
const FOOT_Y = 100;

const description = (cones: readonly PackCone[]): string =>
  cones
    .map(({ name, stands, seen }) => {
      const also = seen.map(
        ({ place, bendDegrees }) =>
          `seen bent ${Math.round(bendDegrees)}°${place === '' ? '' : ` at ${place}`}`,
      );
      return [`${name} predicted ${stands}`, ...also].join(', ');
    })
    .join('; ');

/** The pack as the heat-work predicts it, with the cones that were seen drawn over it. */
export const ConePack = ({ cones }: { readonly cones: readonly PackCone[] }) => {
  const id = useId();
  const width = SPACE * cones.length;
  const hasSeen = cones.some(({ seen }) => seen.length > 0);
  return (
    <figure className="cones-pack">
      <svg viewBox={`0 0 ${width} ${VIEW_HEIGHT}`} role="img" aria-labelledby={id}>
        <title id={id}>{`The cone pack: ${description(cones)}.`}</title>
        <line
          className="cone-shelf"
          x1={4}
          x2={width - 4}
          y1={FOOT_Y + REACH.down}
          y2={FOOT_Y + REACH.down}
        />
        {cones.map(({ cone, name, roleWord, stands, predictedDegrees, seen }, index) => {
          const middle = SPACE * (index + 0.5);
          return (
            <g key={cone}>
              <g transform={`translate(${middle - 24} ${FOOT_Y})`}>
                <DrawnCone
                  bendDegrees={predictedDegrees}
                  seenDegrees={seen.map(({ bendDegrees }) => bendDegrees)}
                />
              </g>
              <text className="cone-name" x={middle} y={FOOT_Y + 32} textAnchor="middle">
                {name}
              </text>
              <text className="axis" x={middle} y={FOOT_Y + 47} textAnchor="middle">
                {stands}
              </text>
              <text className="axis" x={middle} y={FOOT_Y + 61} textAnchor="middle">
                {roleWord}
              </text>
            </g>
          );
        })}
      </svg>
      <figcaption>
        {hasSeen
          ? 'Solid: bent as the log predicts once the cones seen are counted in. Dashed: as they were seen.'
          : 'Bent as the log predicts.'}
      </figcaption>
    </figure>
  );
};
