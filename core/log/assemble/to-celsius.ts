import type { ChannelUnit } from '../../model/options.ts';
import { fromFahrenheit, fromKelvin } from '../../units.ts';

/** The °C of a reading in °C, °F or K; NaN for a unit that needs more than the number. */
export const toCelsius = (value: number, unit: ChannelUnit): number => {
  if (unit === 'C') return value;
  if (unit === 'F') return fromFahrenheit(value);
  return unit === 'K' ? fromKelvin(value) : Number.NaN;
};

/** Below this, in the unit, no temperature exists; at it, in kelvin, no kiln and no logger. */
export const isBelowAbsoluteZero = (value: number, unit: ChannelUnit): boolean =>
  toCelsius(value, unit) < -273.1;
