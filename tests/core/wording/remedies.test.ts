import { describe, expect, it } from 'vitest';
import { remedyPhrase, remedySentence } from '../../../core/wording/remedies.ts';
import { speechIn } from '../../../core/wording/speech.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

describe('a remedy', () => {
  const say = speechIn('F');

  it.each([
    ['longer-hold', 'min', 58, '58 min more at the peak (between 24 min and 1 h 50 min)', 24, 110],
    ['shorter-hold', 'min', 10, '10 min less at the peak (between 5 min and 20 min)', 5, 20],
    ['higher-peak', 'C', 10, 'a peak 18 °F higher (between 9 °F and 36 °F)', 5, 20],
    ['lower-peak', 'C', 10, 'a peak 18 °F lower (between 9 °F and 36 °F)', 5, 20],
    [
      'slower-last-ramp',
      'C/h',
      50,
      'the last climb at 90 °F/h (between 72 °F/h and 108 °F/h)',
      40,
      60,
    ],
  ] as const)('%s is said with its range', (kind, unit, amount, said, lowAmount, highAmount) => {
    expect(remedyPhrase({ kind, unit, amount, lowAmount, highAmount }, say)).toBe(said);
  });

  it('owns up where no amount is certain to do it', () => {
    const remedy = {
      kind: 'longer-hold',
      unit: 'min',
      amount: 60,
      lowAmount: 20,
      highAmount: null,
    };
    expect(remedyPhrase(remedy as never, say)).toBe(
      '1 h 00 min more at the peak (at least 20 min, and no amount within reason is certain to do it)',
    );
  });

  it.each([
    ['shorter-hold', 'min', 16, 0, null, 'about 16 min less at the peak'],
    ['shorter-hold', 'min', 16, 0, 40, '16 min less at the peak (up to 40 min)'],
    [
      ...(['slower-last-ramp', 'C/h', 50, 10, null] as const),
      'the last climb at 90 °F/h (no rate within reason is certain to do it)',
    ],
  ] as const)('%s %s %d from %d to %s names no end that says nothing', (...row) => {
    const [kind, unit, amount, lowAmount, highAmount, said] = row;
    expect(remedyPhrase({ kind, unit, amount, lowAmount, highAmount }, say)).toBe(said);
  });

  it('joins all ways into one sentence, or says none', () => {
    const said = remedySentence(exampleDocument('troubled-firing').heatWork, say);
    expect(said).toMatch(/58 min more.*; or a peak 34 °F higher.*let cones prove it\.$/);
    expect(remedySentence(exampleDocument('good-firing').heatWork, say)).toBeNull();
    expect(remedySentence(null, say)).toBeNull();
  });
});
