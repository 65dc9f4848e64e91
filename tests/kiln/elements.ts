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
  /** Parallel circuits of equal power; by turns they heat the upper and the lower half. */
  readonly circuits: number;
  /** Wire of all circuits, kg. */
  readonly massKg: number;
}

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

  /** Share of the circuits of a half that still carry current. */
  liveCircuits(half: 0 | 1): number {
    let live = 0;
    for (let circuit = half; circuit < this.#plan.circuits; circuit += 2) {
      if (!this.#open.has(circuit)) live++;
    }
    return live;
  }

  /** Power of one half's circuits fully on, W: V²/R of each live circuit, R at the wire's heat. */
  watts(half: 0 | 1, volts: number, wireCelsius: number): number {
    const ohms = this.#coldOhms * hotFactor(wireCelsius);
    return (this.liveCircuits(half) * volts * volts) / ohms;
  }

  /** Power over that of new elements at the rated voltage, at equal temperature. */
  shareOfNew(volts: number): number {
    const watts = this.watts(0, volts, 20) + this.watts(1, volts, 20);
    return watts / this.#plan.ratedWatts;
  }
}
