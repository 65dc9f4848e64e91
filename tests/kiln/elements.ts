/**
 * Hot over cold resistance of iron-chromium-aluminium heating wire against °C, from an alloy maker's
 * data sheet; straight lines between the printed points.
 */
const HOT_FACTOR: readonly (readonly [celsius: number, factor: number])[] = [
  [20, 1.0],
  [400, 1.0],
  [500, 1.01],
  [600, 1.02],
  [700, 1.02],
  [800, 1.03],
  [900, 1.03],
  [1000, 1.04],
  [1300, 1.04],
  [1400, 1.05],
];

/** Hot over cold resistance of the wire at a temperature; the end values beyond the table. */
export const hotFactor = (celsius: number): number => {
  for (let i = 1; i < HOT_FACTOR.length; i++) {
    const [upper, upperFactor] = HOT_FACTOR[i]!;
    if (celsius >= upper) continue;
    const [lower, lowerFactor] = HOT_FACTOR[i - 1]!;
    const share = Math.max(0, (celsius - lower) / (upper - lower));
    return lowerFactor + share * (upperFactor - lowerFactor);
  }
  return HOT_FACTOR.at(-1)![1];
};

/** Heat capacity of the wire, J/(kg·K): c0 + c1·t, from memory (about 460 cold, 750 hot). */
export const WIRE_HEAT_CAPACITY: readonly [c0: number, c1: number] = [460, 0.25];

export interface ElementsPlan {
  /** All circuits together, new and cold, at the rated voltage. */
  readonly ratedWatts: number;
  readonly ratedVolts: number;
  /** Parallel circuits of equal power, one above the other, the first at the bottom. */
  readonly circuits: number;
  /** Share of the power that is wired into the upper half; 0.5 is even. */
  readonly upperShare: number;
  /** Wire of all circuits, kg. */
  readonly massKg: number;
}

/** Half of the kiln's height. */
export type Half = 'upper' | 'lower';

/** Electrical state of the circuits: what each would draw at a voltage and wire temperature. */
export class Elements {
  readonly #open = new Set<number>();
  readonly #coldOhms: number;
  readonly #plan: ElementsPlan;

  /** @param resistanceFactor cold resistance against new wire; rises with wear. */
  constructor(plan: ElementsPlan, resistanceFactor: number) {
    this.#plan = plan;
    const wattsEach = plan.ratedWatts / plan.circuits;
    this.#coldOhms = (plan.ratedVolts ** 2 / wattsEach) * resistanceFactor;
  }

  openCircuit(circuit: number): void {
    this.#open.add(circuit % this.#plan.circuits);
  }

  /** How many circuits' worth of heating a half has left; a middle one counts half to each. */
  liveCircuits(half: Half): number {
    const { circuits } = this.#plan;
    let live = 0;
    for (let circuit = 0; circuit < circuits; circuit++) {
      if (this.#open.has(circuit)) continue;
      const lowerPart = Math.min(1, Math.max(0, circuits / 2 - circuit));
      live += half === 'lower' ? lowerPart : 1 - lowerPart;
    }
    return live;
  }

  /** Power of one half's circuits fully on, W: V²/R of each live circuit, R at the wire's heat. */
  watts(half: Half, volts: number, wireCelsius: number): number {
    const ohms = this.#coldOhms * hotFactor(wireCelsius);
    const { upperShare } = this.#plan;
    const density = 2 * (half === 'upper' ? upperShare : 1 - upperShare);
    return (density * this.liveCircuits(half) * volts * volts) / ohms;
  }

  /** Power over that of new elements at the rated voltage, at equal temperature. */
  shareOfNew(volts: number): number {
    const watts = this.watts('upper', volts, 20) + this.watts('lower', volts, 20);
    return watts / this.#plan.ratedWatts;
  }
}
