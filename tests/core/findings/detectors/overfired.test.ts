import { describe, expect, test } from 'vitest';
import { overfired } from '../../../../core/findings/detectors/overfired.ts';
import {
  facts,
  firingFacts,
  heatWorkAt,
  withConfidence,
  withoutSchedule,
} from '../../../builders/facts.ts';
import { celsiusDelta, seconds } from '../../../../core/units.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';

const at = (position: number | null, rangeCones = 0.5) =>
  facts({ heatWork: heatWorkAt(position, '6', { rangeCones }) });

describe('heat-work beyond the cone', () => {
  test('offers the lost zero only where the firing came out at the namesake', () => {
    expect(onlyFinding(overfired, at(7.5)).instead).not.toContain('wrong-end-cone');
  });

  test('does not blame a long hold through which the kiln heated on', () => {
    const held = firingFacts({ topHold: { minutes: 30, toC: 1290 } });
    const overshoots = [
      {
        segment: 2,
        overC: celsiusDelta(75),
        atSeconds: seconds(675 * 60),
        aboveForSeconds: seconds(2400),
      },
    ];
    const hot = { ...held, heatWork: heatWorkAt(8.5) };
    expect(onlyFinding(overfired, hot).figures).toHaveProperty('heldMinutes');
    const { figures, instead } = onlyFinding(overfired, { ...hot, overshoots });
    expect(figures).not.toHaveProperty('heldMinutes');
    expect(instead).toContain('overshoot');
  });

  test('is told in cones and in degrees of end point', () => {
    const { figures, thresholds } = onlyFinding(overfired, at(7.5));
    expect(figures).toMatchObject({ overCones: 1.5, pastMarginC: 30 });
    expect(thresholds).toEqual({ overCones: 0.5 });
  });

  test.each([
    // Half a cone is a usual tolerance (common practice, no source).
    [6.34, 0.5, null],
    [6.36, 0.5, 'note'],
    [6.49, 0.001, 'note'],
    [6.51, 0.5, 'watch'],
    [6.99, 0.5, 'watch'],
    [7.01, 0.5, 'act'],
    [6.6, 0.05, 'act'],
  ])('at %d ± %d of cone 6: %s', (position, rangeCones, severity) => {
    const { findings } = judge(overfired, at(position, rangeCones));
    expect(findings[0]?.severity ?? null).toBe(severity);
  });

  test('is told of a lower bound too', () => {
    const heatWork = heatWorkAt(8, '6', { bound: 'at-least' });
    expect(onlyFinding(overfired, facts({ heatWork })).severity).toBe('act');
  });
});

describe('a hold at the top that ran long', () => {
  const held = (minutes: number) => ({
    ...firingFacts({ topHold: { minutes } }),
    heatWork: heatWorkAt(8),
  });

  test('is named as the likely reason, and what would make a hold long stands first', () => {
    const { figures, instead } = onlyFinding(overfired, held(90));
    expect(figures).toMatchObject({ segment: 2, plannedMinutes: 15, heldMinutes: 90 });
    expect(instead).toEqual(['schedule-suspect', 'power-stuck-on', 'sensor-drift']);
  });

  test.each([
    [19.9, false],
    [20.1, true],
  ])('counts from five minutes and a fifth on: %d min of 15: %s', (minutes, isNamed) => {
    expect('heldMinutes' in onlyFinding(overfired, held(minutes)).figures).toBe(isNamed);
  });

  test('is not looked for where the legs are a guess, or there are none', () => {
    for (const base of [withConfidence(held(90), 0.1), withoutSchedule(held(90))]) {
      expect(onlyFinding(overfired, base).figures).not.toHaveProperty('heldMinutes');
    }
  });
});

test('no heat-work beyond the cone at it, or short of it', () => {
  expect(judge(overfired, at(6))).toEqual(NOTHING);
  expect(judge(overfired, at(3))).toEqual(NOTHING);
  expect(judge(overfired, at(null))).toEqual(NOTHING);
});

test('cannot be judged without heat-work, or without a cone that was meant', () => {
  expect(judge(overfired, facts({ heatWork: null }))).toEqual(inapplicable('no-heat-work'));
  const heatWork = heatWorkAt(6, null);
  expect(judge(overfired, facts({ heatWork }))).toEqual(inapplicable('no-target-cone'));
});
