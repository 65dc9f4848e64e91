import { expect, test } from 'vitest';
import { makeGivenMarks } from '../../../../core/log/text/given-marks.ts';

test('words are known without case, accents and blanks; numbers by their value', () => {
  const { isWord, numbers } = makeGivenMarks(['Fühler weg', ' n.v. ', '1372,0', '0 °C'], ',');
  expect(['fuhler weg', 'FÜHLER WEG ', 'N.V.'].map(isWord)).toEqual([true, true, true]);
  expect(['weg', '1372', ''].map(isWord)).toEqual([false, false, false]);
  expect([...numbers]).toEqual([1372, 0]);
});

test('without any, no cell is a mark', () => {
  const { isWord, numbers } = makeGivenMarks(undefined, '.');
  expect(isWord('---')).toBe(false);
  expect(numbers.size).toBe(0);
});
