import { CONES, coneBeside, positionOfCone, printedCone, type Cone } from '../model/cone.ts';
import {
  differenceIn,
  temperatureIn,
  SECONDS_PER_HOUR,
  SECONDS_PER_MINUTE,
  type Celsius,
  type CelsiusDelta,
  type CelsiusPerHour,
  type TemperatureUnit,
} from '../units.ts';

/** Below this a difference or a rate is told to a tenth of a degree. */
const FINE_BELOW = 10;

/** Within this share of the step to the next cone a position is called that cone. */
const SAME_CONE = 0.2;

/**
 * A number with `digits` decimals, a true minus sign and no thousands mark; trailing zeros go. The
 * machine's locale has no say.
 */
export const plainNumber = (value: number, digits = 0): string => {
  const fixed = Math.abs(value).toFixed(digits);
  const trimmed = digits > 0 ? fixed.replace(/\.?0+$/, '') : fixed;
  return value < 0 && Number(trimmed) !== 0 ? `−${trimmed}` : trimmed;
};

/** A count, from five digits on with its thousands parted by a no-break space. */
export const count = (value: number): string =>
  Math.abs(value) < 10_000
    ? plainNumber(value)
    : plainNumber(value).replace(/\B(?=(\d{3})+$)/g, '\u00a0');

/** `1 row`, `12 rows`. */
export const counted = (value: number, one: string, many = `${one}s`): string =>
  `${count(value)} ${value === 1 ? one : many}`;

/** A share as whole percent; what is not nothing is never called 0 %. */
export const percent = (share: number): string => {
  const value = share * 100;
  return value > 0 && value < 0.5 ? 'under 1 %' : `${plainNumber(value)} %`;
};

