import { expect, test } from 'vitest';
import { quotedNames } from '../../../../core/log/text/quoted-names.ts';

test('names are quoted, on one line, cut where they are long', () => {
  expect(quotedNames(['Kiln', 'a\nb\u0000c', 'x'.repeat(99)])).toBe(
    `“Kiln”, “a b c”, “${'x'.repeat(39)}…”`,
  );
});

test('of many names the first dozen are said', () => {
  const many = quotedNames(Array.from({ length: 20 }, (_, i) => `c${i}`));
  expect(many.endsWith('“c11” and more')).toBe(true);
  expect(quotedNames([])).toBe('none');
});
