import { describe, expect, it } from 'vitest';
import { firingWords, showsFiring, startText } from '../../../core/wording/firing.ts';
import { celsius } from '../../../core/units.ts';
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

  it('says where there was none: a log below 100 °C (chosen) shows no firing', () => {
    const document = exampleDocument('no-schedule');
    const at = (peakC: number) => ({
      ...document,
      trace: { ...document.trace, peakC: celsius(peakC) },
    });
    expect(showsFiring(at(99).trace)).toBe(false);
    expect(showsFiring(at(101).trace)).toBe(true);
    expect(firingWords(at(20), speechIn('F')).facts).toContain('no firing: 68 °F at most');
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
