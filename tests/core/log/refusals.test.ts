import { describe, expect, test } from 'vitest';
import { readLog } from '../../../core/log/read-log.ts';
import { CLIMB, plain, refusal, stampAt, utf8 } from './plain-logs.ts';

describe('a file that is no log is refused', () => {
  const noTime = ['Temp °C,Humidity', ...CLIMB.map((value, i) => `${value},${50 + (i % 4)}`)];
  const noTemperature = [
    'Time,Humidity %',
    ...CLIMB.map((_, i) => `${stampAt(i)},${50 + (i % 4)}`),
  ];

  test.each([
    ['empty', '', 'empty'],
    ['blanks only', ' \n\n\t\n', 'empty'],
    ['a header only', 'Time,Temp °C\n', 'header-only'],
    ['one row', 'Time,Temp °C\n2024-03-14 06:00:00,20.5\n', 'too-few-rows'],
    ['no time', noTime.join('\n'), 'no-time'],
    ['no temperature', noTemperature.join('\n'), 'no-temperature'],
    ['a setpoint alone', plain(CLIMB, 'Time,Setpoint °C'), 'no-temperature'],
    [
      'millivolts',
      plain(
        CLIMB.map((value) => value / 25),
        'Time,Couple (mV)',
      ),
      'no-temperature',
    ],
    ['prose', 'Dear all,\nthe firing went well.\nGood night\n', 'not-readable'],
    ['a web page', '<!DOCTYPE html>\n<html><body>20.5</body></html>', 'not-readable'],
    ['JSON nested without end', '['.repeat(500) + ']'.repeat(500), 'not-readable'],
  ])('%s', (_, text, code) => {
    const { code: found, message } = refusal(utf8(text));
    expect(found).toBe(code);
    expect(message).not.toContain('firing.csv');
    expect(message).toMatch(/^[a-z].*[^.]$/);
  });

  test.each([
    ['a picture', [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a], 'picture'],
    ['a workbook', [0x50, 0x4b, 3, 4, 20, 0, 6, 0], 'workbook'],
    ['a document', [...utf8('%PDF-1.7')], 'PDF'],
    ['a database', [...utf8('SQLite format 3\0')], 'database'],
    ['noise', Array.from({ length: 4000 }, (_, i) => (i * 7919 + 13) % 256), 'not a text'],
  ])('%s', (_, bytes, words) => {
    const { code, message } = refusal(Uint8Array.from(bytes));
    expect(code).toBe('binary');
    expect(message).toContain(words);
  });

  test.each([
    ['stamps', CLIMB.map((value) => `${stampAt(0)},${value}`), `“${stampAt(0)}” on every row`],
    ['clocks', CLIMB.map((value) => `06:30,${value}`), '“06:30” on every row'],
    ['numbers', CLIMB.map((value) => `0,${value}`), '“0” on every row'],
    ['two rows', [`${stampAt(0)},20`, `${stampAt(0)},25`], 'all 2 rows'],
  ])('%s that never move', (_, rows, words) => {
    const { code, message } = refusal(utf8(['Time,Temp °C', ...rows, ''].join('\n')));
    expect(code).toBe('no-time');
    expect(message).toContain('the times never move');
    expect(message).toContain(words);
  });

  test('with the line to blame', () => {
    expect(refusal(utf8('Kiln log\n\nTime;Temp\n')).line).toBe(3);
    expect(refusal(utf8('Time,Temp °C\n2024-03-14 06:00:00,20.5\n')).line).toBe(2);
  });

  test('beyond the size that is read', () => {
    const huge = { length: 600 * 1024 * 1024 } as Uint8Array;
    expect(() => readLog(huge, 'x')).toThrow(expect.objectContaining({ code: 'too-large' }));
  });
});
