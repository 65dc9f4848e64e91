import { describe, expect, test } from 'vitest';
import { findRoles } from '../../../../core/log/columns/find-roles.ts';
import { NO_ROLES_GIVEN } from '../../../../core/log/columns/given-roles.ts';
import { climb, sampleOf } from '../helpers.ts';

type Cells = Parameters<typeof climb>[0];
const roles = (names: string[] | number, cells: Cells, given?: number) =>
  findRoles(sampleOf(names, climb(cells)), [0], { ...NO_ROLES_GIVEN, temperature: given });

describe('the main temperature', () => {
  test('is the measured one by name, wherever it stands', () => {
    const found = roles(['Time', 'Setpoint °C', 'Ambient °C', 'Kiln °C', 'Max °C'], (c) => [
      c + 2,
      19,
      c,
      c + 9,
    ]);
    expect(found).toMatchObject({ temperature: 3, why: 'name', rivals: [], zones: [] });
    expect(found?.setpoint).toEqual({ column: 1, why: 'name' });
  });

  test('is the first of several that suit as well, with the others as zones and rivals', () => {
    const found = roles(['Time', 'Top °C', 'Middle °C', 'Bottom °C'], (c) => [c, c - 5, c - 9]);
    expect(found).toMatchObject({
      temperature: 1,
      why: 'name-and-order',
      zones: [2, 3],
      rivals: [2, 3],
    });
    expect(found!.certainty).toBeLessThan(0.8);
  });

  test('is chosen by its values where names say nothing', () => {
    const found = roles(['Time', 'Signal A', 'Untitled'], (c, row) => [row / 100, c]);
    expect(found).toMatchObject({ temperature: 2, why: 'behaviour' });
    expect(roles(3, (c, row) => [(row % 5) / 10, c])).toMatchObject({ temperature: 2 });
  });

  test('is the one that the person names', () => {
    expect(roles(['Time', 'Top °C', 'Bottom °C'], (c) => [c, c - 9], 2)).toMatchObject({
      temperature: 2,
      why: 'given',
      certainty: 1,
    });
  });

  test('is not a setpoint, a humidity, a counting column, or words', () => {
    expect(roles(['Time', 'Setpoint °C'], (c) => [c])).toBeNull();
    expect(roles(['Time', 'Humidity %'], (_, row) => [50 + (row % 3)])).toBeNull();
    expect(roles(['Time', 'Record'], (_, row) => [row])).toBeNull();
    expect(roles(['Time', 'Kiln'], (_, row) => [`word ${'ab'[row % 2]}`])).toBeNull();
  });

  test('follows a programme of like name', () => {
    const wavering = (row: number): number =>
      20 + 2.5 * row + Math.round(15 * Math.sin(1.7 * row)) / 10;
    const sample = sampleOf(
      ['Time', 'T1 °C', 'T2 °C'],
      climb((_, row) => [20 + 2.5 * row, wavering(row)], 100),
    );
    expect(findRoles(sample, [0])).toMatchObject({
      temperature: 2,
      setpoint: { column: 1, why: 'behaviour' },
    });
  });
});

describe('beside it', () => {
  test('a number of a programme is no setpoint', () => {
    expect(roles(['Time', 'Program', 'Kiln °C'], (c) => [6, c])?.setpoint).toBeNull();
  });

  test('an output in percent is used, one in watts is not', () => {
    expect(roles(['Time', 'Kiln °C', 'Output %'], (c, row) => [c, row * 3])?.output).toEqual({
      column: 2,
      isPercent: true,
      why: 'name',
    });
    expect(roles(['Time', 'Kiln °C', 'Power (W)'], (c, row) => [c, row * 300])?.output).toEqual({
      column: 2,
      isPercent: false,
      why: 'name',
    });
  });

  test('a probe that never moves is no zone', () => {
    expect(roles(['Time', 'Kiln °C', 'Channel 2'], (c) => [c, 14])?.zones).toEqual([]);
  });
});
