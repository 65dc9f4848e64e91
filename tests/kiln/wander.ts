import type { Random } from './random.ts';

/** Slow disturbances forget themselves in about this, s (chosen). */
const MEMORY_SECONDS = 1500;

/**
 * A slow wandering about zero with a given standard deviation: the Ornstein–Uhlenbeck process, by
 * its exact step. It stands for what drifts to and fro by the quarter-hour, such as mains voltage
 * or the temperature of a terminal block.
 */
export class Wander {
  value: number;
  readonly #deviation: number;
  readonly #random: Random;

  constructor(deviation: number, random: Random) {
    this.#deviation = deviation;
    this.#random = random;
    this.value = deviation * random.normal();
  }

  step(stepSeconds: number): void {
    if (this.#deviation === 0) return;
    const kept = Math.exp(-stepSeconds / MEMORY_SECONDS);
    const fresh = this.#deviation * Math.sqrt(1 - kept * kept);
    this.value = kept * this.value + fresh * this.#random.normal();
  }
}
