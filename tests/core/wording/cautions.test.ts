import { describe, expect, it } from 'vitest';
import { alwaysCautions, hotKilnCaution } from '../../../core/wording/cautions.ts';
import { speechIn } from '../../../core/wording/speech.ts';

describe('the cautions under every answer', () => {
  const all = alwaysCautions().join(' ');

  it.each(['advice', 'witness cones', 'over-temperature cut-out', 'codes', 'licensed practice'])(
    'speak of %s',
    (word) => {
      expect(all).toContain(word);
    },
  );

  it('give a temperature in the reader’s unit only', () => {
    expect(hotKilnCaution(speechIn('F'))).toContain('392 °F');
    expect(hotKilnCaution(speechIn('F'))).not.toContain('°C');
  });
});
