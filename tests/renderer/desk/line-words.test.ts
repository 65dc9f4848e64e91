import { expect, it } from 'vitest';
import type { ShownLine } from '../../../core/log/show/shown.ts';
import {
  clockText,
  fateWords,
  listedLines,
  readingText,
} from '../../../renderer/desk/line-words.ts';

it('a moment is told to the second, also before the beginning and past a day', () => {
  expect([0, 65, 3661, 100_000, -600].map(clockText)).toEqual([
    ...['0:00:00', '0:01:05', '1:01:01', '27:46:40', '−0:10:00'],
  ]);
});

it('a reading is told in the reader’s unit', () => {
  expect(readingText(1222.46, 'C')).toBe('1222.5 °C');
  expect(readingText(100, 'F')).toBe('212 °F');
});

it('what became of a line is told in a few words', () => {
  expect(fateWords({ kind: 'kept', atSeconds: 60, celsius: 20.5 }, 'C')).toBe('0:01:00  20.5 °C');
  expect(fateWords({ kind: 'rejected', reason: 'event' }, 'C')).toBe(
    'rejected: a remark, not a reading',
  );
  expect(fateWords({ kind: 'aside', what: 'comment' }, 'C')).toBe('a comment');
});

it('lines that are left out are counted where they are', () => {
  const line = (place: number): ShownLine => ({
    ...{ place, line: place, text: '', fate: { kind: 'unread' } },
  });
  const listed = listedLines([line(1), line(2), line(7), line(8)], 20);
  expect(listed.map((one) => (one.kind === 'gap' ? -one.lines : one.shown.place))).toEqual([
    ...[1, 2, -4, 7, 8, -12],
  ]);
});
