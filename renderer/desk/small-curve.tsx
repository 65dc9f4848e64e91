import { useId } from 'react';
import { bottomOf, rightOf } from '../../core/report/chart/scale.ts';
import { timeLabel } from '../../core/report/chart/ticks.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { deskPlotShape, type Readings } from './desk-plot-shape.ts';

interface SmallCurveProps {
  readonly readings: Readings;
  readonly unit: TemperatureUnit;
  /** What it shows, for whoever does not see it. */
  readonly title: string;
  /** Whether each reading has a dot: where there are few. */
  readonly isDotted?: boolean;
}

/** A first look at readings, small enough to be drawn anew for every change. */
export const SmallCurve = ({ readings, unit, title, isDotted = false }: SmallCurveProps) => {
  const id = useId();
  const shape = deskPlotShape(readings, unit);
  const { plot } = shape;
  return (
    <svg
      className="small-curve"
      viewBox={`0 0 ${shape.width} ${shape.height}`}
      role="img"
      aria-labelledby={id}
    >
      <title id={id}>{title}</title>
      {shape.temperatureTicks.map(({ value, at }) => (
        <g key={value}>
          <line className="grid" x1={plot.left} x2={rightOf(plot)} y1={at} y2={at} />
          <text className="axis" x={plot.left - 6} y={at + 4} textAnchor="end">
            {value}
          </text>
        </g>
      ))}
      {shape.timeTicks.map(({ value, at }) => (
        <text key={value} className="axis" x={at} y={bottomOf(plot) + 17} textAnchor="middle">
          {timeLabel(value)}
        </text>
      ))}
      <text className="axis" x={plot.left + 6} y={plot.top + 11}>
        {`°${unit}`}
      </text>
      <path className="small-curve-line" d={shape.line} />
      {isDotted
        ? shape.points.map(([x, y]) => (
            <circle key={`${x} ${y}`} className="small-curve-dot" cx={x} cy={y} r={3} />
          ))
        : null}
    </svg>
  );
};
