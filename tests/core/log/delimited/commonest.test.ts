import { expect, test } from 'vitest';
import { commonest } from '../../../../core/log/delimited/commonest.ts';

test('the key that comes most often, of equals the first', () => {
  expect(commonest([3, 1, 1, 3, 2])).toEqual({ key: 3, count: 2 });
  expect(commonest([])).toBeNull();
});
