import { expect, test } from 'vitest';
import { readLog } from '../../../../core/log/read-log.ts';
import type { ReadingDecisions } from '../../../../core/model/options.ts';
import { climb, utf8 } from '../helpers.ts';
import { voltageOf } from '../voltages.ts';

const TRUTH = climb((c) => [c]).map((row) => Number(row[1]));
/** How far the log of rows with cold ends from 20 to 35 °C, written by `cold`, is off. */
const offBy = (
  header: string,
  cold: (celsius: number, row: number) => string,
  decisions: ReadingDecisions = {},
): number => {
  const rows = climb((c, row) => [voltageOf(c, 'K', 20 + row / 2), cold(20 + row / 2, row)]);
  const text = [header, ...rows.map((row) => row.join(',')), ''].join('\n');
  const log = readLog(utf8(text), 'x', { coupleType: 'K', ...decisions });
  expect(log.celsius).toHaveLength(TRUTH.length);
  return Math.max(...TRUTH.map((celsius, row) => Math.abs(celsius - log.celsius[row]!)));
};

test('each row counts from its own cold end, in °C, °F, K or unsaid', () => {
  const f = (c: number) => (c * 1.8 + 32).toFixed(2);
  expect(offBy('Time,Kiln (mV),CJ (°C)', String)).toBeLessThan(0.01);
  expect(offBy('Time,Kiln (mV),CJ (°F)', f)).toBeLessThan(0.01);
  expect(offBy('Time,Kiln (mV),CJ (K)', (c) => (c + 273.15).toFixed(2))).toBeLessThan(0.01);
  expect(offBy('Time,Kiln (mV),CJ', String)).toBeLessThan(0.01);
  expect(offBy('Time,Kiln (mV),CJ', f)).toBeLessThan(0.01);
});

test('a cold end that is missing or impossible is the one before', () => {
  const torn = (c: number, row: number) =>
    row % 3 === 1 ? '-999' : row % 3 === 2 ? '' : String(c);
  // Two rows on, the cold end is 1 °C warmer than the last that is known.
  expect(offBy('Time,Kiln (mV),CJ (°C)', torn)).toBeLessThan(1.2);
});

test('a channel of a long table holds it as well', () => {
  const long = climb((c, row) => [voltageOf(c, 'K', 20 + row / 2), 20 + row / 2]).flatMap(
    ([time, millivolts, cold]) => [
      `${time},Kiln (mV),${millivolts}`,
      `${time},Cold junction,${cold}`,
    ],
  );
  const bytes = utf8(['time,channel,value', ...long, ''].join('\n'));
  const log = readLog(bytes, 'x', { coupleType: 'K' });
  const off = TRUTH.map((celsius, row) => Math.abs(celsius - log.celsius[row]!));
  expect(Math.max(...off)).toBeLessThan(0.01);
  expect(log.zones).toEqual([]);
  const none = readLog(bytes, 'x', { coupleType: 'K', coldJunctionColumn: null });
  expect(none.source.warnings).toContain('cold-junction-assumed');
});
