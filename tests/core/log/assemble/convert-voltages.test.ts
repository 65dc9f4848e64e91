import { expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import { convertVoltages } from '../../../../core/log/assemble/convert-voltages.ts';
import { RawColumns, STATES } from '../../../../core/log/columns/raw-columns.ts';
import type { CoupleType } from '../../../../core/model/options.ts';

const columnsOf = (values: readonly number[]): RawColumns => {
  const columns = new RawColumns(1, values.length, false);
  values.forEach((value, index) => {
    columns.values[0]![columns.add(index + 2, 0)] = value;
  });
  return columns;
};
const scaleOf = (type: CoupleType) => ({ unit: 'mV' as const, couple: { type, coldC: 0 } });

// Voltages from NIST SRD 60, type K: 4.096 mV at 100 °C, 41.276 mV at 1000 °C.
test('voltages become °C where they stand; one that none gives is a missing reading', () => {
  const columns = columnsOf([4.096, 99.9, 41.276]);
  expect([...convertVoltages(columns, scaleOf('K'), new Account())]).toEqual([99.9]);
  expect([...columns.values[0]!.subarray(0, 3)].map(Math.round)).toEqual([100, NaN, 1000]);
  expect([...columns.state.subarray(0, 3)].map((state) => STATES[state])).toEqual([
    ...['read', 'no-reading', 'read'],
  ]);
});

test('a cell with degrees beside its number stays degrees', () => {
  const columns = columnsOf([4.096, 212]);
  columns.units.note(1, 'F', 2);
  convertVoltages(columns, scaleOf('K'), new Account());
  expect([...columns.values[0]!.subarray(0, 2)].map(Math.round)).toEqual([100, 100]);
});

test('most of them beyond the couple are refused', () => {
  const columns = columnsOf([900, 901, 4.096]);
  expect(() => convertVoltages(columns, scaleOf('K'), new Account())).toThrow(
    'only 1 of 3 readings are voltages in mV that a couple of type K gives',
  );
});

test('a cool kiln is warned of with type B', () => {
  const warned = (type: CoupleType, millivolts: number): boolean => {
    const account = new Account();
    convertVoltages(columnsOf([millivolts, millivolts]), scaleOf(type), account);
    return account.warnings().includes('type-b-when-cool');
  };
  expect([warned('B', 0), warned('B', 5), warned('K', 0)]).toEqual([true, false, false]);
});
