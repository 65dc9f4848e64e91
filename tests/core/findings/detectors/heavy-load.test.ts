import { describe, expect, it } from 'vitest';
import { heavyLoad } from '../../../../core/findings/detectors/heavy-load.ts';
import { facts, NOTHING_OF_ELEMENTS } from '../../../builders/facts.ts';
import { inapplicable, judge, NOTHING, onlyFinding } from '../../../builders/judge.ts';

const withLoad = (relativeLoad: number, power = 1) => ({
  ...facts(),
  elements: {
    ...NOTHING_OF_ELEMENTS,
    relativeLoad,
    relativePower: { value: power, low: power - 0.02, high: power + 0.02 },
    relativePowerReason: null,
  },
});

describe('heavy-load', () => {
  it('notes a load that took up a good quarter more than the reference’s', () => {
    const { severity, figures, instead } = onlyFinding(heavyLoad, withLoad(1.26));
    expect(severity).toBe('note');
    expect(figures['heavierPercent']).toBeCloseTo(26, 9);
    expect(instead).not.toContain('elements-weak');
  });

  it('is silent just short of that', () => {
    expect(judge(heavyLoad, withLoad(1.24))).toEqual(NOTHING);
  });

  it('names weak elements too where the power was down', () => {
    expect(onlyFinding(heavyLoad, withLoad(1.4, 0.88)).instead).toContain('elements-weak');
  });

  it('does not apply without a reference or a fit', () => {
    expect(judge(heavyLoad, facts())).toEqual(inapplicable('no-reference'));
    const elements = { ...NOTHING_OF_ELEMENTS, relativePowerReason: 'no-cooling-logged' };
    expect(judge(heavyLoad, { ...facts(), elements })).toEqual(inapplicable('power-not-fitted'));
  });
});
