import { expect, test } from 'vitest';
import { readLog } from '../../../../core/log/read-log.ts';
import { climb, utf8 } from '../helpers.ts';

const channels = (names: string, cells: Parameters<typeof climb>[0]) => {
  const text = [names, ...climb(cells).map((row) => row.join(','))].join('\n');
  return readLog(utf8(text), 'x').source.channels;
};

test('every column of numbers is listed with its role and whether it is used', () => {
  expect(
    channels('Time,Setpoint °C,Kiln °C,Cold junction °C,Humidity %,Output %,Shelf', (c, i) => [
      Math.round(c),
      c,
      24,
      55,
      i * 3,
      c - 4,
    ]),
  ).toEqual([
    { name: 'Setpoint °C', column: 1, unit: 'C', role: 'setpoint', chosen: true },
    { name: 'Kiln °C', column: 2, unit: 'C', role: 'temperature', chosen: true },
    { name: 'Cold junction °C', column: 3, unit: 'C', role: 'cold-junction', chosen: false },
    { name: 'Humidity %', column: 4, unit: null, role: 'other', chosen: false },
    { name: 'Output %', column: 5, unit: null, role: 'output', chosen: true },
    { name: 'Shelf', column: 6, unit: 'C', role: 'temperature', chosen: true },
  ]);
});

test('channels of a long table share a column', () => {
  const rows = climb((c) => [c]).flatMap(([time, c]) => [
    `${time},Kiln,${c}`,
    `${time},Setpoint °F,${c}`,
  ]);
  const { source } = readLog(utf8(['time,channel,value', ...rows].join('\n')), 'x');
  expect(source.channels).toEqual([
    { name: 'Kiln', column: 2, unit: 'C', role: 'temperature', chosen: true },
    { name: 'Setpoint °F', column: 2, unit: 'F', role: 'setpoint', chosen: false },
  ]);
});
