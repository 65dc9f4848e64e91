import { expect, test } from 'vitest';
import { readLog } from '../../../../core/log/read-log.ts';
import { climb, utf8 } from '../helpers.ts';
import { voltageOf } from '../voltages.ts';

const csv = (header: string, rows: (string | number)[][]): Uint8Array =>
  utf8([header, ...rows.map((row) => row.join(',')), ''].join('\n'));

test('voltages without a unit are told by their course where the couple is known', () => {
  const rows = climb((c) => [voltageOf(c, 'K', 0, 2)]);
  const log = readLog(csv('Time,Kiln', rows), 'x', { coupleType: 'K', coldJunctionC: 0 });
  const unit = log.source.decisions.find(({ what }) => what === 'unit');
  expect(unit).toMatchObject({ choice: 'mV', why: 'plausible' });
  expect(log.source.warnings).toContain('unit-assumed');
  expect(log.celsius[20]).toBeCloseTo(Number(climb((c) => [c])[20]![1]), 0);
});

test('and refused where it is not, if they are printed as voltages are', () => {
  const bytes = csv(
    'Time,Kiln',
    climb((c) => [voltageOf(c, 'K', 0, 3)]),
  );
  expect(() => readLog(bytes, 'x')).toThrow('as a couple’s millivolts do');
  // The person who says that these are degrees is believed.
  expect(readLog(bytes, 'x', { unit: 'C' }).source.rowsKept).toBe(30);
});

test('bare times are told by the climb in °C, not in millivolts', () => {
  const rows = climb((c, row) => [row * 10, voltageOf(c, 'K', 0)]).map((row) => row.slice(1));
  const log = readLog(csv('t,Type K compensated (mV)', rows), 'x');
  expect(log.source.time.pattern).toBe('elapsed min');
});

test('a zone has the type of its own name, else that of the main couple', () => {
  const rows = climb((c) => [voltageOf(c, 'K', 0), voltageOf(c, 'S', 0), voltageOf(c - 9, 'K', 0)]);
  const header = 'Time,Kiln (mV),Type S shelf (mV),Floor (mV)';
  const log = readLog(csv(`CJC: on\n${header}`, rows), 'x', {
    temperatureColumn: 'Kiln (mV)',
    coupleType: 'K',
  });
  expect(log.zones).toHaveLength(2);
  expect(log.zones[0]!.celsius[20]).toBeCloseTo(log.celsius[20]!, 0);
  expect(log.zones[1]!.celsius[20]).toBeCloseTo(log.celsius[20]! - 9, 1);
});

test('degrees that are given out for millivolts are refused', () => {
  const bytes = csv(
    'Time,Kiln',
    climb((c) => [c]),
  );
  expect(() => readLog(bytes, 'x', { unit: 'mV', coupleType: 'K' })).toThrow(
    expect.objectContaining({ code: 'bad-option' }),
  );
});

test('a column that names its couple is not in kelvins for that', () => {
  for (const name of ['Type K', 'Typ-K', 'TC_K']) {
    const log = readLog(
      csv(
        `Time,${name}`,
        climb((c) => [c]),
      ),
      'x',
    );
    expect(log.source.decisions.find(({ what }) => what === 'unit')?.choice).toBe('C');
  }
});
