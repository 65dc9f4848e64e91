import { expect, test } from 'vitest';
import { fallsAsOpened } from '../../../core/trace/shut-kiln.ts';

test.each([
  [390, 1000, false],
  [393, 1000, true],
  [91, 250, false],
  [93, 250, true],
])('a fall of %d °C/h from %d °C: opened %s', (fallCPerHour, fromC, isOpened) => {
  expect(fallsAsOpened(fallCPerHour, fromC)).toBe(isOpened);
});
