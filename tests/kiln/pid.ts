/** A controller's settings; outputs are shares of full power. */
export interface Tuning {
  /** Proportional band: the error that alone asks for all the power. */
  readonly bandC: number;
  /** Integral time. */
  readonly resetSeconds: number;
  /** Derivative time. */
  readonly rateSeconds: number;
  /** Output that the ramp itself needs, ahead of any error, per °C/h. */
  readonly perRampCPerHour: number;
}

/** Time constant of the filter on the measured slope, s. */
const SLOPE_FILTER_SECONDS = 30;

/**
 * The usual controller in its parallel form, with the ramp's own need fed forward and the integral
 * kept from winding up by back-calculation (Åström and Hägglund, PID Controllers, ch. 3; from
 * memory): while the output is cut off at 0 or 1 the integral is drawn towards what would just do.
 */
export class Pid {
  readonly #tuning: Tuning;
  #integral = 0;
  #lastReadingC: number | null = null;
  #slopeCPerSecond = 0;

  constructor(tuning: Tuning) {
    this.#tuning = tuning;
  }

  /** Starts afresh, as after switching on. */
  reset(): void {
    this.#integral = 0;
    this.#lastReadingC = null;
    this.#slopeCPerSecond = 0;
  }

  /**
   * @param rampCPerHour how fast the setpoint moves just now
   * @returns the share of full power to give, 0 to 1
   */
  output(setpointC: number, rampCPerHour: number, readingC: number, stepSeconds: number): number {
    const { bandC, resetSeconds, rateSeconds, perRampCPerHour } = this.#tuning;
    if (this.#lastReadingC !== null) {
      const slope = (readingC - this.#lastReadingC) / stepSeconds;
      const share = 1 - Math.exp(-stepSeconds / SLOPE_FILTER_SECONDS);
      this.#slopeCPerSecond += (slope - this.#slopeCPerSecond) * share;
    }
    this.#lastReadingC = readingC;
    const error = setpointC - readingC;
    const slopeError = rampCPerHour / 3600 - this.#slopeCPerSecond;
    const wanted =
      perRampCPerHour * rampCPerHour + (error + rateSeconds * slopeError) / bandC + this.#integral;
    const given = Math.min(1, Math.max(0, wanted));
    const track = Math.sqrt(resetSeconds * rateSeconds);
    this.#integral += stepSeconds * (error / (bandC * resetSeconds) + (given - wanted) / track);
    return given;
  }
}
