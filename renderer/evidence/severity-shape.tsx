import type { Severity } from '../../core/model/finding.ts';

interface SeverityShapeProps {
  readonly severity: Severity;
  readonly letter: string;
}

const SIZE = 28;
const MIDDLE = SIZE / 2;
const DIAMOND = `M${MIDDLE} 1L${SIZE - 1} ${MIDDLE}L${MIDDLE} ${SIZE - 1}L1 ${MIDDLE}Z`;

/**
 * A finding's letter in its severity's shape: a filled diamond for act, an open one for watch, a
 * small circle for note. Colour only comes in addition.
 */
export const SeverityShape = ({ severity, letter }: SeverityShapeProps) => (
  <svg
    className={`severity-shape severity-${severity}`}
    viewBox={`0 0 ${SIZE} ${SIZE}`}
    aria-hidden="true"
    focusable="false"
  >
    {severity === 'note' ? <circle cx={MIDDLE} cy={MIDDLE} r={MIDDLE - 4} /> : <path d={DIAMOND} />}
    <text x={MIDDLE} y={MIDDLE} dy="0.35em" textAnchor="middle">
      {letter}
    </text>
  </svg>
);
