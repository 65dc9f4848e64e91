import { useId } from 'react';
import type { Segment } from '../../core/model/schedule.ts';
import { bottomOf, rightOf } from '../../core/report/chart/scale.ts';
import { timeLabel } from '../../core/report/chart/ticks.ts';
import { celsius, type TemperatureUnit } from '../../core/units.ts';
import { counted, duration, speechIn } from '../../core/wording/speech.ts';
import { scheduleCurve } from './schedule-curve-shape.ts';

interface ScheduleCurveProps {
  readonly segments: readonly Segment[];
  readonly unit: TemperatureUnit;
  /** The segment being worked on, drawn heavier. */
  readonly marked?: number | null;
}

/** A schedule drawn as it stands. */
export const ScheduleCurve = ({ segments, unit, marked = null }: ScheduleCurveProps) => {
  const id = useId();
  const curve = scheduleCurve(segments, unit);
  if (curve === null) return null;
  const { plot, durationSeconds, topC, hasFreeLegs } = curve;
  const pace = hasFreeLegs ? ' Legs at full power are drawn at a usual kiln’s pace.' : '';
  const said = `${counted(segments.length, 'leg')}, ${duration(durationSeconds)}, up to ${speechIn(unit).temperature(celsius(topC))}.`;
  return (
    <figure className="told-curve">
      <svg viewBox={`0 0 ${curve.width} ${curve.height}`} role="img" aria-labelledby={id}>
        <title id={id}>{`The schedule as a curve: ${said}`}</title>
        {curve.temperatureTicks.map(({ value, at }) => (
          <g key={value}>
            <line className="grid" x1={plot.left} x2={rightOf(plot)} y1={at} y2={at} />
            <text className="axis" x={plot.left - 6} y={at + 4} textAnchor="end">
              {value}
            </text>
          </g>
        ))}
        {curve.timeTicks.map(({ value, at }) => (
          <g key={value}>
            <line className="grid" x1={at} x2={at} y1={plot.top} y2={bottomOf(plot) + 3} />
            <text className="axis" x={at} y={bottomOf(plot) + 17} textAnchor="middle">
              {timeLabel(value)}
            </text>
          </g>
        ))}
        <text className="axis" x={plot.left + 6} y={plot.top + 11}>
          {`°${unit}`}
        </text>
        <path className="planned" d={curve.line} />
        {marked === null ? null : <path className="marked" d={curve.stretches[marked]} />}
        {curve.corners.map(([x, y], index) => (
          <circle key={index} className="corner" cx={x} cy={y} r={2.5} />
        ))}
      </svg>
      <figcaption>
        {said}
        {pace}
      </figcaption>
    </figure>
  );
};
