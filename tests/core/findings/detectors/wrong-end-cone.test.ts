import { describe, expect, test } from 'vitest';
import { wrongEndCone } from '../../../../core/findings/detectors/wrong-end-cone.ts';
import type { Cone } from '../../../../core/model/cone.ts';
import type { Schedule } from '../../../../core/model/schedule.ts';
import { celsius, celsiusDelta, seconds } from '../../../../core/units.ts';
import { SCHEDULE, facts, heatWorkAt } from '../../../builders/facts.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';

const fired = (position: number | null, target: Cone, schedule: Schedule | null = null) =>
  facts({ heatWork: heatWorkAt(position, target), schedule });

const toppedAt = (topC: number): Schedule => ({
  ...SCHEDULE,
  segments: [
    ...SCHEDULE.segments.slice(0, 1),
    { ...SCHEDULE.segments[2]!, targetC: celsius(topC) },
  ],
});

describe('a cone from the wrong end of the scale', () => {
  test('is told by how far the heat-work is from either', () => {
    // Cone 06 stands at −5 and 6 at 6.
    const finding = onlyFinding(wrongEndCone, fired(-4.8, '6'));
    expect(finding.severity).toBe('act');
    expect(finding.figures.fromNamesakeCones).toBeCloseTo(0.2, 9);
    expect(finding.figures.fromTargetCones).toBeCloseTo(-10.8, 9);
  });

  test.each<[Cone, number, boolean]>([
    // Cones 6 and 06 get mixed up (common practice).
    ['6', -5, true],
    ['6', -4, true],
    ['6', -3.9, false],
    ['6', -6.1, false],
    ['6', 5.2, false],
    ['06', 6, true],
    ['06', 6.9, true],
    ['06', 4.9, false],
    ['05.5', 5.5, true],
    ['2', -1, true],
    ['010', 10, true],
  ])('cone %s at position %d: %s', (target, position, isFound) => {
    expect(judge(wrongEndCone, fired(position, target)).outcome).toBe(isFound ? 'found' : 'clear');
  });

  test('is only watched where the kiln stopped below a schedule that goes to the right cone', () => {
    expect(onlyFinding(wrongEndCone, fired(-5, '6', SCHEDULE)).severity).toBe('watch');
    // Nothing stops a firing above its schedule by chance.
    expect(onlyFinding(wrongEndCone, fired(6, '06', toppedAt(998))).severity).toBe('act');
  });

  test('is not told of a kiln that heated on past its target and got there by chance', () => {
    const overshoots = [
      {
        segment: 2,
        overC: celsiusDelta(112),
        atSeconds: seconds((645 + 36) * 60),
        aboveForSeconds: seconds(4000),
      },
    ];
    const ran = { ...fired(6, '06', toppedAt(998)), overshoots };
    expect(judge(wrongEndCone, ran)).toMatchObject({ outcome: 'clear', reason: 'told-by-another' });
    // A schedule that was made for the namesake is wrong all the same.
    const wrong = { ...fired(6, '06', toppedAt(1222)), overshoots };
    expect(judge(wrongEndCone, wrong).outcome).toBe('found');
  });

  test.each([
    // The end-point chart at 60 °C/h (2016): 06 at 998, 05½ at 1015, 05 at 1031, 04 at 1063.
    [998, true],
    [1031, true],
    [1063, false],
    [1222, false],
  ])('is told by a schedule that goes to %d °C for cone 6: %s', (topC, isFound) => {
    const brokenOff = fired(-15, '6', toppedAt(topC));
    const { outcome, findings } = judge(wrongEndCone, brokenOff);
    expect(outcome).toBe(isFound ? 'found' : 'clear');
    if (isFound) expect(findings[0]).toMatchObject({ figures: { scheduleTopC: topC } });
  });

  test('is not told where the heat-work is right, whatever the schedule says', () => {
    expect(judge(wrongEndCone, fired(6, '6', toppedAt(998)))).toEqual(NOTHING);
  });
});

describe('cannot be judged', () => {
  test('without heat-work, or without a cone that was meant', () => {
    expect(judge(wrongEndCone, facts({ heatWork: null }))).toEqual(inapplicable('no-heat-work'));
    expect(judge(wrongEndCone, facts({ heatWork: heatWorkAt(6, null) }))).toEqual(
      inapplicable('no-target-cone'),
    );
  });

  test('where no cone was reached, and the schedule does not tell', () => {
    expect(judge(wrongEndCone, fired(null, '6'))).toEqual(inapplicable('no-cone-reached'));
    expect(judge(wrongEndCone, fired(null, '6', toppedAt(998))).outcome).toBe('found');
  });

  test.each<Cone>(['022', '015', '01', '1'])('for cone %s', (target) => {
    expect(judge(wrongEndCone, fired(5, target))).toEqual(inapplicable('no-mirrored-cone'));
  });

  test('by a lower bound below the cone that was meant', () => {
    const heatWork = heatWorkAt(-5, '6', { bound: 'at-least' });
    expect(judge(wrongEndCone, facts({ heatWork, schedule: null }))).toEqual(
      inapplicable('record-ends-hot'),
    );
    const above = heatWorkAt(6, '06', { bound: 'at-least' });
    expect(judge(wrongEndCone, facts({ heatWork: above, schedule: null })).outcome).toBe('found');
  });
});
