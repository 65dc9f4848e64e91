import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  entryNumber,
  entryText,
  exactEntry,
  isBlank,
  typedEntry,
} from '../../../renderer/told/entry.ts';

describe('an entry', () => {
  it('stays as it was typed in its own unit', () => {
    expect(entryText(typedEntry('1222,50', 'C'), 'temperature', 'C')).toBe('1222,50');
  });

  it('shows a temperature with the 32 and a rate without it', () => {
    // 100 °C is 212 °F by definition; 100 °C per hour are 180 °F per hour.
    expect(entryText(typedEntry('100', 'C'), 'temperature', 'F')).toBe('212');
    expect(entryText(typedEntry('100', 'C'), 'rate', 'F')).toBe('180');
    expect(entryText(typedEntry('212', 'F'), 'temperature', 'C')).toBe('100');
    expect(entryText(typedEntry('180', 'F'), 'rate', 'C')).toBe('100');
    expect(entryText(exactEntry(100), 'temperature', 'F')).toBe('212');
  });

  it('shows what is no number as it stands, whatever the unit', () => {
    expect(entryText(typedEntry('abc', 'C'), 'rate', 'F')).toBe('abc');
    expect(entryText(typedEntry('', 'C'), 'rate', 'F')).toBe('');
  });

  it('keeps its number through any change of the unit it is shown in', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1500, noNaN: true }), (value) => {
        const entry = exactEntry(value);
        entryText(entry, 'temperature', 'F');
        expect(entryNumber(entry)).toEqual({ value, unit: 'C' });
      }),
    );
    expect(entryNumber(typedEntry('2232', 'F'))).toEqual({ value: 2232, unit: 'F' });
  });

  it('knows when nothing was entered', () => {
    expect([
      isBlank(typedEntry(' ', 'C')),
      isBlank(typedEntry('0', 'C')),
      isBlank(exactEntry(0)),
    ]).toEqual([true, false, false]);
  });
});
