import type { Tuning } from './pid.ts';
import { Pid } from './pid.ts';
import { Programme } from './programme.ts';
import type { Random } from './random.ts';
import type { ControllerPlan, ScheduleFile, Truth } from './types.ts';

/** Noise that the controller's own filter leaves on its reading, °C. */
const NOISE_C = 0.05;

/** The programme, the loop that follows it, and the relays: a kiln controller. */
export class Controller {
  /** Share of full power asked for, 0 to 1. */
  demand = 0;
  ended: Truth['ended'] = 'still-running';
  shutOffSeconds: number | null = null;
  /** The running programme; null until it is started. */
  programme: Programme | null = null;

  readonly #plan: ControllerPlan;
  readonly #schedule: ScheduleFile;
  readonly #startSeconds: number;
  readonly #pid: Pid;
  readonly #random: Random;
  #powerLostSeconds: number | null = null;
  #cycleStart = -Infinity;
  #closedUntil = -Infinity;

  constructor(
    plan: ControllerPlan,
    schedule: ScheduleFile,
    startSeconds: number,
    tuning: Tuning,
    random: Random,
  ) {
    this.#plan = plan;
    this.#schedule = schedule;
    this.#startSeconds = startSeconds;
    this.#pid = new Pid(tuning);
    this.#random = random;
  }

  /** What the display shows as setpoint; NaN when no programme runs. */
  get setpointC(): number {
    const { programme } = this;
    const shown = programme !== null && !programme.done && this.#powerLostSeconds === null;
    return shown ? programme.setpointC : NaN;
  }

  /** Takes a reading at the beginning of a step and decides on the power. */
  update(atSeconds: number, stepSeconds: number, readingC: number, hasPower: boolean): void {
    this.demand = 0;
    if (!hasPower) {
      this.#powerLostSeconds ??= atSeconds;
      return;
    }
    if (this.programme === null) {
      if (atSeconds < this.#startSeconds) return;
      const { waits, waitBandC } = this.#plan;
      const band = waits ? waitBandC : null;
      this.programme = new Programme(this.#schedule, band, atSeconds, readingC);
    }
    this.#pickUp(this.programme, atSeconds, readingC);
    this.#follow(this.programme, atSeconds, stepSeconds, readingC);
  }

  /** Goes on after a power cut. */
  #pickUp(programme: Programme, atSeconds: number, readingC: number): void {
    if (this.#powerLostSeconds === null) return;
    programme.resume(atSeconds - this.#powerLostSeconds, readingC);
    this.#pid.reset();
    this.#powerLostSeconds = null;
  }

  #follow(programme: Programme, atSeconds: number, stepSeconds: number, readingC: number): void {
    if (programme.done) return;
    const over = programme.advance(atSeconds, stepSeconds, readingC);
    const limitSeconds = (this.#plan.limitMinutes ?? Infinity) * 60;
    if (over) this.#end('complete', atSeconds);
    else if (atSeconds - this.#startSeconds >= limitSeconds) this.#end('timed-out', atSeconds);
    else {
      const seenC = readingC + NOISE_C * this.#random.normal();
      const { setpointC, rampCPerHour } = programme;
      const output = this.#pid.output(setpointC, rampCPerHour, seenC, stepSeconds);
      this.demand = programme.heatOff ? 0 : output;
    }
  }

  /** Someone presses stop. */
  abort(atSeconds: number): void {
    if (this.programme !== null && !this.programme.done) this.#end('aborted', atSeconds);
    this.demand = 0;
  }

  #end(how: Truth['ended'], atSeconds: number): void {
    this.programme!.stop(atSeconds);
    this.ended = how;
    this.shutOffSeconds = atSeconds;
  }

  /** Share of the coming step during which the relays are closed: time-proportioned output. */
  relayShare(atSeconds: number, stepSeconds: number): number {
    if (atSeconds >= this.#cycleStart + this.#plan.cycleSeconds) {
      this.#cycleStart = atSeconds;
      this.#closedUntil = atSeconds + this.demand * this.#plan.cycleSeconds;
    }
    if (this.demand === 0) return 0;
    return Math.min(1, Math.max(0, (this.#closedUntil - atSeconds) / stepSeconds));
  }
}
