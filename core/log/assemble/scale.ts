import type { ChannelUnit } from '../../model/options.ts';
import { isVoltage } from '../text/unit-text.ts';
import { celsiusOfVoltage, type Couple } from './couple.ts';
import { toCelsius } from './to-celsius.ts';

/** What the numbers of a column count: degrees, or the voltage of a couple. */
export interface Scale {
  readonly unit: ChannelUnit;
  /** Null for degrees. */
  readonly couple: Couple | null;
}

/** The °C of a number in a row of the table; NaN where it is no temperature. */
export const celsiusIn = ({ unit, couple }: Scale, value: number, row: number): number => {
  if (!isVoltage(unit)) return toCelsius(value, unit);
  return couple === null ? Number.NaN : celsiusOfVoltage(value, unit, couple, row);
};
