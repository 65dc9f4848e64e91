import type { CoupleType } from '../model/options.ts';
import { interpolate } from '../numeric/search.ts';
import { spreadIndices } from '../numeric/statistics.ts';
import { celsiusOfEmf, emfMillivolts } from '../thermocouple/its90.ts';

/** Types an instrument may be set to, and wires that bear a kiln's heat. */
const SETTINGS: readonly CoupleType[] = ['K', 'S', 'R', 'N', 'B', 'J'];
const WIRES: readonly CoupleType[] = ['K', 'S', 'R', 'N', 'B'];
/** A cold end stands in a room where the record does not show one, °C (chosen). */
const USUAL_COLD_END_C = 25;
/** A first reading above this is no room’s. */
const WARMEST_ROOM_C = 60;
/** Moments at which a record is read again: enough for a mean. */
const MOMENTS = 200;
/** A plan may have been laid so much too early or too late (chosen: a drying hold overlooked). */
const FARTHEST_SHIFT_SECONDS = 3 * 3600;
const SHIFT_SECONDS = 300;

/** A wire that was read as if it were another. */
export interface Mistake {
  readonly readAs: CoupleType;
  readonly wire: CoupleType;
}

/** Every way to take one kind of wire for another; only those of `wire` where it is known. */
export const mistakes = (wire: CoupleType | undefined): Mistake[] =>
  SETTINGS.flatMap((readAs) =>
    WIRES.filter((one) => one !== readAs && (wire === undefined || one === wire)).map((one) => ({
      readAs,
      wire: one,
    })),
  );

/** Where the instrument’s cold end stood: it shows that temperature whatever type it is set to. */
export const coldEndC = (firstC: number): number =>
  firstC <= WARMEST_ROOM_C ? firstC : USUAL_COLD_END_C;

/**
 * The temperature behind a reading, if the instrument took a wire for another: the voltage that it
 * must have measured, read again. NaN where either type does not reach so far.
 */
export const rereadC = ({ readAs, wire }: Mistake, readC: number, coldC: number): number => {
  const measured = emfMillivolts(readAs, readC) - emfMillivolts(readAs, coldC);
  return celsiusOfEmf(wire, measured + emfMillivolts(wire, coldC));
};

/** A course of temperature over time, thin enough to be compared many times. */
export interface Course {
  readonly atSeconds: ArrayLike<number>;
  readonly celsius: ArrayLike<number>;
}

/** A course at a few hundred of its moments. */
export const thinned = ({ atSeconds, celsius }: Course): Course => {
  const indices = spreadIndices(atSeconds.length, MOMENTS);
  return {
    atSeconds: indices.map((i) => atSeconds[i]!),
    celsius: indices.map((i) => celsius[i]!),
  };
};

/** Mean distance of a record from a climb as planned, the plan moved by so much; NaN if one is. */
export const distanceAtShiftC = (record: Course, plan: Course, shiftSeconds: number): number => {
  let sum = 0;
  for (let i = 0; i < plan.atSeconds.length; i++) {
    const moment = plan.atSeconds[i]! + shiftSeconds;
    sum += Math.abs(interpolate(record.atSeconds, record.celsius, moment) - plan.celsius[i]!);
  }
  return sum / plan.atSeconds.length;
};

/**
 * How near a record runs to a climb as planned, at the best shift in time: the beginning of heating is
 * hard to see in a record that was read as another type. Infinity where a reading has no meaning.
 */
export const nearestToPlan = (
  record: Course,
  plan: Course,
): { readonly deltaC: number; readonly shiftSeconds: number } => {
  let nearest = { deltaC: Infinity, shiftSeconds: 0 };
  for (
    let shift = -FARTHEST_SHIFT_SECONDS;
    shift <= FARTHEST_SHIFT_SECONDS;
    shift += SHIFT_SECONDS
  ) {
    const deltaC = distanceAtShiftC(record, plan, shift);
    // NaN is no less.
    if (deltaC < nearest.deltaC) nearest = { deltaC, shiftSeconds: shift };
  }
  return nearest;
};
