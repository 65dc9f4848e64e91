import { expect, test } from 'vitest';
import { AsideLines } from '../../../../core/log/delimited/aside-lines.ts';

test('the first lines set aside and the last are known, those between them no more', () => {
  const lines = new AsideLines();
  for (let line = 1; line <= 20_000; line += 1) {
    lines.note(line, line % 2 === 0 ? 'blank' : 'comment');
  }
  expect(lines.kindOf(1)).toBe('comment');
  expect(lines.kindOf(5000)).toBe('blank');
  expect(lines.kindOf(10_000)).toBeNull();
  expect(lines.kindOf(20_000)).toBe('blank');
  expect(lines.kindOf(20_001)).toBeNull();
});
