import { expect, test } from 'vitest';
import { isDigit, isLetter, TextCursor } from '../../../../core/log/time/text-cursor.ts';

test('a cursor moves over digits, fractions and to marks', () => {
  const cursor = new TextCursor('042.750]x');
  expect(cursor.takeDigits()).toEqual({ value: 42, digits: 3 });
  expect(cursor.takeFraction()).toBe(0.75);
  expect(cursor.skipPast('[')).toBe(false);
  expect(cursor.skipPast(']')).toBe(true);
  expect(cursor.code()).toBe('x'.charCodeAt(0));
  expect(cursor.isAtEnd).toBe(false);
  cursor.at += 1;
  expect(cursor.isAtEnd).toBe(true);
  expect(cursor.code()).toBeNaN();
});

test('letters of any language are letters; signs and digits are none', () => {
  const codes = (text: string): number[] => [...text].map((letter) => letter.charCodeAt(0));
  expect(codes('aZéüж').every(isLetter)).toBe(true);
  expect(codes('0.→\u2009 ').some(isLetter)).toBe(false);
  expect(codes('09').every(isDigit)).toBe(true);
});
