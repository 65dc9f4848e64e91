import { describe, expect, it } from 'vitest';
import { firingWords, startText } from '../../../core/wording/firing.ts';
import { speechIn } from '../../../core/wording/speech.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

describe('the head of a firing', () => {
  it('says which firing it is', () => {
    expect(firingWords(exampleDocument('good-firing'), speechIn('F'))).toEqual({
      title: 'glaze-load-12.csv',
      facts: [
        '14 March 2026, 06:50',
        '25 h 20 min logged',
        'peak 2225 °F after 11 h 20 min',
        'schedule “Glaze cone 6, studio”',
        'cone 6 meant',
      ],
    });
  });

  it('leaves out what is not known', () => {
    const { facts } = firingWords(exampleDocument('no-schedule'), speechIn('C'));
    expect(facts).toEqual(['23 h 30 min logged', 'peak 1061 °C after 13 h 30 min']);
  });

  it('reads a date without asking the machine’s clock or zone', () => {
    expect(startText('2026-12-01T23:59:30+02:00')).toBe('1 December 2026, 23:59');
    expect(startText('yesterday')).toBeNull();
    expect(startText(null)).toBeNull();
  });
});
