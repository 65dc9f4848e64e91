import { describe, expect, it } from 'vitest';
import {
  figureLabel,
  figureText,
  figureWords,
  isNamedFigure,
} from '../../../core/wording/figures.ts';
import { speechIn } from '../../../core/wording/speech.ts';
import { emittedFigures } from '../../house/emitted-figures.ts';

describe('a figure', () => {
  it.each([
    ['reachedC', 1000, '1832 °F'],
    ['overDeltaC', 10, '18 °F'],
    ['offDeltaC', -10, '−18 °F'],
    ['achievedCPerHour', 60, '108 °F/h'],
    ['spikesPerHour', 4.25, '4.3 an hour'],
    ['gapMinutes', 65, '1 h 05 min'],
    ['aboveSeconds', 90, '2 min'],
    ['shortCones', 0.5, 'half a cone'],
    ['slowerPercent', 26.7, '27 %'],
    ['removedPercent', 0.51, '0.5 %'],
    ['jumps', 2, '2'],
  ])('named %s with %d reads %s in °F', (name, value, said) => {
    expect(figureText(name, value, speechIn('F'))).toBe(said);
  });

  it.each([
    ['lateMinutes', 'late by'],
    ['plannedCPerHour', 'planned'],
    ['longestBreakMinutes', 'longest break'],
    ['times', 'times'],
  ])('named %s is labelled %s', (name, label) => {
    expect(figureLabel(name)).toBe(label);
  });

  it('stands beside its own limit, also where two labels agree', () => {
    const words = figureWords(
      { segment: 2, shortMinutes: 36, shortPercent: 80 },
      { shortMinutes: 3, shortPercent: 20 },
      speechIn('C'),
    );
    expect(words.map(({ value, limit }) => [value, limit])).toEqual([
      ['36 min', '3 min'],
      ['80 %', '20 %'],
    ]);
  });
});

describe('every figure that a detector can give', () => {
  // The names that schedule-suspect puts together, from what was entered and its unit.
  const composed = ['entered', 'meant'].flatMap((what) =>
    ['C', 'PeakC', 'CPerHour', 'Minutes'].map((unit) => what + unit),
  );
  const emitted = new Set([...emittedFigures(), ...composed]);

  it('is found in the code, also where another function makes it', () => {
    expect(emitted.size).toBeGreaterThan(80);
    // A plain literal, one behind a condition, one from a helper, and a limit.
    for (const name of ['lostPercent', 'oneCircuitPercent', 'asPlannedOffCones', 'cameToC']) {
      expect(emitted).toContain(name);
    }
  });

  it('has a label, or is left unsaid by choice', () => {
    expect([...emitted].filter((name) => !isNamedFigure(name))).toEqual([]);
  });

  it('is said in its unit: only counts and places are bare numbers', () => {
    const isBare = (name: string) => figureText(name, 12, speechIn('C')) === '12';
    expect([...emitted].filter(isBare).sort()).toEqual([
      'firing',
      'firings',
      'gaps',
      'jumps',
      'probably',
      'readAs',
      'segment',
      'spikes',
      'times',
    ]);
  });
});
