import type { Schedule, Segment } from '../model/schedule.ts';
import {
  celsius,
  celsiusPerHour,
  differenceIn,
  fromFahrenheit,
  fromFahrenheitPerHour,
  temperatureIn,
  type TemperatureUnit,
} from '../units.ts';
import { HOTTEST_TARGET_C } from './bounds.ts';

/** One way in which an entry may have slipped, and the schedule as it may have been meant. */
export interface Slip {
  readonly kind: 'target' | 'rate' | 'hold' | 'unit';
  /** Index of the segment; null where the whole schedule is meant in another unit. */
  readonly segment: number | null;
  readonly entered: number;
  readonly meant: number;
  readonly mended: Schedule;
}

/** A slower rate than this may have lost a digit, a faster one gained one (chosen). */
const SLOW_C_PER_HOUR = 20;
const FAST_C_PER_HOUR = 500;
/** Holds as a rule last up to two hours: what is longer may be minutes in the place of hours … */
const LONGEST_HOLD_MINUTES = 120;
/** … and one to three minutes may be as many hours (chosen). */
const MOST_HOURS = 3;
const MINUTES_PER_HOUR = 60;

const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) < 1e-6;

/** The unit in which a schedule's targets and rates are round numbers; °C where both or neither fit. */
export const unitTyped = ({ segments }: Schedule): TemperatureUnit => {
  const isTypedIn = (unit: TemperatureUnit): boolean =>
    segments.every(
      ({ targetC, rateCPerHour }) =>
        isWhole(temperatureIn(targetC, unit)) &&
        (typeof rateCPerHour !== 'number' || isWhole(differenceIn(rateCPerHour, unit))),
    );
  return !isTypedIn('C') && isTypedIn('F') ? 'F' : 'C';
};

const fromTyped = (value: number, unit: TemperatureUnit) =>
  unit === 'F' ? fromFahrenheit(value) : celsius(value);

/** The schedule with one segment changed. */
const withSegment = (schedule: Schedule, index: number, change: Partial<Segment>): Schedule => ({
  ...schedule,
  segments: schedule.segments.map((segment, i) =>
    i === index ? { ...segment, ...change } : segment,
  ),
});

/** A target that lost its last digit, whichever it was, or gained one. */
export const targetSlips = (schedule: Schedule, index: number): Slip[] => {
  const unit = unitTyped(schedule);
  const entered = schedule.segments[index]!.targetC;
  const typed = Math.round(temperatureIn(entered, unit));
  const lost = Array.from({ length: 10 }, (_, digit) => 10 * typed + digit);
  return [...lost, Math.floor(typed / 10)]
    .map((value) => fromTyped(value, unit))
    .filter((targetC) => targetC > 0 && targetC <= HOTTEST_TARGET_C)
    .map((targetC) => ({
      kind: 'target',
      segment: index,
      entered,
      meant: targetC,
      mended: withSegment(schedule, index, { targetC }),
    }));
};

/** A rate that lost a zero, or gained one. */
export const rateSlips = (schedule: Schedule, index: number): Slip[] => {
  const { rateCPerHour: entered } = schedule.segments[index]!;
  if (typeof entered !== 'number') return [];
  const isOdd = entered < SLOW_C_PER_HOUR || entered > FAST_C_PER_HOUR;
  if (!isOdd) return [];
  const meant = celsiusPerHour(entered < SLOW_C_PER_HOUR ? 10 * entered : entered / 10);
  const mended = withSegment(schedule, index, { rateCPerHour: meant });
  return [{ kind: 'rate', segment: index, entered, meant, mended }];
};

/** A hold in hours where minutes were meant, or the other way round. */
export const holdSlips = (schedule: Schedule, index: number): Slip[] => {
  const { holdMinutes: entered } = schedule.segments[index]!;
  const slip = (meant: number): Slip => ({
    kind: 'hold',
    segment: index,
    entered,
    meant,
    mended: withSegment(schedule, index, { holdMinutes: meant }),
  });
  if (entered > LONGEST_HOLD_MINUTES && entered / MINUTES_PER_HOUR <= LONGEST_HOLD_MINUTES) {
    return [slip(entered / MINUTES_PER_HOUR)];
  }
  const isShort = entered >= 1 && entered <= MOST_HOURS;
  return isShort ? [slip(entered * MINUTES_PER_HOUR)] : [];
};

/** The whole schedule's numbers read in the other unit: °C that were meant as °F, or °F as °C. */
export const unitSlip = (schedule: Schedule): Slip | null => {
  const typed = unitTyped(schedule);
  const segments = schedule.segments.map((segment): Segment => {
    const { targetC, rateCPerHour } = segment;
    const target = temperatureIn(targetC, typed);
    const rate = typeof rateCPerHour === 'number' ? differenceIn(rateCPerHour, typed) : null;
    const isMeantInC = typed === 'F';
    return {
      ...segment,
      targetC: isMeantInC ? celsius(target) : fromFahrenheit(target),
      rateCPerHour:
        rate === null
          ? rateCPerHour
          : isMeantInC
            ? celsiusPerHour(rate)
            : fromFahrenheitPerHour(rate),
    };
  });
  const top = (of: readonly Segment[]): number => Math.max(...of.map(({ targetC }) => targetC));
  const meant = top(segments);
  if (meant > HOTTEST_TARGET_C || segments.some(({ targetC }) => targetC <= 0)) return null;
  const mended = { ...schedule, segments };
  return { kind: 'unit', segment: null, entered: top(schedule.segments), meant, mended };
};

/** Every slip of one entry, or of the unit. */
export const slipsOf = (schedule: Schedule): Slip[] => {
  const unit = unitSlip(schedule);
  return [
    ...(unit === null ? [] : [unit]),
    ...schedule.segments.flatMap((_, i) => [
      ...holdSlips(schedule, i),
      ...targetSlips(schedule, i),
      ...rateSlips(schedule, i),
    ]),
  ];
};
