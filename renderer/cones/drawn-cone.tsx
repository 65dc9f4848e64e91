import { conePath, type ConeForm } from '../../core/report/chart/cone-shape.ts';

/** A cone on its plaque, drawn from its foot at the origin. */
export const FORM: ConeForm = { x: 0, y: 0, length: 82, foot: 20, tip: 4 };

/** How much room a cone takes to the left and right of its foot, above it, and down to the shelf. */
export const REACH = { left: 18, right: 66, up: 90, down: 12 } as const;

interface DrawnConeProps {
  readonly bendDegrees: number;
  /** Bends that were seen, drawn over it as outlines. */
  readonly seenDegrees?: readonly number[];
}

/** A bent cone on its plaque, standing on y = `REACH.down`. */
export const DrawnCone = ({ bendDegrees, seenDegrees = [] }: DrawnConeProps) => (
  <>
    <rect className="cone-plaque" x={-16} y={-1} width={32} height={REACH.down + 1} />
    <path className="cone-body" d={conePath(FORM, bendDegrees)} />
    {seenDegrees.map((seen, index) => (
      <path key={index} className="cone-seen" d={conePath(FORM, seen)} />
    ))}
  </>
);
