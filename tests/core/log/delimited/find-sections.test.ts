import { describe, expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import { findSections } from '../../../../core/log/delimited/find-sections.ts';
import { readLog } from '../../../../core/log/read-log.ts';
import { sampleLines } from '../../../../core/log/delimited/sample-lines.ts';
import { decided, layoutOf, textOf, utf8 } from '../helpers.ts';

const section = (second: number, ...rows: string[]): string =>
  [
    '',
    'Channels,2',
    'Date,2024/03/14,2024/03/14',
    `Time,06:30:${second},06:30:${second}`,
    'X,Kiln °C,Step',
    ...rows,
  ].join('\n');
const text = Array.from({ length: 12 }, (_, i) => section(10 + i * 3, `${i},${20 + i}.5,7`)).join(
  '\n',
);

describe('a file of many small sections', () => {
  test('has its times in their heads', () => {
    const account = new Account();
    const sections = findSections(layoutOf(text), sampleLines(textOf(text)), {}, account);
    expect(sections?.(1)).toMatchObject({ time: { form: 'section', column: 1 } });
    expect(decided(account, 'time-pattern')?.[0]).toBe('YYYY/MM/DD hh:mm:ss');
    expect(account.assumptions()).toEqual(['time-of-section']);
  });

  test('is read whole', () => {
    const log = readLog(utf8(text), 'x');
    expect(log.startInstant).toBe('2024-03-14T06:30:10');
    expect([...log.atSeconds]).toEqual(Array.from({ length: 12 }, (_, i) => 3 * i));
    expect([log.source.rowsRead, log.celsius[11]]).toEqual([12, 31.5]);
  });
});

test('heads whose dates cannot be read are refused', () => {
  const spoilt = text.replaceAll('2024/03/14', '9999/99/99');
  expect(() => readLog(utf8(spoilt), 'x')).toThrow(expect.objectContaining({ code: 'no-time' }));
});

test('one section with many rows has a time column of its own', () => {
  const rows = Array.from({ length: 20 }, (_, i) => `${i},${20 + i}.5,7`);
  const single = section(10, ...rows);
  expect(findSections(layoutOf(single), sampleLines(textOf(single)), {}, new Account())).toBeNull();
});