/** A span of time: `40 s`, `12 min`, `1 h 05 min`. */
export const duration = (spanSeconds: number): string => {
  const span = Math.abs(spanSeconds);
  if (span < SECONDS_PER_MINUTE) return `${plainNumber(span)} s`;
  const minutes = Math.round(span / SECONDS_PER_MINUTE);
  if (minutes < 60) return `${minutes} min`;
  return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, '0')} min`;
};

/** A sampling interval, where a fraction of a minute matters: `30 s`, `1 min`, `2.5 min`. */
export const interval = (spanSeconds: number): string =>
  spanSeconds < SECONDS_PER_MINUTE
    ? `${plainNumber(spanSeconds, 1)} s`
    : `${plainNumber(spanSeconds / SECONDS_PER_MINUTE, 1)} min`;

/** A place on the log's clock: `at 9 h 41 min`. */
export const moment = (atSeconds: number): string =>
  atSeconds < 0 ? `${duration(atSeconds)} before the log begins` : duration(atSeconds);

/** The time of day by the log's own stamps, with the days since it began: `05:10 +1 d`. */
export const clockTime = (startInstant: string | null, atSeconds: number): string | null => {
  const stamp = /T(\d\d):(\d\d)(?::(\d\d))?/.exec(startInstant ?? '');
  if (!stamp) return null;
  const [, hour, minute, second = '0'] = stamp;
  const start = Number(hour) * SECONDS_PER_HOUR + Number(minute) * 60 + Number(second);
  const minutes = Math.floor((start + atSeconds) / SECONDS_PER_MINUTE);
  const days = Math.floor(minutes / (24 * 60));
  const inDay = minutes - days * 24 * 60;
  const pad = (value: number) => String(value).padStart(2, '0');
  const time = `${pad(Math.floor(inDay / 60))}:${pad(inDay % 60)}`;
  return days === 0 ? time : `${time} +${days} d`;
};

/** `cone 05½`. */
export const coneName = (cone: Cone): string => `cone ${printedCone(cone)}`;

/** A distance on the cone scale: `half a cone`, `1.3 cones`. */
export const coneSteps = (steps: number): string => {
  const size = Math.abs(steps);
  if (size < 0.05) return 'less than a tenth of a cone';
  if (size >= 0.2 && size <= 0.3) return 'a quarter of a cone';
  if (size >= 0.45 && size <= 0.55) return 'half a cone';
  if (size >= 0.95 && size <= 1.05) return 'one cone';
  return size < 1 ? `${plainNumber(size, 1)} of a cone` : `${plainNumber(size, 1)} cones`;
};

/** The made cone nearest to a position. */
export const nearestCone = (position: number): Cone =>
  CONES.reduce((best, cone) =>
    Math.abs(positionOfCone(cone) - position) < Math.abs(positionOfCone(best) - position)
      ? cone
      : best,
  );

/** Where a position stands, by the names on the box: `cone 6`, `between cone 5 and cone 5½`. */
export const conePlace = (position: number): string => {
  const below = CONES.findLast((cone) => positionOfCone(cone) <= position);
  if (below === undefined) return `below ${coneName(CONES[0])}`;
  const above = coneBeside(below, 1);
  if (above === null) return `${coneName(below)} or beyond`;
  const from = positionOfCone(below);
  const share = (position - from) / (positionOfCone(above) - from);
  if (share <= SAME_CONE) return coneName(below);
  if (share >= 1 - SAME_CONE) return coneName(above);
  return `between ${coneName(below)} and ${coneName(above)}`;
};

/** The cone that a lower bound is past for certain, where the bound lies between two: `cone 6`. */
export const coneAtLeast = (position: number): string =>
  conePlace(position).replace(/^between (.*) and .*$/, '$1');

/** A range of positions by the nearest names: `cone 5 to cone 6`, or `cone 6` where both agree. */
const coneRange = (low: number, high: number): string => {
  const [from, to] = [nearestCone(low), nearestCone(high)];
  return from === to ? coneName(from) : `${coneName(from)} to ${coneName(to)}`;
};

/**
 * The range about a position, where it says more than the position's own place does: null for
 * "cone 4 to cone 5" about "between cone 4 and cone 5".
 */
export const coneRangeAbout = (position: number, low: number, high: number): string | null => {
  const range = coneRange(low, high);
  const place = conePlace(position).replace(/^between (.*) and (.*)$/, '$1 to $2');
  return range === place ? null : range;
};

/** How numbers with a temperature in them are said, in one reader's unit. */
export interface Speech {
  readonly unit: TemperatureUnit;
  /** A reading: `1222 °C`. */
  readonly temperature: (reading: Celsius) => string;
  /** A difference, which never gets the 32: `12 °C`; always without sign. */
  readonly difference: (difference: CelsiusDelta) => string;
  /** How far two readings are apart as they are said, so that the three numbers agree: `12 °C`. */
  readonly apart: (one: Celsius, other: Celsius) => string;
  /** A difference that is not known to a tenth: `5 °C`, whole degrees, without sign. */
  readonly wholeDifference: (difference: CelsiusDelta) => string;
  /** A difference with its sign: `+12 °C`, `−3 °C`. */
  readonly signedDifference: (difference: CelsiusDelta) => string;
  /** A rate, without sign: `60 °C/h`. */
  readonly rate: (rate: CelsiusPerHour) => string;
}

const fine = (value: number): string =>
  plainNumber(value, Math.abs(value) < FINE_BELOW - 0.05 ? 1 : 0);

/** {@link Speech} in degrees Celsius or Fahrenheit. */
export const speechIn = (unit: TemperatureUnit): Speech => {
  const size = (value: CelsiusDelta | CelsiusPerHour) => fine(Math.abs(differenceIn(value, unit)));
  const whole = (reading: Celsius) => Math.round(temperatureIn(reading, unit));
  return {
    unit,
    temperature: (reading) => `${plainNumber(temperatureIn(reading, unit))} °${unit}`,
    apart: (one, other) => `${plainNumber(Math.abs(whole(one) - whole(other)))} °${unit}`,
    difference: (difference) => `${size(difference)} °${unit}`,
    wholeDifference: (difference) =>
      `${plainNumber(Math.abs(differenceIn(difference, unit)))} °${unit}`,
    signedDifference: (difference) => {
      const text = size(difference);
      if (text === '0') return `0 °${unit}`;
      return `${difference < 0 ? '−' : '+'}${text} °${unit}`;
    },
    rate: (rate) => `${size(rate)} °${unit}/h`,
  };
};
