import { STEFAN_BOLTZMANN, ZERO_CELSIUS_KELVIN } from './physics.ts';
import type { Random } from './random.ts';

/** How much of each surrounding a couple takes its temperature from; weights are normalised. */
export interface CouplePlace {
  readonly air: number;
  readonly sides: number;
  readonly elements: number;
  readonly upperWare: number;
  readonly lowerWare: number;
}

export interface CouplePlan {
  readonly place: CouplePlace;
  /** Time constant at 1000 °C; longer when cold, where little radiation helps. */
  readonly lagSeconds: number;
  /** Error of the wire: reading less truth, a constant and a share of the temperature in °C. */
  readonly offsetC: number;
  readonly gain: number;
  /** Loss of reading per hour above 1050 °C, where the wire ages. */
  readonly driftCPerHour: number;
  /** Standard deviation of the slow wander of its cold junction. */
  readonly wanderC: number;
}

/** Through the wall at half height, its tip in the chamber's air. */
export const AT_THE_WALL: CouplePlace = {
  air: 0.4,
  sides: 0.24,
  elements: 0.14,
  upperWare: 0.12,
  lowerWare: 0.1,
};
export const AMONG_UPPER_WARE: CouplePlace = {
  air: 0.35,
  sides: 0.1,
  elements: 0.03,
  upperWare: 0.52,
  lowerWare: 0,
};
export const AMONG_LOWER_WARE: CouplePlace = {
  air: 0.35,
  sides: 0.1,
  elements: 0.03,
  upperWare: 0,
  lowerWare: 0.52,
};

export const USUAL_COUPLE: CouplePlan = {
  place: AT_THE_WALL,
  lagSeconds: 40,
  offsetC: 0,
  gain: 0,
  driftCPerHour: 0,
  wanderC: 0.15,
};

/** Tolerance classes of new wire of type K: the greater of a constant and a share of t. */
const TYPE_K_TOLERANCE = {
  // IEC 60584-1 class 1 and class 2; ASTM E230 standard grade.
  'class-1': [1.5, 0.004],
  'class-2': [2.5, 0.0075],
  standard: [2.2, 0.0075],
} as const;
export type CoupleClass = keyof typeof TYPE_K_TOLERANCE;

/**
 * A couple's error drawn evenly from within its class: where only bounds are known, the rectangular
 * distribution is the one to take (JCGM 100:2008, 4.3.7). The same share of the tolerance holds at
 * all temperatures that matter here, where the proportional part rules.
 */
export const errorWithin = (coupleClass: CoupleClass, random: Random): { gain: number } => ({
  gain: random.between(-1, 1) * TYPE_K_TOLERANCE[coupleClass][1],
});

/** Ageing of type K begins to tell above this, °C. */
const AGEING_FROM_C = 1050;
const REFERENCE_KELVIN = 1273;
/** Share of the convective film in the couple's total film at the reference (chosen). */
const CONVECTIVE_SHARE = 0.12;
/** The lag never grows beyond so many times that at 1000 °C. */
const LONGEST_LAG_FACTOR = 3;

const radiativeFilm = (kelvin: number): number => 4 * STEFAN_BOLTZMANN * kelvin ** 3;

/** A couple with the lag of its sheath and the faults of its wire. */
export class Couple {
  #tipC: number;
  #driftC = 0;
  readonly plan: CouplePlan;

  constructor(plan: CouplePlan, startC: number) {
    this.plan = plan;
    this.#tipC = startC;
  }

  /** The first-order lag at a temperature, s: film by air and radiation against that at 1000 °C. */
  lagSecondsAt(celsius: number): number {
    const film =
      CONVECTIVE_SHARE +
      ((1 - CONVECTIVE_SHARE) * radiativeFilm(celsius + ZERO_CELSIUS_KELVIN)) /
        radiativeFilm(REFERENCE_KELVIN);
    return this.plan.lagSeconds * Math.min(LONGEST_LAG_FACTOR, 1 / film);
  }

  /** Lets the tip follow its surroundings for a step (exact for a constant surrounding). */
  follow(spotC: number, stepSeconds: number): void {
    const share = 1 - Math.exp(-stepSeconds / this.lagSecondsAt(this.#tipC));
    this.#tipC += (spotC - this.#tipC) * share;
    if (this.#tipC > AGEING_FROM_C) this.#driftC += (this.plan.driftCPerHour * stepSeconds) / 3600;
  }

  /** Reading less truth at a temperature, with the ageing so far. */
  errorAt(celsius: number): number {
    return this.plan.offsetC + this.plan.gain * celsius - this.#driftC;
  }

  /** What it reads now, without noise and wander. */
  get readingC(): number {
    return this.#tipC + this.errorAt(this.#tipC);
  }

  get driftC(): number {
    return this.#driftC;
  }
}
