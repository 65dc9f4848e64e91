import {
  celsius,
  celsiusPerHour,
  differenceIn,
  fromFahrenheit,
  fromFahrenheitPerHour,
  temperatureIn,
  type TemperatureUnit,
} from '../../core/units.ts';
import { numberText, readNumber } from '../controls/number-text.ts';

/** What kind of quantity an entry is: the 32 of Fahrenheit belongs to temperatures only. */
export type Quantity = 'temperature' | 'rate';

/**
 * A temperature or a rate in a field: as it was typed, in the unit it was typed in, or as a schedule
 * had it. Showing it in another unit leaves it as it is, so changing the unit never changes what
 * was meant.
 */
export type Entry =
  | { readonly typed: string; readonly unit: TemperatureUnit }
  /** In °C, or °C per hour. */
  | { readonly exactC: number };

export const typedEntry = (typed: string, unit: TemperatureUnit): Entry => ({ typed, unit });
export const exactEntry = (exactC: number): Entry => ({ exactC });

const toCelsius: Record<Quantity, (value: number, unit: TemperatureUnit) => number> = {
  temperature: (value, unit) => (unit === 'F' ? fromFahrenheit(value) : value),
  rate: (value, unit) => (unit === 'F' ? fromFahrenheitPerHour(value) : value),
};

const fromCelsius: Record<Quantity, (value: number, unit: TemperatureUnit) => number> = {
  temperature: (value, unit) => temperatureIn(celsius(value), unit),
  rate: (value, unit) => differenceIn(celsiusPerHour(value), unit),
};

/** What a field shows for an entry, in the reader's unit; text that is no number stays as it is. */
export const entryText = (entry: Entry, quantity: Quantity, unit: TemperatureUnit): string => {
  if ('exactC' in entry) return numberText(fromCelsius[quantity](entry.exactC, unit));
  if (entry.unit === unit) return entry.typed;
  const number = readNumber(entry.typed);
  if (number === null || 'wrong' in number) return entry.typed;
  return numberText(fromCelsius[quantity](toCelsius[quantity](number.value, entry.unit), unit));
};

/** Whether nothing has been entered. */
export const isBlank = (entry: Entry): boolean => 'typed' in entry && entry.typed.trim() === '';

/** An entry's number in the unit in which it is to be judged, so that what is said of it uses that. */
export interface EntryNumber {
  readonly value: number;
  readonly unit: TemperatureUnit;
}

/** The number that was entered, in its own unit; null where blank, a sentence where it is none. */
export const entryNumber = (entry: Entry): EntryNumber | { readonly wrong: string } | null => {
  if ('exactC' in entry) return { value: entry.exactC, unit: 'C' };
  const number = readNumber(entry.typed);
  if (number === null || 'wrong' in number) return number;
  return { value: number.value, unit: entry.unit };
};
