import { TYPE_B_TURN_C, celsiusOfEmf, emfMillivolts } from '../../thermocouple/its90.ts';
import type { CoupleType } from '../../model/options.ts';

/** What turns a voltage into a temperature. */
export interface Couple {
  readonly type: CoupleType;
  /** Where its cold end stood, row by row or throughout, °C; 0 where the logger allowed for it. */
  readonly coldC: number | Float64Array;
}

const MILLIVOLTS_PER_MICROVOLT = 1e-3;
/** Of type B, voltages so far below its least are that least with the logger's noise (chosen). */
const TYPE_B_NOISE_MILLIVOLTS = 0.02;
const TYPE_B_LEAST_MILLIVOLTS = emfMillivolts('B', TYPE_B_TURN_C);

const temperatureOf = (type: CoupleType, millivolts: number): number => {
  const isNoise =
    type === 'B' &&
    millivolts < TYPE_B_LEAST_MILLIVOLTS &&
    millivolts > TYPE_B_LEAST_MILLIVOLTS - TYPE_B_NOISE_MILLIVOLTS;
  return celsiusOfEmf(type, isNoise ? TYPE_B_LEAST_MILLIVOLTS : millivolts);
};

/**
 * The °C of a voltage read in a row: the voltage of the cold end is added, as both count from 0 °C
 * in the reference function. NaN where no temperature of the couple gives it.
 */
export const celsiusOfVoltage = (
  voltage: number,
  unit: 'mV' | 'uV',
  { type, coldC }: Couple,
  row: number,
): number => {
  const millivolts = unit === 'uV' ? voltage * MILLIVOLTS_PER_MICROVOLT : voltage;
  const cold = typeof coldC === 'number' ? coldC : coldC[row]!;
  return temperatureOf(type, cold === 0 ? millivolts : millivolts + emfMillivolts(type, cold));
};
