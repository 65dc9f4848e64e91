import { Controller } from './controller.ts';
import type { CouplePlace, CouplePlan } from './couple.ts';
import { Couple, USUAL_COUPLE } from './couple.ts';
import { FaultClock } from './faults.ts';
import { Kiln } from './kiln.ts';
import { held, loggedReadings, sampled, sampleTimes } from './logger.ts';
import type { Random } from './random.ts';
import { seededRandom } from './random.ts';
import { usualTuning } from './tuning.ts';
import type { ControllerPlan, Firing, LoggerPlan, Setup, Stretch, Truth } from './types.ts';
import { Wander } from './wander.ts';

const STEP_SECONDS = 5;
const USUAL_LOGGER: LoggerPlan = {
  intervalSeconds: 30,
  jitterSeconds: 0,
  noiseC: 0.3,
  rounding: { unit: 'C', step: 0.1 },
};
const USUAL_CONTROLLER: ControllerPlan = { waits: true, waitBandC: 6, cycleSeconds: 20 };
const USUAL_RECORD = { untilC: 80, atMostHours: 48 };
/** Standard deviation of the supply voltage, as a share (chosen). */
const USUAL_SUPPLY_WANDER = 0.004;

/** The room follows the kiln's warmth with about this delay, s (chosen). */
const ROOM_SECONDS = 4 * 3600;
/** A demand of at least this counts as all the power there is, %. */
const FULL_PERCENT = 99;
const SHORTEST_FULL_SECONDS = 120;

/** What every internal step leaves behind, by step number. */
class Steps {
  count = 0;
  readonly readingC: Float64Array;
  readonly upperWareC: Float64Array;
  readonly lowerWareC: Float64Array;
  readonly spotC: Float64Array;
  readonly setpointC: Float64Array;
  readonly outputPercent: Float64Array;
  readonly zonesC: readonly Float64Array[];

  constructor(capacity: number, zones: number) {
    const column = (): Float64Array => new Float64Array(capacity);
    this.readingC = column();
    this.upperWareC = column();
    this.lowerWareC = column();
    this.spotC = column();
    this.setpointC = column();
    this.outputPercent = column();
    this.zonesC = Array.from({ length: zones }, column);
  }
}

/** What a couple's place is at, °C. */
const spotOf = (kiln: Kiln, place: CouplePlace): number =>
  (place.air * kiln.airC +
    place.sides * kiln.sidesC +
    place.elements * kiln.elementsC +
    place.upperWare * kiln.upperWareC +
    place.lowerWare * kiln.lowerWareC) /
  (place.air + place.sides + place.elements + place.upperWare + place.lowerWare);

/** One firing under way: kiln, couples, controller and faults, step by step. */
class Run {
  readonly couples: readonly Couple[];
  readonly controller: Controller;
  readonly faults: FaultClock;
  readonly steps: Steps;
  readonly stepSeconds: number;
  lastHeatSeconds = 0;
  peakC = -Infinity;
  powerAtPeak = 1;

  readonly #setup: Setup;
  readonly #kiln: Kiln;
  readonly #supply: Wander;
  readonly #junctions: readonly Wander[];

  constructor(setup: Setup, random: Random) {
    const { kiln, roomC, startC = roomC, ware = 'fired', dampShare = 0, coupling = 1 } = setup;
    const couplePlans: CouplePlan[] = [setup.couple, ...(setup.zones ?? [])].map((plan) => ({
      ...USUAL_COUPLE,
      ...plan,
    }));
    const controller = { ...USUAL_CONTROLLER, ...setup.controller };
    const load = { massKg: setup.loadKg, state: ware, dampShare, coupling };
    this.#setup = setup;
    this.#kiln = new Kiln(kiln, load, roomC, startC, setup.elementWear ?? 1);
    this.#supply = new Wander(setup.supply?.wander ?? USUAL_SUPPLY_WANDER, random.fork('supply'));
    this.#junctions = couplePlans.map(
      ({ wanderC }, i) => new Wander(wanderC, random.fork(`junction ${i}`)),
    );
    this.couples = couplePlans.map((plan) => new Couple(plan, startC));
    this.controller = new Controller(
      controller,
      setup.schedule,
      (setup.idleMinutes ?? 0) * 60,
      controller.tuning ?? usualTuning(kiln),
      random.fork('controller'),
    );
    this.faults = new FaultClock(setup.faults ?? []);
    this.stepSeconds = setup.stepSeconds ?? STEP_SECONDS;
    const { atMostHours, untilC } = { ...USUAL_RECORD, ...setup.record };
    this.steps = new Steps(
      Math.ceil((atMostHours * 3600) / this.stepSeconds) + 1,
      couplePlans.length - 1,
    );
    this.#fire(untilC);
  }

  #fire(untilC: number): void {
    const { steps, controller, stepSeconds } = this;
    while (steps.count < steps.readingC.length) {
      const now = steps.count * stepSeconds;
      const readingC = this.#reading(0);
      this.#meetFaults(now, readingC);
      controller.update(now, stepSeconds, readingC, !this.faults.isOn('power-cut', now));
      this.#write(readingC);
      if (controller.programme?.done && readingC <= untilC) break;
      this.#heat(now);
    }
  }

  #reading(couple: number): number {
    return this.couples[couple]!.readingC + this.#junctions[couple]!.value;
  }

  #meetFaults(now: number, readingC: number): void {
    const { programme } = this.controller;
    const begun = this.faults.look({
      atSeconds: now,
      readingC,
      heating: programme !== null && !programme.done,
      rampsEnded: programme?.rampsEnded ?? 0,
    });
    for (const fault of begun) {
      if (fault.kind === 'circuit-open') this.#kiln.openCircuit(fault.circuit);
      if (fault.kind === 'abort') this.controller.abort(now);
    }
  }

  #write(readingC: number): void {
    const { steps } = this;
    const kiln = this.#kiln;
    const i = steps.count++;
    steps.readingC[i] = readingC;
    steps.upperWareC[i] = kiln.upperWareC;
    steps.lowerWareC[i] = kiln.lowerWareC;
    steps.spotC[i] = spotOf(kiln, this.couples[0]!.plan.place);
    steps.setpointC[i] = this.controller.setpointC;
    steps.outputPercent[i] = this.controller.demand * 100;
    steps.zonesC.forEach((column, zone) => (column[i] = this.#reading(zone + 1)));
  }

  /** The step itself: power, heat, and what the couples feel of it. */
  #heat(now: number): void {
    const { supply, roomC, roomWarmsC = 0 } = this.#setup;
    const kiln = this.#kiln;
    const volts =
      this.#setup.kiln.elements.ratedVolts * ((supply?.factor ?? 1) + this.#supply.value);
    const relay = this.controller.relayShare(now, this.stepSeconds);
    const stuck = this.faults.isOn('relay-stuck', now);
    const onShare = this.faults.isOn('power-cut', now) ? 0 : stuck ? 1 : relay;
    if (onShare > 0) this.lastHeatSeconds = now + this.stepSeconds * onShare;
    const roomNowC = roomC + roomWarmsC * (1 - Math.exp(-now / ROOM_SECONDS));
    kiln.step(this.stepSeconds, onShare, volts, roomNowC);
    this.#supply.step(this.stepSeconds);
    this.couples.forEach((couple, i) => {
      couple.follow(spotOf(kiln, couple.plan.place), this.stepSeconds);
      this.#junctions[i]!.step(this.stepSeconds);
    });
    const truthC = spotOf(kiln, this.couples[0]!.plan.place);
    if (truthC > this.peakC) {
      this.peakC = truthC;
      this.powerAtPeak = kiln.relativePower(volts);
    }
  }
}

