import type { Band } from '../model/document.ts';
import type { Celsius, Seconds } from '../units.ts';

/** A value with its 80 % interval. */
export interface Ranged {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What a history takes from one firing. */
export interface FiringEntry {
  readonly fileName: string;
  readonly startInstant: string | null;
  readonly durationSeconds: Seconds;
  /** To the peak; null where heating began before the log that shows it. */
  readonly heatingSeconds: Seconds | null;
  /** From `startInstant`; null where the clock does not tell it. */
  readonly peakAtSeconds: Seconds | null;
  readonly peakC: Celsius;
  readonly conePosition: number | null;
  /** Power over that of one and the same firing of this kiln. */
  readonly power: Ranged | null;
  readonly powerReason: string | null;
  /** Power, on the same scale, below which the last ramp could not have been held. */
  readonly lastRampPower: number | null;
  readonly bands: readonly Band[];
  /** Whether the ware came out as meant and nothing was to be acted on. */
  readonly isGood: boolean;
  /** The couple's error by witness cones, reading minus truth. */
  readonly coupleError: Ranged | null;
}
