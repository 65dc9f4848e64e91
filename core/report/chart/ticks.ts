import { SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../../units.ts';

/** Multiples of 1, 2 and 5 times a power of ten: the steps that people count in. */
const ROUND_STEPS = [1, 2, 5, 10];

/** The smallest round step that puts at most `most` steps into a span. */
export const roundStep = (span: number, most: number): number => {
  const least = span / most;
  const power = 10 ** Math.floor(Math.log10(least));
  const step = ROUND_STEPS.find((round) => round * power >= least * (1 - 1e-9)) ?? 10;
  return step * power;
};

const multiples = (from: number, to: number, step: number): number[] => {
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from(
    { length: Math.max(0, last - first + 1) },
    (_, index) => (first + index) * step,
  );
};

/** Round values within a range, at most `most` steps apart; none for an empty range. */
export const roundTicks = (from: number, to: number, most: number): number[] =>
  to > from ? multiples(from, to, roundStep(to - from, most)) : [];

/** A range widened to whole steps, so that the axis begins and ends on a tick. */
export const roundRange = (from: number, to: number, most: number): [number, number] => {
  if (to <= from) return [from, from + 1];
  const step = roundStep(to - from, most);
  return [Math.floor(from / step) * step, Math.ceil(to / step) * step];
};

/** Steps of time that people count in. */
const TIME_STEPS = [
  ...[1, 2, 5, 10, 15, 30].map((minutes) => minutes * SECONDS_PER_MINUTE),
  ...[1, 2, 3, 4, 6, 12, 24, 48, 96, 168].map((hours) => hours * SECONDS_PER_HOUR),
];

/** Moments on whole minutes or hours within a stretch, at most `most` steps of it. */
export const timeTicksWithin = (fromSeconds: number, toSeconds: number, most: number): number[] => {
  const span = toSeconds - fromSeconds;
  if (span <= 0) return [];
  const step = TIME_STEPS.find((candidate) => span / candidate <= most);
  return multiples(fromSeconds, toSeconds, step ?? roundStep(span, most));
};

/** Moments on whole minutes or hours from 0 on, at most `most` steps apart. */
export const timeTicks = (toSeconds: number, most: number): number[] =>
  timeTicksWithin(0, toSeconds, most);

/** `0`, `30 min`, `2 h`, `2:30 h`: a moment on the time axis. */
export const timeLabel = (atSeconds: number): string => {
  const minutes = Math.round(atSeconds / SECONDS_PER_MINUTE);
  if (minutes === 0) return '0';
  if (minutes < 60) return `${minutes} min`;
  const rest = minutes % 60;
  const hours = Math.floor(minutes / 60);
  return rest === 0 ? `${hours} h` : `${hours}:${String(rest).padStart(2, '0')} h`;
};
