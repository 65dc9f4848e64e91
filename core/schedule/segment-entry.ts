import { parseCone, type Cone } from '../model/cone.ts';
import { Refusal } from '../model/refusal.ts';
import type { Segment } from '../model/schedule.ts';
import {
  celsius,
  celsiusPerHour,
  fromFahrenheit,
  fromFahrenheitPerHour,
  type TemperatureUnit,
} from '../units.ts';
import {
  badSchedule,
  FASTEST_RATE_C_PER_HOUR,
  HOTTEST_TARGET_C,
  LONGEST_MINUTES,
} from './bounds.ts';

/** One segment as it was entered, in the schedule's own unit, before it is judged. */
export interface SegmentEntry {
  readonly ratePerHour: number | 'full' | null;
  readonly minutes: number | null;
  readonly target: number;
  readonly holdMinutes: number;
  /** 1-based line of the file, or null where the entry was typed. */
  readonly line: number | null;
}

const checkWay = (entry: SegmentEntry): void => {
  const { ratePerHour, minutes, line } = entry;
  if (ratePerHour === null && minutes === null) {
    throw badSchedule(
      'a segment needs a rate per hour, "full", or minutes to say how it climbs',
      line,
    );
  }
  if (ratePerHour !== null && minutes !== null) {
    throw badSchedule('a segment takes either a rate or minutes, not both', line);
  }
  if (typeof ratePerHour === 'number' && !(ratePerHour > 0)) {
    throw badSchedule(
      `the rate ${ratePerHour} is not above zero; give rates as positive numbers, and a lower target to cool`,
      line,
    );
  }
  if (minutes !== null && !(minutes > 0 && minutes <= LONGEST_MINUTES)) {
    throw badSchedule(`${minutes} minutes cannot be the time of a climb`, line);
  }
};

const targetOf = (entry: SegmentEntry, unit: TemperatureUnit): Segment['targetC'] => {
  const target = unit === 'F' ? fromFahrenheit(entry.target) : celsius(entry.target);
  if (target <= 0) {
    throw badSchedule(`the target ${entry.target} °${unit} is below freezing`, entry.line);
  }
  if (target > HOTTEST_TARGET_C) {
    const hint = unit === 'C' ? '; if the schedule is in °F, say so with unit F' : '';
    throw badSchedule(
      `the target ${entry.target} °${unit} is hotter than any kiln this tool knows${hint}`,
      entry.line,
    );
  }
  return target;
};

const rateOf = (entry: SegmentEntry, unit: TemperatureUnit): Segment['rateCPerHour'] => {
  if (entry.ratePerHour === null || entry.ratePerHour === 'full') return entry.ratePerHour;
  const rate =
    unit === 'F' ? fromFahrenheitPerHour(entry.ratePerHour) : celsiusPerHour(entry.ratePerHour);
  if (rate > FASTEST_RATE_C_PER_HOUR) {
    throw badSchedule(
      `the rate ${entry.ratePerHour} °${unit} per hour is faster than any kiln; write "full" for full power`,
      entry.line,
    );
  }
  return rate;
};

/**
 * A segment from what was entered, in °C.
 *
 * @throws Refusal `bad-schedule` naming the line and what is wrong with it.
 */
export const segmentFrom = (entry: SegmentEntry, unit: TemperatureUnit): Segment => {
  checkWay(entry);
  const { holdMinutes, line } = entry;
  if (!(holdMinutes >= 0 && holdMinutes <= LONGEST_MINUTES)) {
    throw badSchedule(`a hold of ${holdMinutes} minutes is not possible`, line);
  }
  return {
    rateCPerHour: rateOf(entry, unit),
    minutes: entry.minutes,
    targetC: targetOf(entry, unit),
    holdMinutes,
  };
};

/**
 * The cone named in a schedule.
 *
 * @throws Refusal `unknown-cone` where no such cone is made.
 */
export const scheduleCone = (text: string, line: number | null): Cone => {
  const cone = parseCone(text);
  if (cone !== null) return cone;
  throw new Refusal(
    'unknown-cone',
    `there is no cone "${text}"; cones run from 022 to 01 and from 1 to 14, with halves 05.5 and 5.5`,
    line,
  );
};
