import { expect, test } from 'vitest';
import { MOST_MARKS, longest } from '../../../core/findings/marks.ts';
import { seconds } from '../../../core/units.ts';

const span = (from: number, length: number) => ({
  fromSeconds: seconds(from),
  toSeconds: seconds(from + length),
});

test('a few spans are all marked, in order of time, as spans and no more', () => {
  const gap = { ...span(50, 10), samples: 3 };
  expect(longest([gap, span(0, 5)])).toEqual([span(0, 5), span(50, 10)]);
});

test('of many the longest are marked, in order of time', () => {
  const many = Array.from({ length: 100 }, (_, i) => span(1000 * i, i));
  const marked = longest(many);
  expect(marked).toHaveLength(MOST_MARKS);
  expect(marked).toEqual(many.slice(100 - MOST_MARKS));
});
