import { SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../../core/units.ts';
import { clockTime } from '../../core/wording/speech.ts';
import type { View } from './view.ts';

/** Steps of time that people count in. */
const STEPS = [
  ...[1, 5, 10, 30],
  ...[1, 2, 5, 10, 15, 30].map((minutes) => minutes * SECONDS_PER_MINUTE),
  ...[1, 2, 3, 4, 6, 12, 24, 48, 96, 168, 336].map((hours) => hours * SECONDS_PER_HOUR),
];

export interface TimeTick {
  readonly atSeconds: number;
  /** On the log's own clock, from its first reading: `2 h`, `2:30 h`, `1:02:30 h`. */
  readonly elapsed: string;
  /** The time of day, where the log has one. */
  readonly clock: string | null;
}

const two = (value: number): string => String(value).padStart(2, '0');

const elapsedText = (atSeconds: number, step: number): string => {
  const sign = atSeconds < 0 ? '−' : '';
  const whole = Math.abs(Math.round(atSeconds));
  const hours = Math.floor(whole / SECONDS_PER_HOUR);
  const minutes = Math.floor((whole % SECONDS_PER_HOUR) / SECONDS_PER_MINUTE);
  const seconds = whole % SECONDS_PER_MINUTE;
  if (whole === 0) return '0';
  if (step < SECONDS_PER_MINUTE) return `${sign}${hours}:${two(minutes)}:${two(seconds)} h`;
  if (hours === 0) return `${sign}${minutes} min`;
  return `${sign}${minutes === 0 ? hours : `${hours}:${two(minutes)}`} h`;
};

/** Moments on whole seconds, minutes or hours within a view, at most `most` of them. */
export const timeTicksIn = (
  { from, to }: View,
  most: number,
  startInstant: string | null,
): TimeTick[] => {
  const span = to - from;
  const step = STEPS.find((candidate) => span / candidate <= Math.max(1, most));
  if (!(span > 0)) return [];
  const width = step ?? Math.ceil(span / Math.max(1, most) / 86_400) * 86_400;
  const first = Math.ceil(from / width);
  const count = Math.floor(to / width) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, index) => {
    const atSeconds = (first + index) * width;
    // The day is told by the legs' table; here only the hour fits.
    const clock = clockTime(startInstant, atSeconds)?.replace(/ \+.*$/, '') ?? null;
    return { atSeconds, elapsed: elapsedText(atSeconds, width), clock };
  });
};
