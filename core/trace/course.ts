import { mean } from '../numeric/statistics.ts';
import {
  celsius,
  celsiusPerHour,
  seconds,
  SECONDS_PER_HOUR,
  type Celsius,
  type CelsiusPerHour,
  type Seconds,
} from '../units.ts';
import { StretchFits } from './fits.ts';
import { interpolate, lowerBound } from '../numeric/search.ts';
import { averaged } from './thin.ts';

/** The course next to a leg's end says what temperature the leg ended at (chosen: 20 minutes). */
const END_STRETCH_SECONDS = 1200;
const FEWEST_SAMPLES = 4;
/** More points than this fit no line better. */
const MOST_POINTS = 500;

export interface Readings {
  readonly atSeconds: Float64Array;
  readonly celsius: Float64Array;
}

/** When and where a stretch of the trace ran. */
export interface Course {
  readonly startSeconds: Seconds;
  readonly endSeconds: Seconds;
  readonly startC: Celsius;
  readonly endC: Celsius;
  readonly rateCPerHour: CelsiusPerHour;
}

/** A value kept within what was read from one reading before a stretch to one after it. */
const asRead = ({ celsius }: Readings, from: number, to: number, valueC: number): number => {
  const read = celsius.subarray(Math.max(0, from - 1), to + 1);
  const lowest = read.reduce((least, value) => Math.min(least, value), Infinity);
  const highest = read.reduce((most, value) => Math.max(most, value), -Infinity);
  return Math.min(Math.max(valueC, lowest), highest);
};

/** The temperature at a stretch's end by the stretch's own line there, not its neighbour's. */
const temperatureAtEnd = (
  readings: Readings,
  fromSeconds: number,
  toSeconds: number,
  momentSeconds: number,
): number => {
  const from = lowerBound(readings.atSeconds, fromSeconds);
  const to = lowerBound(readings.atSeconds, toSeconds + 1e-6);
  if (to - from < FEWEST_SAMPLES) {
    return interpolate(readings.atSeconds, readings.celsius, momentSeconds);
  }
  const stretch = averaged(
    readings.atSeconds.subarray(from, to),
    readings.celsius.subarray(from, to),
    MOST_POINTS,
  );
  const times = stretch.atSeconds;
  const fit = new StretchFits(times, stretch.celsius).line(0, times.length);
  const onLineC = fit.meanC + (fit.ratePerHour * (momentSeconds - mean(times))) / SECONDS_PER_HOUR;
  return asRead(readings, from, to, onLineC);
};

/** The course of a stretch: its end temperatures freed of noise, and the rate between them. */
export const courseBetween = (
  readings: Readings,
  startSeconds: number,
  endSeconds: number,
): Course => {
  const reach = Math.min(END_STRETCH_SECONDS, endSeconds - startSeconds);
  const startC = temperatureAtEnd(readings, startSeconds, startSeconds + reach, startSeconds);
  const endC = temperatureAtEnd(readings, endSeconds - reach, endSeconds, endSeconds);
  const span = Math.max(1, endSeconds - startSeconds);
  return {
    startSeconds: seconds(startSeconds),
    endSeconds: seconds(endSeconds),
    startC: celsius(startC),
    endC: celsius(endC),
    rateCPerHour: celsiusPerHour(((endC - startC) / span) * SECONDS_PER_HOUR),
  };
};
