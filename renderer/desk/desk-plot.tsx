import { useId } from 'react';
import type { AnalysisDocument } from '../../core/model/document.ts';
import { bottomOf, rightOf } from '../../core/report/chart/scale.ts';
import { timeLabel } from '../../core/report/chart/ticks.ts';
import { celsius, type TemperatureUnit } from '../../core/units.ts';
import { duration, speechIn } from '../../core/wording/speech.ts';
import { deskPlotShape } from './desk-plot-shape.ts';

interface DeskPlotProps {
  readonly document: Pick<AnalysisDocument, 'curve' | 'trace'>;
  readonly unit: TemperatureUnit;
}

const startText = (startInstant: string | null): string =>
  startInstant === null
    ? 'The log does not say when it began'
    : `It began ${startInstant.replace('T', ' ').slice(0, 16)}`;

/** The curve as it is read now. */
export const DeskPlot = ({ document: { curve, trace }, unit }: DeskPlotProps) => {
  const id = useId();
  const shape = deskPlotShape(curve, unit);
  const { plot } = shape;
  const { temperature } = speechIn(unit);
  const said = `${startText(trace.startInstant)}, lasts ${duration(trace.durationSeconds)} and goes from ${temperature(celsius(trace.minC))} to ${temperature(celsius(trace.peakC))}.`;
  return (
    <figure className="desk-plot">
      <svg viewBox={`0 0 ${shape.width} ${shape.height}`} role="img" aria-labelledby={id}>
        <title id={id}>{`The curve as it is read now. ${said}`}</title>
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
        <path className="desk-curve" d={shape.line} />
      </svg>
      <figcaption>{said}</figcaption>
    </figure>
  );
};
