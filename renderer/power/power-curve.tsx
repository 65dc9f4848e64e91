import { useId } from 'react';
import type { PowerChart } from '../../core/report/chart/power.ts';
import { bottomOf, rightOf, type Box } from '../../core/report/chart/scale.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { numberText } from '../controls/number-text.ts';

interface PowerCurveProps {
  readonly chart: PowerChart;
  readonly unit: TemperatureUnit;
}

interface LaneGridProps {
  readonly plot: Box;
  readonly ticks: PowerChart['temperatureTicks'];
  readonly name: string;
}

const LaneGrid = ({ plot, ticks, name }: LaneGridProps) => (
  <>
    {ticks.map(({ value, at }) => (
      <g key={value}>
        <line className="grid" x1={plot.left} x2={rightOf(plot)} y1={at} y2={at} />
        <text className="axis" x={plot.left - 6} y={at + 4} textAnchor="end">
          {numberText(value)}
        </text>
      </g>
    ))}
    <text className="axis" x={plot.left} y={plot.top - 7}>
      {name}
    </text>
  </>
);

/** Heating and cooling slopes, and power over loss with its range, against temperature. */
export const PowerCurve = ({ chart, unit }: PowerCurveProps) => {
  const id = useId();
  const { slopes, ratio, temperatureTicks, ceilingX } = chart;
  const bottom = bottomOf(ratio.plot);
  const right = rightOf(ratio.plot);
  return (
    <figure className="power-curve">
      <svg viewBox={`0 0 ${chart.width} ${chart.height}`} role="img" aria-labelledby={id}>
        <title id={id}>
          Slopes of heating and cooling, and power over loss, against temperature. All of it stands
          in the table.
        </title>
        <LaneGrid {...slopes} name={`slope, °${unit}/h`} />
        <LaneGrid {...ratio} name="power over loss" />
        {temperatureTicks.map(({ value, at }) => (
          <g key={value}>
            <line className="grid" x1={at} x2={at} y1={slopes.plot.top} y2={bottom} />
            <text className="axis" x={at} y={bottom + 17} textAnchor="middle">
              {`${numberText(value)} °${unit}`}
            </text>
          </g>
        ))}
        <path className="power-range" d={ratio.range} />
        <line
          className="power-one"
          x1={ratio.plot.left}
          x2={right}
          y1={ratio.oneY}
          y2={ratio.oneY}
        />
        {ceilingX === null ? null : (
          <>
            <line
              className="power-one"
              x1={ceilingX}
              x2={ceilingX}
              y1={ratio.plot.top}
              y2={bottom}
            />
            <text className="axis" x={ceilingX - 5} y={ratio.plot.top + 11} textAnchor="end">
              ceiling
            </text>
          </>
        )}
        <path className="power-line" d={slopes.heating} />
        <path className="power-line power-cooling" d={slopes.cooling} />
        <path className="power-line" d={ratio.line} />
      </svg>
      <figcaption>
        Above: solid, how fast it climbs at full power; dashed, how fast it cools without. Below:
        power over loss with its 80 % range.
      </figcaption>
    </figure>
  );
};
