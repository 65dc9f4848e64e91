import { describe, expect, it } from 'vitest';
import { large, line, lineOf } from '../../../core/wording/line.ts';

describe('a line', () => {
  it('keeps marked numbers as parts of their own, and the whole as text', () => {
    const said = line`The kiln got ${large('cone 6')}, as ${'meant'}.`;
    expect(said.text).toBe('The kiln got cone 6, as meant.');
    expect(said.parts).toEqual([
      { text: 'The kiln got ', large: false },
      { text: 'cone 6', large: true },
      { text: ', as meant.', large: false },
    ]);
  });

  it('takes in other lines with their marks, and joins neighbours of one kind', () => {
    const inner = line`at least ${large('5')}`;
    const said = lineOf(inner, large(' min'), '', '.');
    expect(said.parts).toEqual([
      { text: 'at least ', large: false },
      { text: '5 min', large: true },
      { text: '.', large: false },
    ]);
    expect(said.parts.map((part) => part.text).join('')).toBe(said.text);
  });

  it('is empty where nothing is said', () => {
    expect(lineOf('')).toEqual({ text: '', parts: [] });
  });
});
