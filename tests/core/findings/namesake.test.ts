import { expect, test } from 'vitest';
import { namesakeOf } from '../../../core/findings/namesake.ts';

test.each([
  ['6', '06'],
  ['06', '6'],
  ['5.5', '05.5'],
  ['01', null],
  ['1', null],
  ['022', null],
] as const)('cone %s has the namesake %s', (cone, namesake) => {
  expect(namesakeOf(cone)).toBe(namesake);
});
