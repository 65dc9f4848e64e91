import type { HeatWork, Remedy } from '../model/document.ts';
import { celsiusDelta, celsiusPerHour } from '../units.ts';
import { duration, type Speech } from './speech.ts';

const amountIn = (unit: Remedy['unit'], value: number, say: Speech): string => {
  if (unit === 'min') return duration(value * 60);
  return unit === 'C' ? say.difference(celsiusDelta(value)) : say.rate(celsiusPerHour(value));
};

/** `24 min to 1 h 50 min`, or how little and how open the upper end is. */
const rangeOf = ({ unit, lowAmount, highAmount }: Remedy, say: Speech): string => {
  const low = amountIn(unit, lowAmount, say);
  if (highAmount !== null) return `between ${low} and ${amountIn(unit, highAmount, say)}`;
  return `at least ${low}, and no amount within reason is certain to do it`;
};

const PHRASES: Readonly<Record<Remedy['kind'], (amount: string, range: string) => string>> = {
  'longer-hold': (amount, range) => `${amount} more at the peak (${range})`,
  'higher-peak': (amount, range) => `a peak ${amount} higher (${range})`,
  'slower-last-ramp': (amount, range) => `the last climb at ${amount} (${range})`,
  'shorter-hold': (amount, range) => `${amount} less at the peak (${range})`,
  'lower-peak': (amount, range) => `a peak ${amount} lower (${range})`,
};

/** One way to get the cone that was meant, with its range: `58 min more at the peak (…)`. */
export const remedyPhrase = (remedy: Remedy, say: Speech): string =>
  PHRASES[remedy.kind](amountIn(remedy.unit, remedy.amount, say), rangeOf(remedy, say));

/** All ways, as one sentence; null where none was worked out. */
export const remedySentence = (heatWork: HeatWork | null, say: Speech): string | null => {
  const ways = heatWork?.remedies.map((remedy) => remedyPhrase(remedy, say)) ?? [];
  if (ways.length === 0) return null;
  return `By the same reckoning this would have done it: ${ways.join('; or ')}. Change one thing at a time, and let cones prove it.`;
};
