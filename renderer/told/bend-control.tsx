import { useRef, useState, type KeyboardEvent, type PointerEvent } from 'react';
import { coneTip } from '../../core/report/chart/cone-shape.ts';
import { DrawnCone, FORM, REACH } from '../cones/drawn-cone.tsx';
import { useSettled } from '../controls/use-settled.ts';
import { bendByKey, bendTowards, bendWords, clampedBend, MOST_BENT_DEGREES } from './bend.ts';

interface BendControlProps {
  readonly label: string;
  readonly bendDegrees: number;
  readonly onBend: (degrees: number) => void;
}

const VIEW = { x: -24, y: -94, width: 104, height: 110 } as const;

/** A drawn cone whose tip is pulled, or moved by keys, to where the seen cone's tip was. */
export const BendControl = ({ label, bendDegrees, onBend }: BendControlProps) => {
  const svg = useRef<SVGSVGElement>(null);
  /** Where the tip is while it is moved; told when it is let go or the keys rest. */
  const [moved, setMoved] = useState<number | null>(null);
  const [isPulled, setPulled] = useState(false);
  const settled = useSettled<number>((next) => {
    onBend(next);
    setMoved(null);
  });
  const bend = moved ?? clampedBend(bendDegrees);
  const [tipX, tipY] = coneTip(FORM, bend);

  const bendAt = ({ clientX, clientY }: PointerEvent): number => {
    const box = svg.current!.getBoundingClientRect();
    const scale = VIEW.width / box.width;
    const right = VIEW.x + (clientX - box.left) * scale;
    const down = VIEW.y + (clientY - box.top) * scale;
    return bendTowards(right, -down);
  };
  const pull = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    setPulled(true);
    setMoved(bendAt(event));
  };
  const move = (event: PointerEvent): void => {
    if (isPulled) setMoved(bendAt(event));
  };
  const letGo = (event: PointerEvent): void => {
    if (!isPulled) return;
    setPulled(false);
    settled.soon(bendAt(event));
    settled.now();
  };
  const giveUp = (): void => {
    setPulled(false);
    setMoved(null);
  };
  const key = (event: KeyboardEvent): void => {
    const next = bendByKey(event.key, bend);
    if (next === null) return;
    event.preventDefault();
    setMoved(next);
    settled.soon(next);
  };
  return (
    <div
      className="bend"
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-valuemin={0}
      aria-valuemax={MOST_BENT_DEGREES}
      aria-valuenow={bend}
      aria-valuetext={bendWords(bend)}
      onKeyDown={key}
      onPointerDown={pull}
      onPointerMove={move}
      onPointerUp={letGo}
      onPointerCancel={giveUp}
      onBlur={settled.now}
    >
      <svg
        ref={svg}
        aria-hidden="true"
        viewBox={`${VIEW.x} ${VIEW.y} ${VIEW.width} ${VIEW.height}`}
      >
        <line
          className="cone-shelf"
          x1={VIEW.x}
          x2={VIEW.x + VIEW.width}
          y1={REACH.down}
          y2={REACH.down}
        />
        <DrawnCone bendDegrees={bend} />
        <circle className="bend-grip" cx={tipX} cy={tipY} r={6} />
      </svg>
      <span aria-hidden="true" className="bend-words">
        {bendWords(bend)}
      </span>
    </div>
  );
};
