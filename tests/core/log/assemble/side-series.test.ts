import { expect, test } from 'vitest';
import { readLog } from '../../../../core/log/read-log.ts';
import { climb, utf8 } from '../helpers.ts';

const long = climb((c) => [c]).flatMap(([time, c], i) => [
  ...[`${time},Kiln °F,${Number(c) * 1.8 + 32}`, `${time},Setpoint °C,${Math.round(Number(c))}`],
  ...[`${time},Output,${i / 30}`, `${time},Shelf °C,${i === 4 ? 'OPEN' : Number(c) - 5}`],
  `${time},Humidity %,55`,
]);

test('channels of a long table become setpoint, output and zones by their names', () => {
  const log = readLog(utf8(['time,channel,value', ...long, ''].join('\n')), 'x');
  expect(log.source.rowsRead).toBe(30);
  expect(log.setpointC![9]).toBeCloseTo(Math.round(log.celsius[9]!), 0);
  expect(log.outputPercent![15]).toBeCloseTo(50, 9);
  expect(log.zones.map(({ channel }) => channel)).toEqual(['Shelf °C']);
  expect(log.zones[0]!.celsius[9]).toBeCloseTo(log.celsius[9]! - 5, 6);
  expect(log.zones[0]!.celsius[4]).toBeNaN();
});

test('channels with a clock alone are brought together across midnight', () => {
  const clocks = ['23:40', '23:50', '00:00', '00:10', '00:20'];
  const rows = ['Kiln', 'Shelf'].flatMap((name, place) =>
    clocks.map((clock, i) => `${clock};${name};${100 * place + 20 + i}`),
  );
  const log = readLog(utf8(['time;channel;value', ...rows, ''].join('\n')), 'x');
  expect([...log.atSeconds]).toEqual([0, 600, 1200, 1800, 2400]);
  expect([...log.zones[0]!.celsius]).toEqual([120, 121, 122, 123, 124]);
});
