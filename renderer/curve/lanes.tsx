import { useEffect, useLayoutEffect, useRef } from 'react';
import type { Painting } from './paint.ts';
import { createPlot, type LaneName, type Measures, type Plot } from './plots.ts';

interface LanePictureProps {
  readonly lane: LaneName;
  /** The words in the lane's corner; none for the curve itself. */
  readonly name: string;
  readonly painting: Painting;
  readonly measures: Measures;
  readonly onPlot?: (plot: Plot) => void;
}

/** One canvas on the clock: the curve, or a lane under it. */
export const LanePicture = ({ lane, name, painting, measures, onPlot }: LanePictureProps) => {
  const target = useRef<HTMLDivElement>(null);
  const plot = useRef<Plot | null>(null);
  useEffect(
    () => () => {
      plot.current?.destroy();
      plot.current = null;
    },
    [],
  );
  const { width, height, left, right } = measures;
  // Drawn for another picture or another size, not because something beside it has changed.
  useLayoutEffect(() => {
    if (!target.current) return;
    plot.current ??= createPlot(lane, target.current);
    plot.current.draw(painting, { width, height, left, right });
    onPlot?.(plot.current);
  }, [lane, painting, width, height, left, right, onPlot]);
  return (
    <div className={`lane lane-${lane}`} style={{ height }}>
      <div ref={target} className="lane-canvas" />
      <span className="lane-name" style={lane === 'curve' ? { left: 0 } : { right: right + 6 }}>
        {name}
      </span>
    </div>
  );
};
