import type { Elements } from '../model/document.ts';
import type { Trace } from '../model/trace.ts';
import { interpolate } from '../numeric/search.ts';
import { mean } from '../numeric/statistics.ts';
import { celsius, celsiusPerHour } from '../units.ts';
import type { KilnFit } from './fit-kiln.ts';
import { hotPowerFactor } from './hot-wire.ts';
import { FULL, OFF, type PowerCourse } from './power-course.ts';
import { steadyLoss } from './wall-model.ts';
import { spreadOf } from './spread.ts';

/** Temperatures at which a kiln is described, °C (chosen: round, and apart enough to be told). */
const EVERY_C = 50;
/** Slopes are means over this much to either side (chosen: half of what lies between two). */
const AROUND_C = 25;
/** Slopes over fewer intervals of two minutes are scatter (chosen). */
const FEWEST = 3;

/** Mean slope near a temperature where the power was all, or none; NaN where it hardly was. */
const slopeNear = (trace: Trace, course: PowerCourse, power: number, nearC: number): number => {
  const slopes: number[] = [];
  for (let i = 0; i < course.power.length; i++) {
    if (course.power[i] !== power || Math.abs(course.celsius[i]! - nearC) > AROUND_C) continue;
    const at = course.startSeconds + i * course.intervalSeconds;
    slopes.push(interpolate(trace.atSeconds, trace.slopeCPerHour, at));
  }
  return slopes.length < FEWEST ? NaN : mean(slopes);
};

/**
 * How the kiln heats at full power and cools without, at temperatures where the record shows both,
 * and its power over what it loses there with its walls soaked through. The slopes are as recorded;
 * the ratio comes from the fitted kiln, because recorded slopes alone mistake what the walls still
 * take up for loss. `low` to `high` is an 80 % interval.
 */
export const measureCapability = (
  trace: Trace,
  course: PowerCourse,
  fit: KilnFit,
): Elements['capability'] => {
  const peakC = course.celsius.reduce((most, value) => Math.max(most, value), -Infinity);
  const points: Elements['capability'][number][] = [];
  for (let atC = EVERY_C; atC < peakC; atC += EVERY_C) {
    const heating = slopeNear(trace, course, FULL, atC);
    const cooling = slopeNear(trace, course, OFF, atC);
    if (!(heating > 0 && cooling < 0)) continue;
    const { value, low, high } = spreadOf(fit, ({ wall, power }) =>
      Math.log((power * hotPowerFactor(atC)) / steadyLoss(wall, atC, course.roomC)),
    );
    points.push({
      celsius: celsius(atC),
      heatingCPerHour: celsiusPerHour(heating),
      coolingCPerHour: celsiusPerHour(cooling),
      powerToLoss: Math.exp(value),
      low: Math.exp(low),
      high: Math.exp(high),
    });
  }
  return points;
};
