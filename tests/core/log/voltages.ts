import { emfMillivolts } from '../../../core/thermocouple/its90.ts';
import type { CoupleType } from '../../../core/model/options.ts';

/** What a couple gives for a hot and a cold end, to so many decimals. */
export const voltageOf = (celsius: number, type: CoupleType, coldC: number, decimals = 4): string =>
  (emfMillivolts(type, celsius) - emfMillivolts(type, coldC)).toFixed(decimals);
