import { coneKinetics } from '../cones/cone-kinetics.ts';
import { endPoint } from '../cones/arrhenius.ts';
import type { Cone, ConeType } from '../model/cone.ts';
import type { Elements } from '../model/document.ts';
import { celsius, celsiusPerHour, SECONDS_PER_HOUR, type Celsius } from '../units.ts';
import type { KilnFit } from './fit-kiln.ts';
import { hotPowerFactor } from './hot-wire.ts';
import type { PowerCourse } from './power-course.ts';
import { spreadOf, type Spread } from './spread.ts';
import { requiredPower, steadyLoss } from './wall-model.ts';

/** No wire lasts beyond (alloy makers give 1400 °C at most), and no fit bears so far. */
const HOTTEST_C = 1450;
/** The last ramp of the end-point charts' middle column. */
const LAST_RAMP_C_PER_HOUR = 60;
/** That ramp is what the charts' rates are about: the last 100 °C. */
const LAST_RAMP_C = 100;

const ceilingOf = ({ wall, power }: Spread, roomC: number): number => {
  let [low, high] = [roomC, 2 * HOTTEST_C];
  for (let halving = 0; halving < 40; halving++) {
    const middle = (low + high) / 2;
    if (steadyLoss(wall, middle, roomC) < power * hotPowerFactor(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/**
 * Where full power is all lost through walls soaked through: the kiln goes no hotter, however long it
 * is on. Null where that lies beyond what its wire could bear, so that other things come first.
 */
export const findCeiling = (
  fit: KilnFit,
  roomC: number,
): { ceilingC: Celsius; range: NonNullable<Elements['ceilingRange']> } | null => {
  const { value, low, high } = spreadOf(fit, (spread) => ceilingOf(spread, roomC));
  if (value > HOTTEST_C) return null;
  return {
    ceilingC: celsius(value),
    range: { lowC: celsius(low), highC: celsius(high) },
  };
};

/** The record up to 100 °C under its peak, and from there on a climb at 60 °C/h. */
const goneOn = (course: PowerCourse): { celsius: Float64Array; from: number } => {
  const peakC = course.celsius.reduce((most, value) => Math.max(most, value), -Infinity);
  const from = course.celsius.findIndex((value) => value >= peakC - LAST_RAMP_C);
  const stepC = (LAST_RAMP_C_PER_HOUR * course.intervalSeconds) / SECONDS_PER_HOUR;
  const startC = course.celsius[from]!;
  const steps = Math.max(0, Math.ceil((HOTTEST_C - startC) / stepC));
  const climb = Float64Array.from({ length: steps }, (_, i) => startC + (i + 1) * stepC);
  const celsius = new Float64Array(from + 1 + steps);
  celsius.set(course.celsius.subarray(0, from + 1));
  celsius.set(climb, from + 1);
  return { celsius, from };
};

/**
 * The hottest cone whose end point at 60 °C/h this kiln, loaded and fired as it was, still reaches
 * with a last ramp of 60 °C/h at no more than full power; null below the coolest cone.
 */
export const hottestConeAt60 = (
  course: PowerCourse,
  fit: KilnFit,
  coneType: ConeType,
): Cone | null => {
  const { celsius: path, from } = goneOn(course);
  const required = requiredPower({ ...course, celsius: path }, fit.wall, fit.load);
  let last = from;
  while (last + 1 < path.length && required[last + 1]! <= fit.power * hotPowerFactor(path[last]!)) {
    last++;
  }
  const reachedC = path[last]!;
  const rate = celsiusPerHour(LAST_RAMP_C_PER_HOUR);
  const reachable = coneKinetics(coneType).filter((cone) => endPoint(cone, rate) <= reachedC);
  return reachable.at(-1)?.cone ?? null;
};
