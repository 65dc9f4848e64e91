import { describe, expect, it } from 'vitest';
import { figureLabel, figureText, figureWords } from '../../../core/wording/figures.ts';
import { speechIn } from '../../../core/wording/speech.ts';

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