const fullPowerStretches = ({ steps, stepSeconds }: Run): Stretch[] => {
  const stretches: Stretch[] = [];
  let from = -1;
  for (let i = 0; i <= steps.count; i++) {
    const full = i < steps.count && steps.outputPercent[i]! >= FULL_PERCENT;
    if (full && from < 0) from = i;
    if (full || from < 0) continue;
    const stretch = { fromSeconds: from * stepSeconds, toSeconds: i * stepSeconds };
    if (stretch.toSeconds - stretch.fromSeconds >= SHORTEST_FULL_SECONDS) stretches.push(stretch);
    from = -1;
  }
  return stretches;
};

const truthOf = (run: Run, idleMinutes: number): Truth => {
  const { controller, couples, faults, steps, stepSeconds } = run;
  const [couple] = couples;
  const untilSeconds = (steps.count - 1) * stepSeconds;
  return {
    programmeStartSeconds: idleMinutes * 60,
    legs: controller.programme?.legs ?? [],
    ended: controller.ended,
    shutOffSeconds: controller.shutOffSeconds,
    lastHeatSeconds: run.lastHeatSeconds,
    fullPower: fullPowerStretches(run),
    waitedSeconds: controller.programme?.waitedSeconds ?? 0,
    faults: faults.timed.map(({ fault, fromSeconds, toSeconds }) => ({
      kind: fault.kind,
      fromSeconds,
      toSeconds: Math.min(toSeconds, untilSeconds),
    })),
    couple: {
      atPeakC: couple!.errorAt(run.peakC),
      at100C: couple!.errorAt(100),
      driftC: couple!.driftC,
    },
    relativePower: run.powerAtPeak,
  };
};

/**
 * Fires the kiln: the same setup gives the same firing to the last bit. Throws a RangeError if the
 * schedule has no segments.
 */
export const fire = (setup: Setup): Firing => {
  if (setup.schedule.segments.length === 0) throw new RangeError('a schedule without segments');
  const random = seededRandom(setup.seed);
  const run = new Run(setup, random);
  const { steps, stepSeconds, faults } = run;
  const logger = { ...USUAL_LOGGER, ...setup.logger };
  const untilSeconds = (steps.count - 1) * stepSeconds;
  const atSeconds = sampleTimes(logger, untilSeconds, faults.timed, random.fork('clock'));
  const smooth = (column: Float64Array): Float64Array =>
    sampled(column.subarray(0, steps.count), stepSeconds, atSeconds);
  const stepped = (column: Float64Array): Float64Array =>
    held(column.subarray(0, steps.count), stepSeconds, atSeconds);
  const logged = (column: Float64Array, name: string): Float64Array =>
    loggedReadings(smooth(column), atSeconds, logger, faults.timed, random.fork(name));
  const trueUpperWareC = smooth(steps.upperWareC);
  const trueLowerWareC = smooth(steps.lowerWareC);
  return {
    atSeconds,
    readingC: logged(steps.readingC, 'main couple'),
    zoneReadingsC: steps.zonesC.map((column, i) => logged(column, `zone ${i}`)),
    trueWareC: trueUpperWareC.map((upper, i) => (upper + trueLowerWareC[i]!) / 2),
    trueUpperWareC,
    trueLowerWareC,
    trueSensorSpotC: smooth(steps.spotC),
    setpointC: stepped(steps.setpointC),
    outputPercent: stepped(steps.outputPercent),
    truth: truthOf(run, setup.idleMinutes ?? 0),
  };
};
