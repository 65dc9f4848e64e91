import type { ElementsPlan } from './elements.ts';
import { Elements, WIRE_HEAT_CAPACITY } from './elements.ts';
import type { LinkPlan, NodePlan } from './network.ts';
import { Network } from './network.ts';
import { FREE_FALL, ZERO_CELSIUS_KELVIN } from './physics.ts';
import type { WallPlan } from './wall.ts';
import { Wall } from './wall.ts';
import type { WareState } from './ware.ts';
import { Ware } from './ware.ts';

/** A kiln as built. Every exchange area holds emissivities and views within it. */
export interface KilnPlan {
  readonly name: string;
  readonly sides: WallPlan;
  /** Floor and lid together. */
  readonly ends: WallPlan;
  readonly elements: ElementsPlan;
  readonly chamber: ChamberPlan;
  readonly furnitureKg: number;
}

export interface ChamberPlan {
  readonly heightM: number;
  /** Radiation from all elements to sides, ends and ware, m². */
  readonly elementsToSidesM2: number;
  readonly elementsToEndsM2: number;
  readonly elementsToWareM2: number;
  readonly sidesToEndsM2: number;
  /** Between the upper and the lower half of the sides, m². */
  readonly sidesToSidesM2: number;
  readonly sidesToWareM2: number;
  readonly endsToWareM2: number;
  /** Between the upper and the lower stack, m². */
  readonly wareToWareM2: number;
  /** Free convection inside, W/(m²·K), and the areas that it serves. */
  readonly convectionWPerM2K: number;
  readonly elementsAreaM2: number;
  readonly wareAreaM2: number;
  /** Open area of the gap at the lid through which hot air leaves, m². */
  readonly lidGapM2: number;
  /** Open spy-hole, m²: radiates straight out. */
  readonly spyHoleM2: number;
  /** Heat bridges past the brick (element tails, lid seam), W/K. */
  readonly bridgeWPerK: number;
}

export interface Load {
  readonly massKg: number;
  readonly state: WareState;
  readonly dampShare: number;
  /** 1: ware in plain view of the elements; below: boxed in by shelves and neighbours. */
  readonly coupling: number;
}

const UPPER_ELEMENTS = 0;
const LOWER_ELEMENTS = 1;
const AIR = 2;
const UPPER_WARE = 3;
const LOWER_WARE = 4;
const UPPER_SIDES = 5;
const LOWER_SIDES = 6;
const LID = 7;
const FLOOR = 8;
const ROOM = 9;

/** How much of what a half radiates sideways meets its own half. */
const OWN_HALF = 0.96;

/** Specific heat of air, J/(kg·K), and its density at 0 °C and one atmosphere, kg/m³ (tables). */
const AIR_HEAT = 1100;
const AIR_DENSITY = 1.293;
/** Share of the ideal flow that passes a narrow gap (chosen within the usual 0.6–0.65). */
const DISCHARGE = 0.6;

/** The hot insides of a kiln and what they lose; temperatures in °C outwards. */
export class Kiln {
  readonly #network: Network;
  readonly #walls: readonly Wall[];
  readonly #elements: Elements;
  readonly #ware: readonly [Ware, Ware];
  readonly #plan: KilnPlan;
  readonly #lidLink: number;

