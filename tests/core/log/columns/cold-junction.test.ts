import { expect, test } from 'vitest';
import { findRoles } from '../../../../core/log/columns/find-roles.ts';
import { NO_ROLES_GIVEN } from '../../../../core/log/columns/given-roles.ts';
import { climb, sampleOf } from '../helpers.ts';

type Cells = Parameters<typeof climb>[0];
const roles = (names: string[], cells: Cells) => findRoles(sampleOf(names, climb(cells)), [0]);
const millivolts = (celsius: number): number => celsius * 0.04;

test('the cold junction is the column of that name, beside voltages only', () => {
  const names = ['Time', 'TC (mV)', 'Vergleichsstelle'];
  const found = roles(names, (c, row) => [millivolts(c), 22 + row / 20]);
  expect(found).toMatchObject({ temperature: 1, coldJunction: { column: 2, why: 'name' } });
  const degrees = roles(['Time', 'TC (°C)', 'CJC'], (c, row) => [c, 22 + row / 20]);
  expect(degrees?.coldJunction).toBeNull();
});

test('or the one column of degrees at rest, which is then neither main nor zone', () => {
  const found = roles(['Time', 'Logger °C', 'Kiln mV'], (c, row) => [22 + row / 20, millivolts(c)]);
  expect(found).toMatchObject({
    ...{ temperature: 2, coldJunction: { column: 1, why: 'behaviour' }, zones: [] },
  });
});

test('degrees that are fired are the kiln, and the voltage beside them is no zone', () => {
  const found = roles(['Time', 'Kiln mV', 'Kiln °C'], (c) => [millivolts(c), c]);
  expect(found).toMatchObject({ temperature: 2, zones: [], coldJunction: null });
});

test('the person may say which, or that there is none', () => {
  const sample = sampleOf(
    ['Time', 'Kiln mV', 'CJ'],
    climb((c) => [millivolts(c), 21]),
  );
  const given = (coldJunction: number | null) =>
    findRoles(sample, [0], { ...NO_ROLES_GIVEN, coldJunction })?.coldJunction;
  expect(given(2)).toEqual({ column: 2, why: 'given' });
  expect(given(null)).toBeNull();
});
