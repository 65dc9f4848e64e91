import { describe, expect, it } from 'vitest';
import { ceilingNear } from '../../../../core/findings/detectors/ceiling-near.ts';
import { celsius } from '../../../../core/units.ts';
import { facts, NOTHING_OF_ELEMENTS } from '../../../builders/facts.ts';
import { inapplicable, judge, NOTHING, onlyFinding } from '../../../builders/judge.ts';

const FIT = {
  wall: { memorySeconds: 20_000, conductivityRise: 0.8 },
  load: { share: 1, coupling: 150 },
  power: 0.15,
  powerErrorGivenWall: 0.01,
  misfitShare: 0.01,
};
/** The schedule goes to 1215 °C. */
const withCeiling = (ceilingC: number | null) => ({
  ...facts(),
  elements: {
    ...NOTHING_OF_ELEMENTS,
    fit: FIT,
    fitReason: null,
    ceilingC: ceilingC === null ? null : celsius(ceilingC),
    ceilingRange:
      ceilingC === null ? null : { lowC: celsius(ceilingC - 40), highC: celsius(ceilingC + 40) },
  },
});

describe('ceiling-near', () => {
  it('watches a ceiling within 100 °C of what was asked', () => {
    const { severity, figures } = onlyFinding(ceilingNear, withCeiling(1314));
    expect(severity).toBe('watch');
    expect(figures['reserveDeltaC']).toBeCloseTo(1314 - facts().trace.peakC, 9);
  });

  it('asks for action where even its upper bound is below that', () => {
    expect(onlyFinding(ceilingNear, withCeiling(1170)).severity).toBe('act');
  });

  it('is silent just beyond, and where the ceiling is beyond what wire bears', () => {
    expect(judge(ceilingNear, withCeiling(1317))).toEqual(NOTHING);
    expect(judge(ceilingNear, withCeiling(null))).toEqual(NOTHING);
  });

  it('does not apply without a fit', () => {
    expect(judge(ceilingNear, facts())).toEqual(inapplicable('never-at-full-power'));
    const elements = { ...NOTHING_OF_ELEMENTS, fitReason: 'no-cooling-logged' };
    expect(judge(ceilingNear, { ...facts(), elements })).toEqual(inapplicable('power-not-fitted'));
  });
});
