/**
 * What heats up besides the kiln: pots and the shelves and props that carry them. Fired clay takes
 * heat smoothly with a small hump at the quartz inversion; green ware also gives off its damp near
 * the boiling point and its bound water through red heat, once and for good. Figures from memory,
 * within what is usual for stoneware bodies.
 */
export type WareState = 'green' | 'fired';

export interface WarePlan {
  readonly massKg: number;
  readonly state: WareState;
  /** Free water left in green ware, as a share of its mass. */
  readonly dampShare: number;
  readonly furnitureKg: number;
}

/** c = c0 + c1·t of fired clay and of shelves, J/(kg·K) with t in °C. */
const CLAY: readonly [number, number] = [800, 0.36];
const FURNITURE: readonly [number, number] = [820, 0.3];

/** Heat of something that happens round a temperature, bell-shaped over °C. */
interface Event {
  readonly middleC: number;
  readonly spreadC: number;
  /** J per kg of ware. */
  readonly heatJPerKg: number;
  /** Happens only where the ware is hotter than it has ever been. */
  readonly once: boolean;
}

/** α–β quartz at 573 °C in a body with a quarter of quartz. */
const QUARTZ: Event = { middleC: 573, spreadC: 8, heatJPerKg: 3_000, once: false };
/** Bound water of a clay body: the net effect over the range that sources give, 350–700 °C. */
const BOUND_WATER: Event = { middleC: 540, spreadC: 55, heatJPerKg: 250_000, once: true };
/** Heat of evaporation of water, J/kg (steam tables, 100 °C). */
const EVAPORATION = 2_257_000;

const bell = (event: Event, celsius: number): number => {
  const away = (celsius - event.middleC) / event.spreadC;
  if (away > 5 || away < -5) return 0;
  return (
    (event.heatJPerKg / (event.spreadC * Math.sqrt(2 * Math.PI))) * Math.exp((-away * away) / 2)
  );
};

/** One stack of ware with its furniture; remembers how hot it has been. */
export class Ware {
  readonly #plan: WarePlan;
  readonly #events: readonly Event[];
  #hottestC = -Infinity;

  constructor(plan: WarePlan) {
    this.#plan = plan;
    const drying: Event = {
      middleC: 96,
      spreadC: 14,
      heatJPerKg: EVAPORATION * plan.dampShare,
      once: true,
    };
    this.#events = plan.state === 'green' ? [QUARTZ, BOUND_WATER, drying] : [QUARTZ];
  }

  /** Heat capacity of ware and furniture at a temperature, J/K, with what happens there. */
  capacityJPerK(celsius: number): number {
    const { massKg, furnitureKg } = this.#plan;
    let perKg = CLAY[0] + CLAY[1] * celsius;
    for (const event of this.#events) {
      if (!event.once || celsius >= this.#hottestC) perKg += bell(event, celsius);
    }
    return massKg * perKg + furnitureKg * (FURNITURE[0] + FURNITURE[1] * celsius);
  }

  /** To be told after each step, so that water once gone is not driven off again. */
  reached(celsius: number): void {
    if (celsius > this.#hottestC) this.#hottestC = celsius;
  }
}
