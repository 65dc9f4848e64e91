import { useId, useMemo, useRef } from 'react';
import {
  historyChart,
  type FiringMark,
  type HistoryChart,
  type HistorySize,
} from '../../core/report/chart/history.ts';
import { bottomOf, rightOf } from '../../core/report/chart/scale.ts';
import type { History } from '../../core/model/history.ts';
import { useSurfaceSize } from '../curve/use-size.ts';
import { useApp } from '../state/use-app.ts';
import { numberText } from '../controls/number-text.ts';

interface HistoryPictureProps {
  readonly history: History;
  /** The firings that the chosen finding rests on; none where none is chosen. */
  readonly marked: readonly number[];
}

const Grid = ({ chart }: { readonly chart: HistoryChart }) => {
  const { power, cones, percentTicks, coneTicks, numberTicks } = chart;
  const lines = [
    ...percentTicks.map(({ value, at }) => ({ text: `${numberText(value)} %`, at })),
    ...coneTicks.map(({ value, at }) => ({ text: value, at })),
  ];
  return (
    <>
      {lines.map(({ text, at }) => (
        <g key={`${text}-${at}`}>
          <line className="grid" x1={power.left} x2={rightOf(power)} y1={at} y2={at} />
          <text className="axis" x={power.left - 6} y={at} dy="0.32em" textAnchor="end">
            {text}
          </text>
        </g>
      ))}
      <text className="axis lane-title" x={power.left} y={cones.top} dy="-0.6em">
        cone reached
      </text>
      {numberTicks.map(({ value, at }) => (
        <text
          key={value}
          className="axis"
          x={at}
          y={bottomOf(cones)}
          dy="1.4em"
          textAnchor="middle"
        >
          {value}
        </text>
      ))}
    </>
  );
};

const STEP_NAMES = {
  restored: 'more power from here',
  lost: 'less power from here',
  couple: 'the couple reads otherwise',
} as const;

const Steps = ({ chart: { steps, power, cones } }: { readonly chart: HistoryChart }) =>
  steps.map(({ kind, x }) => {
    const isLate = x > (power.left + rightOf(power)) / 2;
    return (
      <g key={`${kind}-${x}`}>
        <line className="history-step" x1={x} x2={x} y1={power.top} y2={bottomOf(cones)} />
        <text
          className="history-step-name"
          x={x + (isLate ? -5 : 5)}
          y={power.top}
          dy="0.8em"
          textAnchor={isLate ? 'end' : 'start'}
        >
          {STEP_NAMES[kind]}
        </text>
      </g>
    );
  });

const Firing = ({ mark, isMarked }: { readonly mark: FiringMark; readonly isMarked: boolean }) => {
  const { x, power, coneY } = mark;
  return (
    <g className={isMarked ? 'history-firing history-marked' : 'history-firing'}>
      {power === null ? null : (
        <>
          <line x1={x} x2={x} y1={power.lowY} y2={power.highY} />
          <circle cx={x} cy={power.y} r={isMarked ? 6 : 4} />
        </>
      )}
      {coneY === null ? null : <path d={`M${x} ${coneY - 5}l4.5 9h-9z`} className="history-cone" />}
    </g>
  );
};

const LIMIT_NAMES = {
  'last-ramp': 'the last ramp needs this',
  'usual-replacement': 'usually replaced here',
} as const;

interface DrawnProps extends HistoryPictureProps {
  readonly size: HistorySize;
}

const Drawn = ({ history, marked, size }: DrawnProps) => {
  const id = useId();
  const chart = useMemo(() => historyChart(history, size), [history, size]);
  const { width, height, power, trend, limitY, firings } = chart;
  return (
    <svg
      {...{ width, height }}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-labelledby={id}
      style={{ fontSize: size.type }}
    >
      <title id={id}>
        Power of each firing, in percent of the reference firings, with its 80 % range; below, the
        cone it reached. All of it stands in the table.
      </title>
      <Grid chart={chart} />
      {limitY === null ? null : (
        <>
          <line
            className="history-limit"
            {...{ x1: power.left, x2: rightOf(power), y1: limitY, y2: limitY }}
          />
          <text className="history-step-name" x={power.left + 6} y={limitY} dy="-0.4em">
            {LIMIT_NAMES[history.forecast.limitKind]}
          </text>
        </>
      )}
      <Steps chart={chart} />
      {trend === null ? null : <line className="history-trend" {...trend} />}
      {firings.map((mark, index) => (
        <Firing key={index} mark={mark} isMarked={marked.includes(index)} />
      ))}
    </svg>
  );
};

/** Relative power with its 80 % ranges and its trend, and the cones reached, firing by firing. */
export const HistoryPicture = (props: HistoryPictureProps) => {
  const frame = useRef<HTMLDivElement>(null);
  const textPercent = useApp((state) => state.preferences.textPercent);
  const measured = useSurfaceSize(frame, textPercent);
  const size = useMemo(
    () => (measured === null ? null : { width: measured.width, type: measured.typePx }),
    [measured],
  );
  const hasTrend = props.history.trend !== null;
  return (
    <figure className="history-picture">
      <div ref={frame}>{size === null ? null : <Drawn {...props} size={size} />}</div>
      <figcaption>
        Dots: power of each firing, in percent of the reference firings; lines: its 80 % range.
        {hasTrend ? ' Long line: the trend.' : ''} Below: the cone that the heat-work of each firing
        comes to.
      </figcaption>
    </figure>
  );
};
