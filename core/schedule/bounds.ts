import { Refusal } from '../model/refusal.ts';

/**
 * The hottest target a schedule may name: cone 42's end point lies near 2000 °C, but no kiln this
 * tool serves goes past 1500 °C (chosen); a higher "°C" is a °F schedule without its unit.
 */
export const HOTTEST_TARGET_C = 1500;
/** The fastest programmed rate taken as meant (chosen: above any kiln's full power). */
export const FASTEST_RATE_C_PER_HOUR = 3000;
/** The longest hold or timed climb taken as meant: two weeks (chosen). */
export const LONGEST_MINUTES = 20_160;
export const MOST_SEGMENTS = 200;

/** A refused schedule: one plain sentence and, where there is one, the line it speaks of. */
export const badSchedule = (message: string, line: number | null = null): Refusal =>
  new Refusal('bad-schedule', message, line);
