import { describe, expect, test } from 'vitest';
import { readLog } from '../../../../core/log/read-log.ts';
import { utf8 } from '../helpers.ts';

const rows = Array.from({ length: 20 }, (_, i) => `2024-03-14 06:${10 + i}:00,${20 + i}.5,7`);
const at = (minute: number): string => `2024-03-14 07:${minute}:00`;
const read = (...extra: string[]) => {
  const { source } = readLog(utf8(['Time,Kiln °C,Step', ...rows, ...extra, ''].join('\n')), 'x');
  const aside = source.decisions.find(({ what }) => what === 'lines-aside')?.choice ?? '';
  return { read: source.rowsRead, rejected: source.rejected.map(({ reason }) => reason), aside };
};

describe('a line after the header is', () => {
  test('a row with a reason why it cannot be used', () => {
    const { rejected } = read(
      `${at(10)},OPEN,7`,
      `${at(11)},20.5`,
      `${at(12)},20.5,7,8`,
      `${at(13)},Door opened,7`,
      `,20.5,7`,
      `2024-03-1x,20.5,7`,
      `${at(16)},20.5,7`,
    );
    expect(rejected).toEqual([
      'no-reading',
      'too-few-cells',
      'too-many-cells',
      'event',
      'no-time',
      'unreadable-time',
    ]);
  });

  test('a remark with a time', () => {
    expect(read(`${at(10)},Peephole opened`, `${at(11)},20.5,7`).rejected).toEqual(['event']);
  });

  test('a comment, a blank line, a header come again, or a title: no row', () => {
    expect(
      read('# all well', '', ',,', 'Time,Kiln °C,Step', 'second half', `${at(10)},20.5,7`),
    ).toEqual({
      ...{ read: 21, rejected: [], aside: 'blank 2, comment 1, header 1, text 1' },
    });
  });

  test('a footer, if no good row follows', () => {
    expect(read('Min,20.5,7', 'Max,39.5,7')).toMatchObject({
      read: 20,
      rejected: [],
      aside: 'footer 2',
    });
    expect(read('', '1.5 2.5 3.5', '4.5 5.5 6.5')).toMatchObject({ read: 20, rejected: [] });
  });

  test('rejected after all if it only looked like a footer', () => {
    const { rejected } = read('Min,20.5,7', `${at(10)},20.5,7`);
    expect(rejected).toEqual(['unreadable-time']);
  });

  test('rejected where a long tail of rows went bad', () => {
    const spoilt = Array.from({ length: 90 }, (_, i) => `2024--0-3 ::${i},20`);
    const { rejected, read: count } = read('', ...spoilt);
    expect([count, new Set(rejected)]).toEqual([110, new Set(['unreadable-time'])]);
  });
});

test('a footer is not half a log', () => {
  const text = ['Time,Kiln °C', '0,20', '1,21', '2,22', ''].join('\n');
  expect(readLog(utf8(`${text}Total rows: 3\n`), 'x').source.rowsRead).toBe(3);
});