  constructor(plan: KilnPlan, load: Load, roomC: number, startC: number, wear: number) {
    this.#plan = plan;
    this.#elements = new Elements(plan.elements, wear);
    const half = {
      massKg: load.massKg / 2,
      state: load.state,
      dampShare: load.dampShare,
      furnitureKg: plan.furnitureKg / 2,
    };
    this.#ware = [new Ware(half), new Ware(half)];
    const startKelvin = startC + ZERO_CELSIUS_KELVIN;
    const upperSides = new Wall(halfOf(plan.sides), startKelvin);
    const lowerSides = new Wall(halfOf(plan.sides), startKelvin);
    const lid = new Wall(halfOf(plan.ends), startKelvin);
    const floor = new Wall(halfOf(plan.ends), startKelvin);
    this.#walls = [upperSides, lowerSides, lid, floor];
    const links = linksOf(plan, load);
    this.#lidLink = links.push({ a: AIR, b: ROOM, wattsPerKelvin: 0 }) - 1;
    this.#network = new Network(this.#nodes(startKelvin, roomC), links, [
      { wall: upperSides, face: UPPER_SIDES, room: ROOM },
      { wall: lowerSides, face: LOWER_SIDES, room: ROOM },
      { wall: lid, face: LID, room: ROOM },
      { wall: floor, face: FLOOR, room: ROOM },
    ]);
  }

  #nodes(startKelvin: number, roomC: number): NodePlan[] {
    const wire = (kelvin: number): number =>
      (this.#plan.elements.massKg / 2) *
      (WIRE_HEAT_CAPACITY[0] + WIRE_HEAT_CAPACITY[1] * (kelvin - ZERO_CELSIUS_KELVIN));
    const [upper, lower] = this.#ware;
    const capacities: [string, NodePlan['capacityJPerK']][] = [
      ['upper elements', wire],
      ['lower elements', wire],
      ['air', 0],
      ['upper ware', (kelvin) => upper.capacityJPerK(kelvin - ZERO_CELSIUS_KELVIN)],
      ['lower ware', (kelvin) => lower.capacityJPerK(kelvin - ZERO_CELSIUS_KELVIN)],
      ['upper sides', 0],
      ['lower sides', 0],
      ['lid', 0],
      ['floor', 0],
    ];
    return [
      ...capacities.map(([name, capacityJPerK]) => ({ name, capacityJPerK, startKelvin })),
      { name: 'room', capacityJPerK: Infinity, startKelvin: roomC + ZERO_CELSIUS_KELVIN },
    ];
  }

  /**
   * Steps the kiln.
   * @param onShare share of the step during which the relays are closed
   */
  step(stepSeconds: number, onShare: number, volts: number, roomC: number): void {
    const network = this.#network;
    network.kelvin[ROOM] = roomC + ZERO_CELSIUS_KELVIN;
    const upper = this.#elements.watts('upper', volts, this.#celsius(UPPER_ELEMENTS));
    const lower = this.#elements.watts('lower', volts, this.#celsius(LOWER_ELEMENTS));
    network.watts[UPPER_ELEMENTS] = upper * onShare;
    network.watts[LOWER_ELEMENTS] = lower * onShare;
    network.setConductance(this.#lidLink, this.#draughtWPerK());
    network.step(stepSeconds);
    this.#ware[0].reached(this.upperWareC);
    this.#ware[1].reached(this.lowerWareC);
  }

  openCircuit(circuit: number): void {
    this.#elements.openCircuit(circuit);
  }

  /** Power that the elements could draw over that of new ones at the rated voltage. */
  relativePower(volts: number): number {
    return this.#elements.shareOfNew(volts);
  }

  #celsius(node: number): number {
    return this.#network.kelvin[node]! - ZERO_CELSIUS_KELVIN;
  }

  /** Heat carried out at the lid by the chamber's own draught (stack effect), per K. */
  #draughtWPerK(): number {
    const hot = this.#network.kelvin[AIR]!;
    const room = this.#network.kelvin[ROOM]!;
    if (hot <= room) return 0;
    const { heightM, lidGapM2 } = this.#plan.chamber;
    const speed = Math.sqrt(2 * FREE_FALL * heightM * (hot / room - 1));
    const density = (AIR_DENSITY * ZERO_CELSIUS_KELVIN) / hot;
    return DISCHARGE * lidGapM2 * speed * density * AIR_HEAT;
  }

  get elementsC(): number {
    return (this.#celsius(UPPER_ELEMENTS) + this.#celsius(LOWER_ELEMENTS)) / 2;
  }
  get airC(): number {
    return this.#celsius(AIR);
  }
  get sidesC(): number {
    return (this.#celsius(UPPER_SIDES) + this.#celsius(LOWER_SIDES)) / 2;
  }
  get upperWareC(): number {
    return this.#celsius(UPPER_WARE);
  }
  get lowerWareC(): number {
    return this.#celsius(LOWER_WARE);
  }

  /** Energy put in and given off since the start, and what the walls hold above 0 °C, J. */
  get energy(): { suppliedJ: number; lostJ: number; wallsJ: number } {
    const walls = this.#walls;
    return {
      suppliedJ: this.#network.suppliedJ,
      lostJ: this.#network.lostByLinksJ + walls.reduce((sum, wall) => sum + wall.lostJ, 0),
      wallsJ: walls.reduce((sum, wall) => sum + wall.storedJ(), 0),
    };
  }
}

const halfOf = (wall: WallPlan): WallPlan => ({
  ...wall,
  innerAreaM2: wall.innerAreaM2 / 2,
  outerAreaM2: wall.outerAreaM2 / 2,
});

const radiation = (a: number, b: number, exchangeAreaM2: number): LinkPlan => ({
  a,
  b,
  exchangeAreaM2,
});

/** Radiation from the halves of one thing to those of another, most of it to the same half. */
const halves = (
  [upperA, lowerA]: readonly [number, number],
  [upperB, lowerB]: readonly [number, number],
  exchangeAreaM2: number,
): LinkPlan[] => {
  const ownM2 = (exchangeAreaM2 / 2) * OWN_HALF;
  const otherM2 = (exchangeAreaM2 / 2) * (1 - OWN_HALF);
  return [
    radiation(upperA, upperB, ownM2),
    radiation(lowerA, upperB, otherM2),
    radiation(lowerA, lowerB, ownM2),
    radiation(upperA, lowerB, otherM2),
  ];
};

const ELEMENTS = [UPPER_ELEMENTS, LOWER_ELEMENTS] as const;
const WARE = [UPPER_WARE, LOWER_WARE] as const;
const SIDES = [UPPER_SIDES, LOWER_SIDES] as const;
const ENDS = [LID, FLOOR] as const;

/** All ways that heat takes inside the chamber, and out of it past the walls. */
const linksOf = (plan: KilnPlan, { coupling }: Load): LinkPlan[] => {
  const { chamber } = plan;
  const convection = (node: number, areaM2: number): LinkPlan => ({
    a: AIR,
    b: node,
    wattsPerKelvin: chamber.convectionWPerM2K * areaM2,
  });
  return [
    ...halves(ELEMENTS, WARE, chamber.elementsToWareM2 * coupling),
    ...halves(ELEMENTS, SIDES, chamber.elementsToSidesM2),
    ...halves(SIDES, WARE, chamber.sidesToWareM2 * coupling),
    ...halves(ELEMENTS, ENDS, chamber.elementsToEndsM2),
    ...halves(WARE, ENDS, chamber.endsToWareM2 * coupling),
    ...halves(SIDES, ENDS, chamber.sidesToEndsM2),
    radiation(UPPER_WARE, LOWER_WARE, chamber.wareToWareM2),
    radiation(UPPER_SIDES, LOWER_SIDES, chamber.sidesToSidesM2),
    radiation(UPPER_SIDES, ROOM, chamber.spyHoleM2),
    ...ELEMENTS.map((node) => convection(node, chamber.elementsAreaM2 / 2)),
    ...WARE.map((node) => convection(node, (chamber.wareAreaM2 / 2) * coupling)),
    ...SIDES.map((node) => convection(node, plan.sides.innerAreaM2 / 2)),
    ...ENDS.map((node) => convection(node, plan.ends.innerAreaM2 / 2)),
    { a: LOWER_SIDES, b: ROOM, wattsPerKelvin: chamber.bridgeWPerK },
  ];
};
