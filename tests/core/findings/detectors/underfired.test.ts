import { describe, expect, test } from 'vitest';
import { underfired } from '../../../../core/findings/detectors/underfired.ts';
import { facts, heatWorkAt } from '../../../builders/facts.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';

const at = (position: number | null, rangeCones = 0.5) =>
  facts({ heatWork: heatWorkAt(position, '6', { rangeCones }) });

describe('heat-work short of the cone', () => {
  test('is told in cones and in degrees of end point, over the stretch it was done in', () => {
    const finding = onlyFinding(underfired, at(4.5));
    expect(finding.figures).toMatchObject({ shortCones: 1.5, shortMarginC: 30 });
    expect(finding.thresholds).toEqual({ shortCones: 0.5 });
    expect(finding.evidence).toEqual([{ fromSeconds: 540 * 60, toSeconds: 645 * 60 }]);
  });

  test.each([
    // Half a cone is a usual tolerance (common practice, no source).
    [5.66, 0.5, null],
    [5.64, 0.5, 'note'],
    [5.51, 0.001, 'note'],
    [5.49, 0.5, 'watch'],
    // The range of ± half a cone leaves the half cone behind only from a whole cone on.
    [5.01, 0.5, 'watch'],
    [4.99, 0.5, 'act'],
    [5.4, 0.05, 'act'],
    [4, 3, 'watch'],
  ])('at %d ± %d of cone 6: %s', (position, rangeCones, severity) => {
    const { findings } = judge(underfired, at(position, rangeCones));
    expect(findings[0]?.severity ?? null).toBe(severity);
  });

  test('is certain where not even the coolest cone is down', () => {
    expect(onlyFinding(underfired, at(null)).severity).toBe('act');
    const cool = facts({ heatWork: heatWorkAt(null, '022') });
    expect(onlyFinding(underfired, cool).severity).toBe('watch');
  });

  test('leaves out degrees where none can be given', () => {
    const heatWork = heatWorkAt(4.5);
    const target = { ...heatWork.target!, marginC: null };
    const { figures } = onlyFinding(underfired, facts({ heatWork: { ...heatWork, target } }));
    expect(figures).not.toHaveProperty('shortMarginC');
  });
});

test('no short heat-work at the cone, or beyond it', () => {
  expect(judge(underfired, at(6))).toEqual(NOTHING);
  expect(judge(underfired, at(9))).toEqual(NOTHING);
});

describe('cannot be judged', () => {
  test('without heat-work, or without a cone that was meant', () => {
    expect(judge(underfired, facts({ heatWork: null }))).toEqual(inapplicable('no-heat-work'));
    const heatWork = heatWorkAt(6, null);
    expect(judge(underfired, facts({ heatWork }))).toEqual(inapplicable('no-target-cone'));
  });

  test('by a lower bound, unless the cone is reached by it already', () => {
    const bound = (position: number | null) =>
      facts({ heatWork: heatWorkAt(position, '6', { bound: 'at-least' }) });
    expect(judge(underfired, bound(4))).toEqual(inapplicable('record-ends-hot'));
    expect(judge(underfired, bound(null))).toEqual(inapplicable('record-ends-hot'));
    expect(judge(underfired, bound(6.2))).toEqual(NOTHING);
  });
});
