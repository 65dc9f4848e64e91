import { describe, expect, it } from 'vitest';
import {
  alwaysCautions,
  FUEL_CAUTION,
  FUEL_COUPLE_CAUTION,
  hotKilnCaution,
} from '../../../core/wording/cautions.ts';
import { speechIn } from '../../../core/wording/speech.ts';

describe.each(['electric', 'fuel'] as const)('the cautions under every answer, %s', (heat) => {
  const all = alwaysCautions(heat).join(' ');

  it.each(['advice', 'witness cones', 'over-temperature cut-out', 'codes', 'licensed practice'])(
    'speak of %s',
    (word) => {
      expect(all).toContain(word);
    },
  );

  it('name the codes that bear on this heat source', () => {
    expect(all).toContain(heat === 'fuel' ? 'gas, fire, flue' : 'electrical');
    expect(all.includes('carbon monoxide')).toBe(heat === 'fuel');
  });

  it('give a temperature in the reader’s unit only', () => {
    expect(hotKilnCaution(speechIn('F'))).toContain('392 °F');
    expect(hotKilnCaution(speechIn('F'))).not.toContain('°C');
  });
});

describe('the cautions of a kiln that burns fuel', () => {
  it.each(['smell gas', 'carbon monoxide', 'flame failure', 'licensed gas fitter', 'local codes'])(
    'speak of %s',
    (words) => {
      expect(FUEL_CAUTION).toContain(words);
    },
  );

  it('of its couple speak of fuel, not of a breaker', () => {
    expect(FUEL_COUPLE_CAUTION).toContain('its fuel shut off');
    expect(FUEL_COUPLE_CAUTION).not.toContain('breaker');
  });
});
