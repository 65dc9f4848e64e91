import type { LegTruth, ScheduleFile } from './types.ts';

/** A schedule's segment in °C. */
interface Segment {
  /** °C per hour; the time it takes instead; or as fast as can be. */
  readonly pace: { readonly rateCPerHour: number } | { readonly minutes: number } | 'full';
  readonly targetC: number;
  readonly holdSeconds: number;
}

const segmentsOf = ({ unit, segments }: ScheduleFile): Segment[] => {
  const degree = unit === 'C' ? 1 : 1.8;
  const zero = unit === 'C' ? 0 : 32;
  return segments.map(({ ratePerHour, minutes, target, holdMinutes = 0 }) => {
    const rate = ratePerHour === 'full' ? 'full' : { rateCPerHour: (ratePerHour ?? 0) / degree };
    return {
      pace: minutes === undefined ? rate : { minutes },
      targetC: (target - zero) / degree,
      holdSeconds: holdMinutes * 60,
    };
  });
};

/** A target counts as reached within this; a controller that waits then goes on. */
const ARRIVED_C = 1;

type OpenLeg = { -readonly [Key in keyof LegTruth]: LegTruth[Key] };

/**
 * The controller's programme: what the setpoint does. It also keeps the truth of its legs, which is
 * all that a later look at the trace tries to find.
 */
export class Programme {
  setpointC: number;
  /** How fast the setpoint moves just now, downwards negative. */
  rampCPerHour = 0;
  /** Downwards at full speed: no heat, whatever the setpoint says. */
  heatOff = false;
  done = false;
  waitedSeconds = 0;

  readonly #legs: OpenLeg[] = [];
  readonly #segments: readonly Segment[];
  /** How far the kiln may be behind before the ramp is held back; null: it never is. */
  readonly #waitBandC: number | null;
  #index = 0;
  /** How long this leg's clock stood still for want of power. */
  #pausedSeconds = 0;
  #ramp: OpenLeg;
  #leg: OpenLeg;

  /** The setpoint starts from the reading. */
  constructor(
    schedule: ScheduleFile,
    waitBandC: number | null,
    atSeconds: number,
    readingC: number,
  ) {
    this.#segments = segmentsOf(schedule);
    this.#waitBandC = waitBandC;
    this.setpointC = readingC;
    this.#ramp = this.#leg = this.#open('ramp', atSeconds);
  }

  get legs(): readonly LegTruth[] {
    return this.#legs;
  }

  /** Segments whose ramp is over. */
  get rampsEnded(): number {
    return this.#index + (this.#leg.kind === 'hold' || this.done ? 1 : 0);
  }

  /**
   * Moves on by a step that ends at `atSeconds`.
   * @returns whether the programme is over
   */
  advance(atSeconds: number, stepSeconds: number, readingC: number): boolean {
    if (this.done) return true;
    if (this.#ramp.arrivalSeconds === null && this.#arrived(readingC)) {
      this.#ramp.arrivalSeconds = atSeconds;
    }
    if (this.#leg.kind === 'ramp') {
      if (this.#moveSetpoint(stepSeconds, readingC)) this.#endLeg(atSeconds);
    } else {
      const { holdSeconds } = this.#segments[this.#index]!;
      const heldSeconds = atSeconds - this.#leg.startSeconds - this.#pausedSeconds;
      if (heldSeconds > holdSeconds - 1e-6) this.#endLeg(atSeconds);
    }
    return this.done;
  }

  /** Power is back after `awaySeconds`: a ramp goes on from the reading, a hold for its rest. */
  resume(awaySeconds: number, readingC: number): void {
    if (this.#leg.kind === 'hold') this.#pausedSeconds += awaySeconds;
    else this.setpointC = readingC;
  }

  /** Stops before its own end. */
  stop(atSeconds: number): void {
    if (this.done) return;
    this.#leg.endSeconds = atSeconds;
    this.done = true;
  }

  get #upwards(): boolean {
    return this.#ramp.targetC >= this.#ramp.startC;
  }

  /** Whether the kiln has come to the target, from the side it comes from. */
  #arrived(readingC: number): boolean {
    const behindC = this.#ramp.targetC - readingC;
    return (this.#upwards ? behindC : -behindC) <= ARRIVED_C;
  }

  /** @returns whether the ramp is over */
  #moveSetpoint(stepSeconds: number, readingC: number): boolean {
    const { pace, targetC } = this.#segments[this.#index]!;
    if (pace === 'full') {
      this.setpointC = targetC;
      this.heatOff = !this.#upwards;
      return this.#arrived(readingC);
    }
    const sign = this.#upwards ? 1 : -1;
    const rateCPerHour =
      'minutes' in pace
        ? (Math.abs(targetC - this.#ramp.startC) * 60) / pace.minutes
        : pace.rateCPerHour;
    // Until the ramp is over, the controller asks for the power that it takes, waiting or not.
    this.rampCPerHour = sign * rateCPerHour;
    if (this.#waitBandC !== null && sign * (this.setpointC - readingC) > this.#waitBandC) {
      this.waitedSeconds += stepSeconds;
      return false;
    }
    const leftC = sign * (targetC - this.setpointC);
    const moveC = (rateCPerHour * stepSeconds) / 3600;
    this.setpointC = moveC < leftC ? this.setpointC + sign * moveC : targetC;
    return moveC >= leftC && (this.#waitBandC === null || this.#arrived(readingC));
  }

  #endLeg(atSeconds: number): void {
    this.#leg.endSeconds = atSeconds;
    this.#leg.complete = true;
    this.rampCPerHour = 0;
    this.heatOff = false;
    this.#pausedSeconds = 0;
    if (this.#leg.kind === 'ramp' && this.#segments[this.#index]!.holdSeconds > 0) {
      this.#leg = this.#open('hold', atSeconds);
      return;
    }
    this.#index++;
    if (this.#index === this.#segments.length) this.done = true;
    else this.#ramp = this.#leg = this.#open('ramp', atSeconds);
  }

  #open(kind: LegTruth['kind'], atSeconds: number): OpenLeg {
    const leg: OpenLeg = {
      segment: this.#index,
      kind,
      startSeconds: atSeconds,
      endSeconds: NaN,
      startC: this.setpointC,
      targetC: this.#segments[this.#index]!.targetC,
      arrivalSeconds: null,
      complete: false,
    };
    this.#legs.push(leg);
    return leg;
  }
}
