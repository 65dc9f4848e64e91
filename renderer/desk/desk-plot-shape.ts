import { linePath, type Point } from '../../core/report/chart/path.ts';
import { bottomOf, linearScale, rightOf, type Box } from '../../core/report/chart/scale.ts';
import { roundRange, roundTicks, timeTicks } from '../../core/report/chart/ticks.ts';
import { celsius, temperatureIn, type TemperatureUnit } from '../../core/units.ts';

const WIDTH = 640;
const HEIGHT = 170;
const PLOT: Box = { left: 44, top: 10, width: WIDTH - 44 - 16, height: HEIGHT - 10 - 26 };

interface Tick {
  readonly value: number;
  readonly at: number;
}

/** A curve small enough to be drawn anew for every change. */
export interface DeskPlotShape {
  readonly width: number;
  readonly height: number;
  readonly plot: Box;
  readonly points: readonly Point[];
  readonly line: string;
  readonly temperatureTicks: readonly Tick[];
  readonly timeTicks: readonly Tick[];
}

/** Readings in order of time. */
export interface Readings {
  readonly atSeconds: readonly number[];
  readonly celsius: readonly number[];
}

/** A curve of so many readings that each can be drawn, as geometry, in the reader's unit. */
export const deskPlotShape = (
  { atSeconds, celsius: readings }: Readings,
  unit: TemperatureUnit,
): DeskPlotShape => {
  const degrees = readings.map((reading) => temperatureIn(celsius(reading), unit));
  const low = degrees.reduce((least, value) => Math.min(least, value), Infinity);
  const high = degrees.reduce((most, value) => Math.max(most, value), -Infinity);
  const [from, to] = roundRange(Math.min(0, low), high, 4);
  const height = linearScale(from, to, bottomOf(PLOT), PLOT.top);
  const start = atSeconds[0] ?? 0;
  const span = (atSeconds.at(-1) ?? 0) - start;
  const time = linearScale(0, span, PLOT.left, rightOf(PLOT));
  const points = degrees.map((value, i): Point => [time(atSeconds[i]! - start), height(value)]);
  return {
    width: WIDTH,
    height: HEIGHT,
    plot: PLOT,
    points,
    line: linePath(points),
    temperatureTicks: roundTicks(from, to, 4).map((value) => ({ value, at: height(value) })),
    timeTicks: timeTicks(span, 8).map((value) => ({ value, at: time(value) })),
  };
};
