import { expect, test } from 'vitest';
import { zReadingRule } from '../../../core/model/reading-rule.ts';

test('a rule has a name, a shape and decisions of the reader, and nothing else', () => {
  const rule = { name: 'the old logger', shape: 'delimited ; 2: a | b', decisions: { unit: 'F' } };
  const fits = (value: object): boolean => zReadingRule.safeParse(value).success;
  expect(fits(rule)).toBe(true);
  expect(fits({ ...rule, decisions: {} })).toBe(true);
  expect(fits({ ...rule, name: '' })).toBe(false);
  expect(fits({ ...rule, decisions: { unit: 'R' } })).toBe(false);
  expect(fits({ ...rule, made: 'today' })).toBe(false);
});
