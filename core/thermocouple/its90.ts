import type { CoupleType } from '../model/options.ts';
import {
  ITS90_COEFFICIENTS,
  TYPE_K_EXPONENTIAL,
  type EmfPolynomial,
} from '../reference/its90-coefficients.ts';

/** Between which temperatures a couple type is used here, °C. */
export interface CoupleRange {
  readonly fromC: number;
  readonly toC: number;
}

/** Types K and T are cut here: no kiln is colder, and near −270 °C their curves turn (chosen). */
const COLDEST_C = -200;

/**
 * Where the EMF of type B is least, −0.0026 mV: the zero of its polynomial's slope. Below it a
 * voltage stands for two temperatures, so type B is read from here on.
 */
export const TYPE_B_TURN_C = 21.02026;

const polynomialsOf = (type: CoupleType): readonly EmfPolynomial[] => ITS90_COEFFICIENTS[type];

/** The range of a couple type in which a voltage is one temperature. */
export const coupleRange = (type: CoupleType): CoupleRange => {
  const polynomials = polynomialsOf(type);
  const least = polynomials[0]!.fromC;
  return {
    fromC: type === 'B' ? TYPE_B_TURN_C : Math.max(least, COLDEST_C),
    toC: polynomials[polynomials.length - 1]!.toC,
  };
};

const polynomialAt = (type: CoupleType, celsius: number): EmfPolynomial | null => {
  const polynomials = polynomialsOf(type);
  if (!(celsius >= polynomials[0]!.fromC)) return null;
  return polynomials.find(({ toC }) => celsius <= toC) ?? null;
};

const hasExponential = (type: CoupleType, celsius: number): boolean => type === 'K' && celsius > 0;

const exponential = (celsius: number): number => {
  const { amplitude, exponent, centreC } = TYPE_K_EXPONENTIAL;
  return amplitude * Math.exp(exponent * (celsius - centreC) ** 2);
};

/**
 * The EMF in mV of a couple at a temperature, its cold junction at 0 °C: the reference function of
 * ITS-90. NaN beyond the function's range.
 */
export const emfMillivolts = (type: CoupleType, celsius: number): number => {
  const coefficients = polynomialAt(type, celsius)?.coefficients;
  if (coefficients === undefined) return Number.NaN;
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 0; i -= 1) sum = sum * celsius + coefficients[i]!;
  return hasExponential(type, celsius) ? sum + exponential(celsius) : sum;
};

/** The slope of the EMF in mV/K (the Seebeck coefficient) at a temperature; NaN beyond the range. */
export const seebeckMillivoltsPerK = (type: CoupleType, celsius: number): number => {
  const coefficients = polynomialAt(type, celsius)?.coefficients;
  if (coefficients === undefined) return Number.NaN;
  let sum = 0;
  for (let i = coefficients.length - 1; i > 0; i -= 1) sum = sum * celsius + i * coefficients[i]!;
  if (!hasExponential(type, celsius)) return sum;
  const { exponent, centreC } = TYPE_K_EXPONENTIAL;
  return sum + 2 * exponent * (celsius - centreC) * exponential(celsius);
};

/** The inverse is found to this, °C: far below any printed digit (chosen). */
const WITHIN_C = 1e-6;
/** Tables are printed to 0.001 mV: so far beyond an end a voltage still is that end's. */
const LAST_DIGIT_MILLIVOLTS = 0.001;
/** Enough to halve the widest range down to {@link WITHIN_C} twice over. */
const MOST_STEPS = 60;

/** Narrows the bracket around the temperature: Newton's step where it stays inside, else half. */
const solve = (type: CoupleType, millivolts: number, fromC: number, toC: number): number => {
  let low = fromC;
  let high = toC;
  let celsius = (low + high) / 2;
  for (let step = 0; step < MOST_STEPS && high - low > WITHIN_C; step += 1) {
    const excess = emfMillivolts(type, celsius) - millivolts;
    if (excess === 0) return celsius;
    if (excess > 0) high = celsius;
    else low = celsius;
    const next = celsius - excess / seebeckMillivoltsPerK(type, celsius);
    const isInside = next > low && next < high;
    if (isInside && Math.abs(next - celsius) < WITHIN_C) return next;
    celsius = isInside ? next : (low + high) / 2;
  }
  return celsius;
};

/**
 * The temperature in °C at which a couple gives an EMF in mV, its cold junction at 0 °C. NaN beyond
 * {@link coupleRange}. Type B is read on its rising branch, from {@link TYPE_B_TURN_C} on: below
 * about 100 °C it gives so little that the last digit of a logger is several degrees.
 */
export const celsiusOfEmf = (type: CoupleType, millivolts: number): number => {
  const { fromC, toC } = coupleRange(type);
  const least = emfMillivolts(type, fromC);
  const most = emfMillivolts(type, toC);
  if (!(millivolts >= least - LAST_DIGIT_MILLIVOLTS)) return Number.NaN;
  if (millivolts > most + LAST_DIGIT_MILLIVOLTS) return Number.NaN;
  return solve(type, Math.min(most, Math.max(least, millivolts)), fromC, toC);
};
