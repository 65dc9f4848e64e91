import type { Account } from '../account.ts';
import { READ, stateOf, type RawColumns } from '../columns/raw-columns.ts';
import { Refusal } from '../../model/refusal.ts';
import { celsiusIn, type Scale } from './scale.ts';

const NO_READING = stateOf('no-reading');
/** Below this a couple of type B gives less than 0.03 mV (ITS-90). */
const TYPE_B_COOL_C = 100;
/** Voltages of which fewer are a temperature of the couple are of another one (chosen). */
const MOST = 0.5;

const refuse = (main: RawColumns, kept: number, gone: number, { couple, unit }: Scale): void => {
  const read = kept + gone;
  if (kept >= MOST * read) return;
  throw new Refusal(
    'bad-option',
    `only ${kept} of ${read} readings are voltages in ${unit === 'uV' ? 'µV' : unit} that a couple ` +
      `of type ${couple!.type} gives; check the unit and the couple type`,
    main.length === 0 ? null : main.line[0]!,
  );
};

/**
 * Turns the voltages of the main column into °C in their place, row by row; a voltage that no
 * temperature gives is taken for a missing reading, and returned. `impossible` is how many different
 * numbers were beyond any couple already.
 *
 * @throws Refusal `bad-option` where most are none
 */
export const convertVoltages = (
  main: RawColumns,
  scale: Scale,
  account: Account,
  impossible = 0,
): ReadonlySet<number> => {
  const values = main.values[0]!;
  const rejected = new Set<number>();
  let kept = 0;
  let gone = 0;
  let isCool = false;
  for (let row = 0; row < main.length; row += 1) {
    if (main.state[row] !== READ) continue;
    const own = main.units.of(row);
    const voltage = values[row]!;
    const celsius = celsiusIn(own === undefined ? scale : { ...scale, unit: own }, voltage, row);
    values[row] = celsius;
    if (Number.isNaN(celsius)) {
      main.state[row] = NO_READING;
      rejected.add(voltage);
      gone += 1;
    } else {
      kept += 1;
      isCool ||= celsius < TYPE_B_COOL_C;
    }
  }
  refuse(main, kept, Math.max(gone, rejected.size + impossible), scale);
  if (scale.couple?.type === 'B' && isCool) account.warn('type-b-when-cool');
  return rejected;
};
