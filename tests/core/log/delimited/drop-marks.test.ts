import { describe, expect, test } from 'vitest';
import { readLog } from '../../../../core/log/read-log.ts';
import { utf8 } from '../helpers.ts';

const rows = Array.from(
  { length: 300 },
  (_, i) => `${i / 10}\t${20 + i / 3}\t${7 - i / 100}\t9.5\t8.25`,
);
const read = (before: string[], after: string[]) =>
  readLog(
    utf8(
      [
        'Time (min)\tTemperature (°C)\tWeight (mg)\tFlow A\tFlow B',
        ...before,
        ...rows,
        ...after,
        '',
      ].join('\n'),
    ),
    'x',
  );

describe('a negative time over zeros', () => {
  test('is a mark of the logger and no row', () => {
    const { source, atSeconds } = read(['-3.0\t1.0\t0.0\t0.0\t0.0'], ['-1.0\t25.0\t0.0\t0.0\t0.0']);
    expect([source.rowsRead, source.rowsKept]).toEqual([300, 300]);
    expect(atSeconds[0]).toBe(0);
    expect(source.decisions.find(({ what }) => what === 'lines-aside')?.choice).toBe('mark 2');
  });

  test('is a row if there are readings behind it, or if there are many', () => {
    expect(read(['-3.0\t20.0\t7.0\t9.5\t8.0'], []).source.rowsRead).toBe(301);
    const many = Array.from({ length: 40 }, (_, i) => `-${40 - i}\t20.0\t0.0\t0.0\t0.0`);
    expect(read(many, []).source.rowsRead).toBe(340);
  });
});
