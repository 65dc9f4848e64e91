import { expect, test } from 'vitest';
import { outlineOf } from '../../../../core/log/show/outline.ts';
import { decided, textOf } from '../helpers.ts';

const ROWS = Array.from({ length: 6 }, (_, i) => `2026-03-01 10:0${i};${20 + i},5`).join('\n');

test('names and cells are told also where no log could be made', () => {
  const { account, layout, sample } = outlineOf(textOf(`Zeit;Ofen\n${ROWS}\n`), {});
  expect(sample?.names).toEqual(['Zeit', 'Ofen']);
  expect(layout?.headerLine).toBe(1);
  expect(decided(account, 'delimiter')?.[0]).toBe(';');
});

test('a decision that makes no table is left out', () => {
  const { sample } = outlineOf(textOf(`Zeit;Ofen\n${ROWS}\n`), { delimiter: 'no such sign' });
  expect(sample?.names).toEqual(['Zeit', 'Ofen']);
});

test('prose and broken JSON have no outline', () => {
  expect(outlineOf(textOf('Dear all,\nthe kiln is broken.\n'), {}).sample).toBeNull();
  expect(outlineOf(textOf('{"rows": [[1, 2], [3, 4'), {}).sample).toBeNull();
});
