import { expect, test } from 'vitest';
import { HeaderWatch } from '../../../../core/log/delimited/header-watch.ts';

const row = () => true;
const words = () => false;

test('the header is known again, whatever its blanks', () => {
  const watch = new HeaderWatch(['Time  Temp', '[s]  [°C]']);
  expect(watch.note('Time Temp ', [], words)).toBe('header');
  expect(watch.note('[s] [°C]', [], words)).toBe('header');
  expect(watch.note('1 20', [], row)).toBe('here');
});

test('the same names over other units begin another table, until the header comes back', () => {
  const watch = new HeaderWatch(['Time Temp', '[s] [°C]']);
  watch.note('Time Temp', [], words);
  expect(watch.note('[s] [mW]', [], words)).toBe('elsewhere');
  expect(watch.note('1 20', [], row)).toBe('elsewhere');
  expect(watch.isElsewhere).toBe(true);
  expect(watch.note('Time Temp', [], words)).toBe('header');
  expect(watch.note('[s] [°C]', [], words)).toBe('header');
  expect(watch.note('1 20', [], row)).toBe('here');
});

test('the names alone may come again, with rows right below', () => {
  const watch = new HeaderWatch(['Time Temp', '[s] [°C]']);
  watch.note('Time Temp', [], words);
  expect(watch.note('1 20', [], row)).toBe('here');
  watch.note('Time Temp', [], words);
  watch.noteRow();
  expect(watch.note('End of log', [], words)).toBe('here');
});

test('lines above the header are elsewhere; without a header none is', () => {
  const before = new HeaderWatch(['Time Temp'], [], true);
  expect(before.note('1 20', [], row)).toBe('elsewhere');
  expect(before.note('Time Temp', [], words)).toBe('header');
  expect(before.note('1 20', [], row)).toBe('here');
  expect(new HeaderWatch([]).note('anything', [], words)).toBe('here');
});

test('names of the header in another order, or over other units, begin another table', () => {
  const header = ['Time,Temp (°C),Set (°C)'];
  const names = ['Time', 'Temp (°C)', 'Set (°C)'];
  const note = (line: string): string => {
    const watch = new HeaderWatch(header, names);
    const cells = line.split(',');
    watch.note(line, cells, words);
    return watch.note('06:00,20,21', ['06:00', '20', '21'], row);
  };
  expect(note('Time,Set (°C),Temp (°C)')).toBe('elsewhere');
  expect(note('Time,Temp (°F),Set (°C)')).toBe('elsewhere');
  expect(note('TIME, TEMP (°C), "Set (°C)"')).toBe('here');
  expect(note('06:00,Set (°C),Temp (°C)')).toBe('here');
  expect(note('Door opened,by hand')).toBe('here');
});
