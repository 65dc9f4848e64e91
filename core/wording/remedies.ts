import type { HeatWork, Remedy } from '../model/document.ts';
import { celsiusDelta, celsiusPerHour } from '../units.ts';
import { duration, type Speech } from './speech.ts';

const amountIn = (unit: Remedy['unit'], value: number, say: Speech): string => {
  if (unit === 'min') return duration(value * 60);
  return unit === 'C' ? say.difference(celsiusDelta(value)) : say.rate(celsiusPerHour(value));
};

/** Less than this is no amount worth naming, in any unit (chosen: below what is said). */
const NO_AMOUNT = 0.5;

/** ` (between 24 min and 1 h 50 min)`: the range in brackets, as far as it has ends worth naming. */
const rangeOf = ({ unit, lowAmount, highAmount }: Remedy, say: Speech): string => {
  const low = amountIn(unit, lowAmount, say);
  const isOpenBelow = lowAmount < NO_AMOUNT;
  if (highAmount === null) {
    // A last climb's low end is the slowest rate that was tried, not the least that helps.
    if (unit === 'C/h') return ' (no rate within reason is certain to do it)';
    return isOpenBelow ? '' : ` (at least ${low}, and no amount within reason is certain to do it)`;
  }
  const high = amountIn(unit, highAmount, say);
  return isOpenBelow ? ` (up to ${high})` : ` (between ${low} and ${high})`;
};

const PHRASES: Readonly<Record<Remedy['kind'], (amount: string) => string>> = {
  'longer-hold': (amount) => `${amount} more at the peak`,
  'higher-peak': (amount) => `a peak ${amount} higher`,
  'slower-last-ramp': (amount) => `the last climb at ${amount}`,
  'shorter-hold': (amount) => `${amount} less at the peak`,
  'lower-peak': (amount) => `a peak ${amount} lower`,
};

/** One way to get the cone that was meant, with its range: `58 min more at the peak (…)`. */
export const remedyPhrase = (remedy: Remedy, say: Speech): string => {
  const range = rangeOf(remedy, say);
  const amount = amountIn(remedy.unit, remedy.amount, say);
  return PHRASES[remedy.kind](range === '' ? `about ${amount}` : amount) + range;
};

/** All ways, as one sentence; null where none was worked out. */
export const remedySentence = (heatWork: HeatWork | null, say: Speech): string | null => {
  const ways = heatWork?.remedies.map((remedy) => remedyPhrase(remedy, say)) ?? [];
  if (ways.length === 0) return null;
  return `By the same reckoning this would have done it: ${ways.join('; or ')}. Change one thing at a time, and let cones prove it.`;
};
