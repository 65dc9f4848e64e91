/** When a fault begins; temperatures are the couple's reading on the way up. */
export type Moment =
  | { readonly atSeconds: number }
  | { readonly heatingPastC: number }
  /** The controller ends the ramp of this segment. */
  | { readonly rampEndOf: number };

/** Something that goes wrong, in the kiln or in the record of it. */
export type Fault =
  /** One of the parallel element circuits opens, for good. */
  | { readonly kind: 'circuit-open'; readonly when: Moment; readonly circuit: number }
  /** Relays stay closed whatever the controller asks for. */
  | { readonly kind: 'relay-stuck'; readonly when: Moment; readonly minutes: number }
  /** No power to kiln and controller; the logger runs on from its battery. */
  | { readonly kind: 'power-cut'; readonly when: Moment; readonly minutes: number }
  /** Someone stops the programme. */
  | { readonly kind: 'abort'; readonly when: Moment }
  /** The logger's line to the couple is open: rows without a reading. */
  | { readonly kind: 'couple-open'; readonly when: Moment; readonly minutes: number }
  /** Readings leap by up to `sizeC`, one in `everySamples`. */
  | {
      readonly kind: 'couple-spikes';
      readonly when: Moment;
      readonly minutes: number;
      readonly everySamples: number;
      readonly sizeC: number;
    }
  /** The reading stays where it was. */
  | { readonly kind: 'couple-flat'; readonly when: Moment; readonly minutes: number }
  /** No rows at all. */
  | { readonly kind: 'log-gap'; readonly when: Moment; readonly minutes: number }
  /** Rows only so often. */
  | {
      readonly kind: 'log-coarse';
      readonly when: Moment;
      readonly minutes: number;
      readonly intervalSeconds: number;
    };

/** A fault with its times; `toSeconds` is Infinity for what lasts. */
export interface TimedFault {
  readonly fault: Fault;
  readonly fromSeconds: number;
  readonly toSeconds: number;
}

/** What the faults' moments are held against, step by step. */
export interface Situation {
  readonly atSeconds: number;
  readonly readingC: number;
  readonly heating: boolean;
  /** Segments whose ramp the controller has ended. */
  readonly rampsEnded: number;
}

const hasCome = (when: Moment, situation: Situation): boolean => {
  if ('atSeconds' in when) return situation.atSeconds >= when.atSeconds;
  if ('heatingPastC' in when) return situation.heating && situation.readingC >= when.heatingPastC;
  return situation.rampsEnded > when.rampEndOf;
};

/** Watches for the moments of faults and tells which are on. */
export class FaultClock {
  readonly timed: TimedFault[] = [];
  #waiting: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    this.#waiting = faults;
  }

  /** @returns the faults that begin now */
  look(situation: Situation): readonly Fault[] {
    if (this.#waiting.length === 0) return [];
    const begun = this.#waiting.filter(({ when }) => hasCome(when, situation));
    if (begun.length === 0) return begun;
    this.#waiting = this.#waiting.filter((fault) => !begun.includes(fault));
    for (const fault of begun) {
      const fromSeconds = situation.atSeconds;
      const toSeconds = 'minutes' in fault ? fromSeconds + fault.minutes * 60 : Infinity;
      this.timed.push({ fault, fromSeconds, toSeconds });
    }
    return begun;
  }

  /** Whether a fault of this kind is on. */
  isOn(kind: Fault['kind'], atSeconds: number): boolean {
    return this.timed.some(
      ({ fault, fromSeconds, toSeconds }) =>
        fault.kind === kind && fromSeconds <= atSeconds && atSeconds < toSeconds,
    );
  }
}
