import type { Schedule, Segment } from '../../core/model/schedule.ts';
import { linePath, type Point } from '../../core/report/chart/path.ts';
import {
  bottomOf,
  linearScale,
  rightOf,
  type Box,
  type Scale,
} from '../../core/report/chart/scale.ts';
import { roundRange, roundTicks, timeTicks } from '../../core/report/chart/ticks.ts';
import { intendedCorners, intendedLegs } from '../../core/schedule/intended-curve.ts';
import { celsius, seconds, temperatureIn, type TemperatureUnit } from '../../core/units.ts';

/** A room's temperature, from which a schedule is drawn (chosen: nothing is reckoned from it). */
const ROOM_C = celsius(20);

const WIDTH = 480;
const HEIGHT = 240;
const PLOT: Box = { left: 44, top: 12, width: WIDTH - 44 - 14, height: HEIGHT - 12 - 26 };

interface Tick {
  readonly value: number;
  readonly at: number;
}

/** A schedule as geometry. */
export interface ScheduleCurve {
  readonly width: number;
  readonly height: number;
  readonly plot: Box;
  readonly line: string;
  /** The stretch of each segment by its index, to be drawn over the line. */
  readonly stretches: readonly string[];
  readonly corners: readonly Point[];
  readonly temperatureTicks: readonly Tick[];
  readonly timeTicks: readonly Tick[];
  readonly durationSeconds: number;
  readonly topC: number;
  /** Whether a leg has no rate of its own, so that its length is only a usual kiln's. */
  readonly hasFreeLegs: boolean;
}

type Corner = ReturnType<typeof intendedCorners>[number];

const stretchesOf = (
  segments: readonly Segment[],
  legs: ReturnType<typeof intendedLegs>,
  at: (corner: Corner) => Point,
): string[] =>
  segments.map((_, index) => {
    const mine = legs.filter(({ segment }) => segment === index);
    const first = mine[0];
    if (!first) return '';
    const start = at({ atSeconds: first.startSeconds, celsius: first.startC });
    const ends = mine.map((leg) => at({ atSeconds: leg.endSeconds, celsius: leg.endC }));
    return linePath([start, ...ends]);
  });

const temperatureAxis = (topC: number, unit: TemperatureUnit): [Scale, readonly Tick[]] => {
  const low = unit === 'F' ? 32 : 0;
  const [from, to] = roundRange(low, temperatureIn(celsius(topC), unit), 5);
  const scale = linearScale(from, to, bottomOf(PLOT), PLOT.top);
  return [scale, roundTicks(from, to, 5).map((value) => ({ value, at: scale(value) }))];
};

/** A schedule's curve from a room's temperature on, in the reader's unit; null where it has no leg. */
export const scheduleCurve = (
  segments: readonly Segment[],
  unit: TemperatureUnit,
): ScheduleCurve | null => {
  const start = { atSeconds: seconds(0), celsius: ROOM_C };
  const schedule: Schedule = { name: '', cone: null, segments: [...segments] };
  const legs = intendedLegs(schedule, start);
  const last = legs.at(-1);
  if (!last) return null;
  const corners = intendedCorners(legs, start);
  const topC = Math.max(...corners.map((corner) => corner.celsius));
  const [height, temperatureTicks] = temperatureAxis(topC, unit);
  const time = linearScale(0, last.endSeconds, PLOT.left, rightOf(PLOT));
  const at = (corner: Corner): Point => [
    time(corner.atSeconds),
    height(temperatureIn(corner.celsius, unit)),
  ];
  const points = corners.map(at);
  return {
    width: WIDTH,
    height: HEIGHT,
    plot: PLOT,
    line: linePath(points),
    stretches: stretchesOf(segments, legs, at),
    corners: points,
    temperatureTicks,
    timeTicks: timeTicks(last.endSeconds, 7).map((value) => ({ value, at: time(value) })),
    durationSeconds: last.endSeconds,
    topC,
    hasFreeLegs: legs.some(({ rateCPerHour }) => rateCPerHour === null),
  };
};
