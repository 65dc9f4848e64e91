/**
 * How long a firing spent at each temperature. A dose depends on nothing else, so a million samples
 * become a thousand pairs once, and every cone, every shift of the couple and every remedy is
 * computed on those.
 */
import { lastAtOrBefore } from '../numeric/search.ts';
import { SECONDS_PER_HOUR } from '../units.ts';
import { doseRate, type Arrhenius } from './arrhenius.ts';

/** Hours spent around each temperature, in order of temperature. */
export interface Occupancy {
  readonly celsius: Float64Array;
  readonly hours: Float64Array;
}

/** Times in seconds and temperatures, straight lines between them. */
export interface PiecewiseCurve {
  readonly atSeconds: Float64Array;
  readonly celsius: Float64Array;
  /** Index of a sample that no line leads to: the time before it is not counted. */
  readonly joinedAt?: number;
}

/**
 * Width of a bin in °C. Each bin is evaluated at the mean temperature of the time spent in it, so
 * the dose errs by less than (E/RT²·width)²/8: 1e-4 for the steepest cone, a few ten-thousandths
 * of a cone.
 */
const BIN_C = 0.5;

/**
 * How far below its top temperature a firing is counted. An hour 450 °C below gives less than 1e-5
 * of an hour at the top for every cone that such a firing could be bending.
 */
export const COUNTED_BELOW_TOP_C = 450;

class Bins {
  readonly #floorC: number;
  readonly #hours: Float64Array;
  readonly #degreeHours: Float64Array;

  constructor(floorC: number, topC: number) {
    const count = Math.max(1, Math.floor((topC - floorC) / BIN_C) + 1);
    this.#floorC = floorC;
    this.#hours = new Float64Array(count);
    this.#degreeHours = new Float64Array(count);
  }

  /** Spreads a straight stretch evenly over the temperatures it passes. */
  add(fromC: number, toC: number, hours: number): void {
    let low = fromC < toC ? fromC : toC;
    const high = fromC < toC ? toC : fromC;
    if (high < this.#floorC) return;
    const hoursPerDegree = hours / (high - low);
    if (low < this.#floorC) low = this.#floorC;
    let bin = Math.floor((low - this.#floorC) / BIN_C);
    const lastBin = Math.min(Math.floor((high - this.#floorC) / BIN_C), this.#hours.length - 1);
    if (bin >= lastBin) {
      const share = high > low ? hoursPerDegree * (high - low) : hours;
      this.#put(lastBin, share, (low + high) / 2);
      return;
    }
    for (; bin <= lastBin; bin += 1) {
      const edge = bin === lastBin ? high : this.#floorC + (bin + 1) * BIN_C;
      this.#put(bin, hoursPerDegree * (edge - low), (low + edge) / 2);
      low = edge;
    }
  }

  #put(bin: number, hours: number, atC: number): void {
    this.#hours[bin] = this.#hours[bin]! + hours;
    this.#degreeHours[bin] = this.#degreeHours[bin]! + hours * (atC - this.#floorC);
  }

  filled(): Occupancy {
    const bins = Array.from(this.#hours.keys()).filter((bin) => this.#hours[bin]! > 0);
    return {
      celsius: Float64Array.from(
        bins,
        (bin) => this.#floorC + this.#degreeHours[bin]! / this.#hours[bin]!,
      ),
      hours: Float64Array.from(bins, (bin) => this.#hours[bin]!),
    };
  }
}

/** The curve's temperature at a moment: straight between samples, level beyond its ends. */
export const temperatureAt = (curve: PiecewiseCurve, moment: number): number => {
  const { atSeconds, celsius } = curve;
  const before = lastAtOrBefore(atSeconds, moment);
  if (before < 0) return celsius[0]!;
  if (before >= atSeconds.length - 1) return celsius[atSeconds.length - 1]!;
  const share = (moment - atSeconds[before]!) / (atSeconds[before + 1]! - atSeconds[before]!);
  return celsius[before]! + share * (celsius[before + 1]! - celsius[before]!);
};

/** The highest temperature among a curve's samples. */
export const topOf = (celsius: Float64Array): number => {
  let top = -Infinity;
  for (let i = 0; i < celsius.length; i += 1) if (celsius[i]! > top) top = celsius[i]!;
  return top;
};

/**
 * Hours at temperature of a curve between two moments (its whole length unless told), counted down
 * to {@link COUNTED_BELOW_TOP_C} under the top of the whole curve. A caller that asks for many
 * stretches passes that top.
 */
export const occupancyOf = (
  curve: PiecewiseCurve,
  fromSeconds = -Infinity,
  toSeconds = Infinity,
  topC = topOf(curve.celsius),
): Occupancy => {
  const { atSeconds, celsius, joinedAt = NaN } = curve;
  const bins = new Bins(topC - COUNTED_BELOW_TOP_C, topC);
  const from = Math.max(fromSeconds, atSeconds[0]!);
  const to = Math.min(toSeconds, atSeconds.at(-1)!);
  if (!(to > from)) return bins.filled();
  let lastSeconds = from;
  let lastC = temperatureAt(curve, from);
  const end = lastAtOrBefore(atSeconds, to);
  for (let i = lastAtOrBefore(atSeconds, from) + 1; i <= end; i += 1) {
    const [at, reading] = [atSeconds[i]!, celsius[i]!];
    if (i !== joinedAt) bins.add(lastC, reading, (at - lastSeconds) / SECONDS_PER_HOUR);
    lastSeconds = at;
    lastC = reading;
  }
  if (lastSeconds < to && end + 1 !== joinedAt) {
    bins.add(lastC, temperatureAt(curve, to), (to - lastSeconds) / SECONDS_PER_HOUR);
  }
  return bins.filled();
};

/** The same hours at other temperatures. */
export const movedTo = (occupancy: Occupancy, where: (atC: number) => number): Occupancy => ({
  celsius: occupancy.celsius.map(where),
  hours: occupancy.hours,
});

/** Several stretches as one; order does not matter to a dose. */
export const joined = (...parts: readonly Occupancy[]): Occupancy => ({
  celsius: Float64Array.from(parts.flatMap(({ celsius }) => [...celsius])),
  hours: Float64Array.from(parts.flatMap(({ hours }) => [...hours])),
});

/** Dose of a cone, as a share of what brings it to its end point. */
export const doseOf = (kinetics: Arrhenius, occupancy: Occupancy): number => {
  const { celsius, hours } = occupancy;
  let dose = 0;
  for (let i = 0; i < hours.length; i += 1) {
    dose += hours[i]! * doseRate(kinetics, celsius[i]!);
  }
  return dose;
};
