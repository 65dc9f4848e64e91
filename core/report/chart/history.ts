import { CONES, positionOfCone, printedCone } from '../../model/cone.ts';
import type { History, HistoryFiring, HistoryStep } from '../../model/history.ts';
import { bottomOf, linearScale, type Box, type Scale } from './scale.ts';
import { roundRange, roundTicks } from './ticks.ts';

interface Tick<Value> {
  readonly value: Value;
  readonly at: number;
}

/** One firing as geometry; null where the record cannot tell. */
export interface FiringMark {
  readonly x: number;
  readonly power: { readonly y: number; readonly lowY: number; readonly highY: number } | null;
  readonly coneY: number | null;
}

/** Relative power and the cones reached, firing by firing, as geometry. */
export interface HistoryChart {
  readonly width: number;
  readonly height: number;
  readonly power: Box;
  readonly cones: Box;
  readonly firings: readonly FiringMark[];
  readonly trend: {
    readonly x1: number;
    readonly y1: number;
    readonly x2: number;
    readonly y2: number;
  } | null;
  /** Where the power lies that the forecast runs to; null where there is no power to forecast. */
  readonly limitY: number | null;
  readonly steps: readonly { readonly kind: HistoryStep['kind']; readonly x: number }[];
  readonly percentTicks: readonly Tick<number>[];
  readonly coneTicks: readonly Tick<string>[];
  readonly numberTicks: readonly Tick<number>[];
}

/** How large it is drawn: its width, and the size of its type, in the same units. */
export interface HistorySize {
  readonly width: number;
  readonly type: number;
}

interface Areas {
  readonly power: Box;
  readonly cones: Box;
  readonly height: number;
}

/** Heights in sizes of the type (chosen): a label needs one and a half. */
const POWER_TYPES = 15;
const CONE_TYPES = 6.5;
/** `100 %` and a little room stand left of the plot. */
const LEFT_TYPES = 3.8;
const MOST_CONE_TICKS = 4;
/** A firing's number needs two sizes of the type. */
const NUMBER_TYPES = 2;

const areasOf = ({ width, type }: HistorySize): Areas => {
  const left = LEFT_TYPES * type;
  const across = { left, width: Math.max(type, width - left - type) };
  const power = { ...across, top: type, height: POWER_TYPES * type };
  const cones = { ...across, top: bottomOf(power) + 2.6 * type, height: CONE_TYPES * type };
  return { power, cones, height: bottomOf(cones) + 2 * type };
};

/** The firings stand evenly, half a step away from either edge. */
const placesOf = (count: number, { left, width }: Box): Scale => {
  const step = width / Math.max(1, count);
  return linearScale(0, 1, left + step / 2, left + step / 2 + step);
};

const percentRange = ({ firings, trend, forecast }: History): [number, number] => {
  const powers = firings.flatMap(({ low, high }) => [low, high]).filter((one) => one !== null);
  const limit = trend === null ? [] : [forecast.limitPower];
  const shares = [1, ...powers, ...limit];
  return roundRange(100 * Math.min(...shares) - 1, 100 * Math.max(...shares) + 1, 6);
};

const coneRange = (firings: readonly HistoryFiring[]): [number, number] => {
  const reached = firings.map(({ conePosition }) => conePosition).filter((one) => one !== null);
  if (reached.length === 0) return [0, 1];
  return [Math.floor(Math.min(...reached) - 0.5), Math.ceil(Math.max(...reached) + 0.5)];
};

/** Whole cones within a range, not more of them than have room. */
const coneTicks = (from: number, to: number, height: Scale): Tick<string>[] => {
  const whole = CONES.filter((cone) => {
    const position = positionOfCone(cone);
    return Number.isInteger(position) && position >= from && position <= to;
  });
  const every = Math.ceil(whole.length / MOST_CONE_TICKS);
  return whole
    .filter((_, index) => index % every === 0)
    .map((cone) => ({ value: printedCone(cone), at: height(positionOfCone(cone)) }));
};

const trendLine = ({ trend, firings }: History, place: Scale, height: Scale) => {
  if (trend === null) return null;
  const last = firings.findLastIndex(({ relativePower }) => relativePower !== null);
  const first = trend.nowPower - (trend.perFiringPercent / 100) * (last - trend.since);
  return {
    ...{ x1: place(trend.since), y1: height(100 * first) },
    ...{ x2: place(last), y2: height(100 * trend.nowPower) },
  };
};

/** A history as a picture: power with its intervals above, cones reached below, on the same firings. */
export const historyChart = (history: History, size: HistorySize): HistoryChart => {
  const { firings, trend, forecast, steps } = history;
  const { power, cones, height: whole } = areasOf(size);
  const place = placesOf(firings.length, power);
  const [least, most] = percentRange(history);
  const height = linearScale(least, most, bottomOf(power), power.top);
  const [lowCone, highCone] = coneRange(firings);
  const coneHeight = linearScale(lowCone, highCone, bottomOf(cones), cones.top);
  const every = Math.ceil((firings.length * NUMBER_TYPES * size.type) / power.width);
  return {
    ...{ width: size.width, height: whole, power, cones },
    firings: firings.map(({ relativePower, low, high, conePosition }, index) => ({
      x: place(index),
      power:
        relativePower === null || low === null || high === null
          ? null
          : {
              y: height(100 * relativePower),
              lowY: height(100 * low),
              highY: height(100 * high),
            },
      coneY: conePosition === null ? null : coneHeight(conePosition),
    })),
    trend: trendLine(history, place, height),
    limitY: trend === null ? null : height(100 * forecast.limitPower),
    steps: steps.map(({ kind, firing }) => ({ kind, x: place(firing - 0.5) })),
    percentTicks: roundTicks(least, most, 6).map((value) => ({ value, at: height(value) })),
    coneTicks: coneTicks(lowCone, highCone, coneHeight),
    numberTicks: firings
      .map((_, index) => ({ value: index + 1, at: place(index) }))
      .filter((_, index) => index % every === 0),
  };
};
