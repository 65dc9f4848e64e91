import { CONE_CHART } from './cone-chart.ts';
import { ZERO_CELSIUS_KELVIN } from './physics.ts';

/**
 * Heat-work by the test kiln's own reckoning, with which the sample firings are aimed and the truth
 * of a firing is told. Each cone softens as one thermally activated process: its dose is
 * ∫ exp(−E/RT) dt and it is down when the dose reaches its threshold. E/R and threshold come from
 * the chart's three rates, cone by cone.
 */
export interface ConeKinetics {
  readonly cone: string;
  /** On the scale on which a whole cone is 1: 1 for cone 1, 0 for 01, −4.5 for 05½. */
  readonly position: number;
  /** E/R, K. */
  readonly activationKelvin: number;
  /** Natural logarithm of the dose in seconds at which it is down. */
  readonly lnThreshold: number;
}

const CHART_RATES_C_PER_HOUR = [15, 60, 150] as const;
/** E/R is looked for between these, K; all of the chart lies well within. */
const ACTIVATION_RANGE = [1e4, 3e5] as const;
/** The dose of what lies further below an end point than this is nothing, °C. */
const BELOW_C = 300;
const INTERVALS = 120;

const positionOf = (cone: string): number =>
  cone.startsWith('0') ? 1 - Number(cone.slice(1)) : Number(cone);

/** ln of the dose of a climb at a steady rate that ends at `endC`, by Simpson's rule. */
const lnDoseOfClimb = (activation: number, endC: number, rateCPerHour: number): number => {
  const end = endC + ZERO_CELSIUS_KELVIN;
  const width = BELOW_C / INTERVALS;
  let sum = 0;
  for (let i = 0; i <= INTERVALS; i++) {
    const weight = i === 0 || i === INTERVALS ? 1 : i % 2 === 1 ? 4 : 2;
    const kelvin = end - BELOW_C + i * width;
    // Relative to the end, so that nothing underflows.
    sum += weight * Math.exp(activation / end - activation / kelvin);
  }
  return Math.log(((sum * width) / 3) * (3600 / rateCPerHour)) - activation / end;
};

/** ln of a cone's dose at each of its printed end points. */
const lnDosesOfChart = (activation: number, endsC: readonly number[]): number[] =>
  endsC.map((endC, i) => lnDoseOfClimb(activation, endC, CHART_RATES_C_PER_HOUR[i]!));

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Sum of squares by which the printed end points miss one common dose, °C². */
const misfit = (activation: number, endsC: readonly number[]): number => {
  const doses = lnDosesOfChart(activation, endsC);
  const common = mean(doses);
  return doses.reduce((sum, dose, i) => {
    const kelvin = endsC[i]! + ZERO_CELSIUS_KELVIN;
    return sum + ((dose - common) * (kelvin * kelvin)) ** 2 / activation ** 2;
  }, 0);
};

/** The activation with the least misfit, by golden sections of its logarithm. */
const fittedActivation = (endsC: readonly number[]): number => {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = ACTIVATION_RANGE.map(Math.log) as [number, number];
  while (high - low > 1e-6) {
    const left = high - golden * (high - low);
    const right = low + golden * (high - low);
    if (misfit(Math.exp(left), endsC) < misfit(Math.exp(right), endsC)) high = right;
    else low = left;
  }
  return Math.exp((low + high) / 2);
};

let fitted: readonly ConeKinetics[] | null = null;

/** All cones of the chart from cool to hot, fitted on first use. */
export const coneKinetics = (): readonly ConeKinetics[] =>
  (fitted ??= CONE_CHART.map(([cone, ...endsC]) => {
    const activationKelvin = fittedActivation(endsC);
    const lnThreshold = mean(lnDosesOfChart(activationKelvin, endsC));
    return { cone, position: positionOf(cone), activationKelvin, lnThreshold };
  }));

/** ln of the dose of a record, by trapezia; samples without a reading are bridged. */
const lnDose = (kinetics: ConeKinetics, atSeconds: Float64Array, celsius: Float64Array): number => {
  let total = 0;
  let lastAt = NaN;
  let lastRate = NaN;
  for (let i = 0; i < atSeconds.length; i++) {
    if (Number.isNaN(celsius[i]!)) continue;
    const rate = Math.exp(
      -kinetics.lnThreshold - kinetics.activationKelvin / (celsius[i]! + ZERO_CELSIUS_KELVIN),
    );
    if (!Number.isNaN(lastAt)) total += ((rate + lastRate) / 2) * (atSeconds[i]! - lastAt);
    lastAt = atSeconds[i]!;
    lastRate = rate;
  }
  return Math.log(total) + kinetics.lnThreshold;
};

export interface Outcome {
  /** The hottest cone fully down; null below the coolest of the chart. */
  readonly cone: string | null;
  /** Between that cone and the next by ln(dose); null beyond the chart's ends. */
  readonly position: number | null;
}

/** What cones standing where the temperature was recorded would have shown. */
export const outcomeOf = (atSeconds: Float64Array, celsius: Float64Array): Outcome => {
  const cones = coneKinetics();
  const margins = cones.map(
    (kinetics) => lnDose(kinetics, atSeconds, celsius) - kinetics.lnThreshold,
  );
  const down = margins.findLastIndex((margin) => margin >= 0);
  const last = cones[down];
  const next = cones[down + 1];
  if (last === undefined) return { cone: null, position: null };
  if (next === undefined) return { cone: last.cone, position: null };
  const share = margins[down]! / (margins[down]! - margins[down + 1]!);
  return { cone: last.cone, position: last.position + share * (next.position - last.position) };
};

/** The end point at a steady rate that brings a cone down, °C; throws for a cone not in the chart. */
export const endPointAt = (cone: string, rateCPerHour: number): number => {
  const kinetics = coneKinetics().find((it) => it.cone === cone);
  if (kinetics === undefined) throw new RangeError(`no cone ${cone}`);
  let low = 300;
  let high = 1600;
  while (high - low > 1e-4) {
    const middle = (low + high) / 2;
    const dose = lnDoseOfClimb(kinetics.activationKelvin, middle, rateCPerHour);
    if (dose < kinetics.lnThreshold) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};
