import { useId } from 'react';
import type { DoseChart } from '../../core/report/chart/dose.ts';
import { bottomOf, rightOf } from '../../core/report/chart/scale.ts';
import { timeLabel } from '../../core/report/chart/ticks.ts';
import { numberText } from '../controls/number-text.ts';

interface DoseCurveProps {
  readonly chart: DoseChart;
  /** The cone whose dose it is. */
  readonly coneName: string;
}

/** Dose against time, with the dose that brings the cone down. */
export const DoseCurve = ({ chart, coneName }: DoseCurveProps) => {
  const id = useId();
  const { plot, downY } = chart;
  return (
    <figure className="cones-dose">
      <svg viewBox={`0 0 ${chart.width} ${chart.height}`} role="img" aria-labelledby={id}>
        <title id={id}>{`Dose of ${coneName} against time; at a dose of 1 it is down.`}</title>
        {chart.doseTicks.map(({ value, at }) => (
          <g key={value}>
            <line className="grid" x1={plot.left} x2={rightOf(plot)} y1={at} y2={at} />
            <text className="axis" x={plot.left - 6} y={at + 4} textAnchor="end">
              {numberText(value)}
            </text>
          </g>
        ))}
        {chart.timeTicks.map(({ value, at }) => (
          <g key={value}>
            <line className="grid" x1={at} x2={at} y1={plot.top} y2={bottomOf(plot) + 3} />
            <text className="axis" x={at} y={bottomOf(plot) + 16} textAnchor="middle">
              {timeLabel(value)}
            </text>
          </g>
        ))}
        <line className="dose-down" x1={plot.left} x2={rightOf(plot)} y1={downY} y2={downY} />
        <text className="axis dose-down-name" x={plot.left + 6} y={downY - 5}>
          {`${coneName} down`}
        </text>
        <path className="dose-line" d={chart.line} />
      </svg>
      <figcaption>{`Dose of ${coneName} against time: at 1 it is down.`}</figcaption>
    </figure>
  );
};
