import { describe, expect, it } from 'vitest';
import { elementsWeak } from '../../../../core/findings/detectors/elements-weak.ts';
import type { Elements } from '../../../../core/model/document.ts';
import { facts, NOTHING_OF_ELEMENTS } from '../../../builders/facts.ts';
import { inapplicable, judge, NOTHING, onlyFinding } from '../../../builders/judge.ts';

const withPower = (value: number) => {
  const relativePower = { value, low: value * 0.98, high: value * 1.02 };
  const elements = { ...NOTHING_OF_ELEMENTS, relativePower, relativePowerReason: null };
  return { ...facts(), elements };
};
const without = (relativePowerReason: Elements['relativePowerReason']) => ({
  ...facts(),
  elements: { ...NOTHING_OF_ELEMENTS, relativePowerReason },
});

describe('elements-weak', () => {
  it('asks for action at 90 % of the reference’s power and below', () => {
    const { severity, figures, thresholds, instead } = onlyFinding(elementsWeak, withPower(0.899));
    expect(severity).toBe('act');
    expect(figures['relativePowerPercent']).toBeCloseTo(89.9, 9);
    expect(thresholds['relativePowerPercent']).toBe(90);
    expect(instead).toContain('supply-varies');
  });

  it('watches a little above, and is silent just above that', () => {
    expect(onlyFinding(elementsWeak, withPower(0.915)).severity).toBe('watch');
    expect(judge(elementsWeak, withPower(0.921))).toEqual(NOTHING);
  });

  it('does not apply without a reference, without full power, or without a fit', () => {
    expect(judge(elementsWeak, without('no-reference'))).toEqual(inapplicable('no-reference'));
    expect(judge(elementsWeak, without('never-at-full-power'))).toEqual(
      inapplicable('never-at-full-power'),
    );
    expect(judge(elementsWeak, without('no-cooling-logged'))).toEqual(
      inapplicable('power-not-fitted'),
    );
    expect(judge(elementsWeak, { ...facts(), elements: null })).toEqual(inapplicable('fuel-fired'));
  });
});
