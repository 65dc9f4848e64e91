import { expect, test } from 'vitest';
import { linesOf, Spans } from '../../../../core/log/json/spans.ts';

test('stretches are kept, however many', () => {
  const spans = new Spans();
  for (let i = 0; i < 5000; i += 1) spans.add(10 * i, 10 * i + 7);
  expect([spans.length, spans.from(4999), spans.to(4999)]).toEqual([5000, 49_990, 49_997]);
  expect([
    spans.countUpTo(0),
    spans.countUpTo(9),
    spans.countUpTo(10),
    spans.countUpTo(1e9),
  ]).toEqual([1, 1, 2, 5000]);
});

test('lines end in LF, CR LF or CR', () => {
  const text = 'a\nbc\r\n\rd';
  const lines = linesOf(text);
  expect(
    [...Array(lines.length).keys()].map((i) => text.slice(lines.from(i), lines.to(i))),
  ).toEqual(['a', 'bc', '', 'd']);
});
