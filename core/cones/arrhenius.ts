/**
 * The arithmetic of heat-work. A cone's dose is W = ∫ exp(−E/RT) dt over its threshold, so that 1
 * is the cone's end point. The rate is scaled around a reference temperature,
 * exp(−(E/R)·(1/T − 1/T₀)), which keeps numbers near 1 and frees the threshold from E.
 */
import {
  celsius,
  toKelvin,
  ZERO_CELSIUS_IN_KELVIN,
  type Celsius,
  type CelsiusPerHour,
} from '../units.ts';
import { scaledE2 } from './exponential-integral.ts';

export interface Arrhenius {
  /** Activation energy over the gas constant, E/R, in kelvin. */
  readonly activationK: number;
  /** T₀: where one hour counts as one hour of dose. */
  readonly referenceK: number;
  /** Natural logarithm of the hours at T₀ that bring the cone to its end point. */
  readonly lnThresholdHours: number;
}

/** The molar gas constant in kJ/(mol·K), exact by definition (SI brochure, 9th edition). */
export const GAS_CONSTANT_KJ = 8.31446261815324e-3;

/** Hotter than this nothing is solved for: beyond every cone, and a bound for Newton's steps. */
const HOTTEST_K = 5000;
const NEWTON_STEPS = 40;

/** Share of the cone's whole heat-work that one hour at a temperature gives. */
export const doseRate = (kinetics: Arrhenius, atC: number): number =>
  Math.exp(
    kinetics.activationK * (1 / kinetics.referenceK - 1 / (atC + ZERO_CELSIUS_IN_KELVIN)) -
      kinetics.lnThresholdHours,
  );

/**
 * ln ∫₀^T exp(−a(1/T′ − 1/T₀)) dT′ in K, with a = E/R: the closed form T·E₂(a/T), whose logarithm
 * is nearly linear in 1/T.
 */
export const lnClimbIntegral = (activationK: number, referenceK: number, kelvin: number): number =>
  Math.log(kelvin * scaledE2(activationK / kelvin)) + activationK * (1 / referenceK - 1 / kelvin);

const climbIntegral = ({ activationK, referenceK, lnThresholdHours }: Arrhenius, atC: number) =>
  Math.exp(
    lnClimbIntegral(activationK, referenceK, atC + ZERO_CELSIUS_IN_KELVIN) - lnThresholdHours,
  );

/** Dose of a straight climb or fall between two temperatures in a number of hours. Exact. */
export const doseOfSegment = (
  kinetics: Arrhenius,
  fromC: number,
  toC: number,
  hours: number,
): number => {
  const span = toC - fromC;
  // The closed form is a difference of two values; below this span it loses digits, and the
  // middle of the segment is exact to them.
  if (Math.abs(span) < 1e-4) return hours * doseRate(kinetics, (fromC + toC) / 2);
  return (hours * (climbIntegral(kinetics, toC) - climbIntegral(kinetics, fromC))) / span;
};

/**
 * The temperature in kelvin at which ln ∫ exp(−a(1/T − 1/T₀)) dT has a value: Newton's method in
 * 1/T, in which the function is all but straight.
 */
export const kelvinAtLnIntegral = (
  activationK: number,
  referenceK: number,
  lnIntegral: number,
): number => {
  let kelvin = referenceK;
  for (let step = 0; step < NEWTON_STEPS; step += 1) {
    const missing = lnIntegral - lnClimbIntegral(activationK, referenceK, kelvin);
    const slopeInInverse = -kelvin / scaledE2(activationK / kelvin);
    const next = 1 / Math.max(1 / kelvin + missing / slopeInInverse, 1 / HOTTEST_K);
    const moved = Math.abs(next - kelvin);
    kelvin = next;
    if (moved < 1e-9) break;
  }
  return kelvin;
};

/**
 * The temperature at which a constant climb from cold has given a dose: at dose 1, the cone's end
 * point at that rate. `rate` must be positive.
 */
export const endPoint = (kinetics: Arrhenius, rate: CelsiusPerHour, dose = 1): Celsius => {
  const { activationK, referenceK, lnThresholdHours } = kinetics;
  const lnIntegral = lnThresholdHours + Math.log(rate) + Math.log(dose);
  return celsius(kelvinAtLnIntegral(activationK, referenceK, lnIntegral) - toKelvin(celsius(0)));
};

/** Dose of a constant climb from cold to a temperature. */
export const doseOfClimb = (kinetics: Arrhenius, toC: Celsius, rate: CelsiusPerHour): number =>
  climbIntegral(kinetics, toC) / rate;
