import { expect, it } from 'vitest';
import {
  zCelsius,
  zCelsiusDelta,
  zCelsiusPerHour,
  zCount,
  zId,
  zSeconds,
  zShare,
  zSpan,
} from '../../../core/model/scalars.ts';

it.each([
  ['temperature', zCelsius],
  ['difference', zCelsiusDelta],
  ['rate', zCelsiusPerHour],
  ['time', zSeconds],
])('a %s is a finite number', (_what, schema) => {
  expect(schema.parse(-12.5)).toBe(-12.5);
  for (const bad of [NaN, Infinity, '20', null]) expect(schema.safeParse(bad).success).toBe(false);
});

it('a count is whole and not negative', () => {
  expect(zCount.parse(0)).toBe(0);
  for (const bad of [-1, 1.5, NaN]) expect(zCount.safeParse(bad).success).toBe(false);
});

it('a share lies between nothing and all', () => {
  expect([zShare.parse(0), zShare.parse(1)]).toEqual([0, 1]);
  for (const bad of [-0.001, 1.001]) expect(zShare.safeParse(bad).success).toBe(false);
});

it('an id is a word, never a sentence', () => {
  expect(zId.parse('within-limits')).toBe('within-limits');
  for (const bad of ['', 'Within', 'too hot', 'hot.', '-hot']) {
    expect(zId.safeParse(bad).success).toBe(false);
  }
});

it('a span has a beginning and an end, and nothing else', () => {
  const span = { fromSeconds: 0, toSeconds: 60 };
  expect(zSpan.parse(span)).toEqual(span);
  expect(zSpan.safeParse({ fromSeconds: 0 }).success).toBe(false);
  expect(zSpan.safeParse({ ...span, why: 'gap' }).success).toBe(false);
});
