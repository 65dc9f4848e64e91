import { celsius, celsiusPerHour } from '../../core/units.ts';
import type { Schedule } from '../../core/model/schedule.ts';

const SECONDS_PER_HOUR = 3600;

/** An invented firing: what the big log's controller was set to. */
export const BIG_LOG_SCHEDULE: Schedule = {
  name: 'bench',
  cone: '6',
  segments: [
    { rateCPerHour: celsiusPerHour(80), minutes: null, targetC: celsius(120), holdMinutes: 45 },
    { rateCPerHour: celsiusPerHour(150), minutes: null, targetC: celsius(1100), holdMinutes: 0 },
    { rateCPerHour: celsiusPerHour(60), minutes: null, targetC: celsius(1215), holdMinutes: 15 },
  ],
};

const START_C = 20;
const START_MS = Date.UTC(2024, 2, 2, 7);

/** How fast the kiln loses heat once the power is off, as a share of its excess an hour. */
const COOLING_PER_HOUR = 0.28;

/** The course of the setpoint as corners: seconds and °C. */
const corners = (): { atSeconds: number; celsius: number }[] => {
  const course = [{ atSeconds: 0, celsius: START_C }];
  let [atSeconds, from] = [0, START_C];
  for (const { rateCPerHour, targetC, holdMinutes } of BIG_LOG_SCHEDULE.segments) {
    atSeconds += ((targetC - from) / Number(rateCPerHour)) * SECONDS_PER_HOUR;
    course.push({ atSeconds, celsius: targetC });
    atSeconds += holdMinutes * 60;
    course.push({ atSeconds, celsius: targetC });
    from = targetC;
  }
  return course;
};

/** Small numbers that look random and are the same in every run (Park and Miller's generator). */
const wobble = (): (() => number) => {
  let state = 20_240_302;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647 - 0.5;
  };
};

/**
 * One firing and its cooling in `rows` rows of CSV (ISO time with milliseconds, temperature,
 * setpoint), as UTF-8: the kiln follows its setpoint with a wobble of half a degree, then cools.
 */
export const bigLog = (rows: number): Uint8Array => {
  const course = corners();
  const end = course.at(-1)!;
  const stepSeconds = (end.atSeconds * 1.6) / rows;
  const noise = wobble();
  const lines = ['time,temperature °C,setpoint °C'];
  let leg = 1;
  for (let row = 0; row < rows; row++) {
    const atSeconds = row * stepSeconds;
    while (leg < course.length - 1 && course[leg]!.atSeconds < atSeconds) leg++;
    const [from, to] = [course[leg - 1]!, course[leg]!];
    const share = Math.min(1, (atSeconds - from.atSeconds) / (to.atSeconds - from.atSeconds));
    const coolingHours = Math.max(0, atSeconds - end.atSeconds) / SECONDS_PER_HOUR;
    const setpoint =
      coolingHours > 0 ? START_C : from.celsius + share * (to.celsius - from.celsius);
    const kiln =
      coolingHours > 0
        ? START_C + (end.celsius - START_C) * Math.exp(-COOLING_PER_HOUR * coolingHours)
        : setpoint;
    const stamp = new Date(START_MS + Math.round(atSeconds * 1000)).toISOString();
    lines.push(`${stamp},${(kiln + noise()).toFixed(1)},${setpoint.toFixed(1)}`);
  }
  return new TextEncoder().encode(`${lines.join('\n')}\n`);
};
