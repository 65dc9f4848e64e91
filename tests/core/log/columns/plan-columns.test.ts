import { describe, expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import { planColumns } from '../../../../core/log/columns/plan-columns.ts';
import type { ReadingDecisions } from '../../../../core/model/options.ts';
import { climb, decided, sampleOf } from '../helpers.ts';

const CONTEXT = { isContinental: false, sectionTime: null };
const plan = (
  sample: ReturnType<typeof sampleOf>,
  decisions: ReadingDecisions = {},
  account = new Account(),
) => planColumns(sample, decisions, CONTEXT, account);

const kiln = sampleOf(
  ['Time', 'Setpoint °C', 'Kiln °C', 'Output %', 'Shelf °C', 'Note'],
  climb((c, row) => [Math.round(c), c, 50 + (row % 9), c - 8, row % 20 === 0 ? 'ok' : '']),
);

describe('a plan of the columns', () => {
  test('wants the temperature first, then what lies beside it', () => {
    const account = new Account();
    const { wanted, time, requiredCells, wordColumns } = plan(kiln, {}, account);
    expect(wanted).toEqual([2, 1, 3, 4]);
    expect(time).toMatchObject({ form: 'stamp', column: 0 });
    expect(requiredCells).toBe(5);
    expect(wordColumns).toEqual([]);
    expect(decided(account, 'temperature-column')).toEqual(['Kiln °C', 'name']);
    expect(decided(account, 'setpoint-column')).toEqual(['Setpoint °C', 'name']);
    expect(decided(account, 'output-column')).toEqual(['Output %', 'name']);
    expect(decided(account, 'zone-columns')).toEqual(['Shelf °C', 'name']);
  });

  test('warns of an output that is not in percent, and leaves it aside', () => {
    const account = new Account();
    const { wanted } = plan(
      sampleOf(
        ['Time', 'Kiln °C', 'Power (W)'],
        climb((c, row) => [c, 300 * row]),
      ),
      {},
      account,
    );
    expect(wanted).toEqual([1]);
    expect(account.warnings()).toEqual(['output-not-percent']);
  });

  test('finds a column that holds nothing but units', () => {
    expect(
      plan(
        sampleOf(
          ['time', 'reading', 'scale'],
          climb((c) => [c, 'F']),
        ),
      ).unitColumn,
    ).toBe(2);
    expect(
      plan(
        sampleOf(
          ['time', 'reading', 'state'],
          climb((c) => [c, 'ok']),
        ),
      ).unitColumn,
    ).toBeNull();
  });

  test('follows the person', () => {
    expect(plan(kiln, { temperatureColumn: 'Shelf °C' }).wanted[0]).toBe(4);
    for (const temperatureColumn of ['Attic', 'Note']) {
      expect(() => plan(kiln, { temperatureColumn })).toThrow(
        expect.objectContaining({ code: 'bad-option' }),
      );
    }
  });

  test('refuses a table without a temperature', () => {
    const damp = sampleOf(
      ['Time', 'Humidity %'],
      climb((_, row) => [50 + (row % 3)]),
    );
    expect(() => plan(damp)).toThrow(expect.objectContaining({ code: 'no-temperature', line: 7 }));
  });
});
