import { describe, expect, test } from 'vitest';
import { overshoot } from '../../../../core/findings/detectors/overshoot.ts';
import type { Facts } from '../../../../core/findings/facts.ts';
import { celsiusDelta, seconds } from '../../../../core/units.ts';
import {
  facts,
  heatWorkAt,
  withConfidence,
  withTrace,
  withoutSchedule,
} from '../../../builders/facts.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';

const over = (overC: number, segment = 0): Facts =>
  facts({
    overshoots: [
      {
        segment,
        overC: celsiusDelta(overC),
        atSeconds: seconds(3900),
        aboveForSeconds: seconds(600),
      },
    ],
  });

describe('an overshoot', () => {
  test('is told with its height and its length', () => {
    const finding = onlyFinding(overshoot, over(13));
    expect(finding.figures).toEqual({
      segment: 0,
      targetC: 120,
      overDeltaC: 13,
      aboveMinutes: 10,
    });
    expect(finding.evidence).toEqual([{ fromSeconds: 3600, toSeconds: 4200, celsius: 133 }]);
  });

  test.each([
    [4.9, null],
    [5, 'note'],
    [7.9, 'note'],
    [8, 'watch'],
    [40, 'watch'],
  ])('of %d °C: %s', (overC, severity) => {
    expect(judge(overshoot, over(overC)).findings[0]?.severity ?? null).toBe(severity);
  });

  test('is to be acted on at the top, where the heat-work missed its cone', () => {
    const heatWork = heatWorkAt(7.6);
    expect(onlyFinding(overshoot, { ...over(9, 2), heatWork }).severity).toBe('act');
    expect(onlyFinding(overshoot, { ...over(9, 0), heatWork }).severity).toBe('watch');
    expect(onlyFinding(overshoot, { ...over(7, 2), heatWork }).severity).toBe('note');
    expect(onlyFinding(overshoot, over(30, 2)).severity).toBe('watch');
    const unsure = withConfidence({ ...over(9, 2), heatWork }, 0.4);
    expect(onlyFinding(overshoot, unsure).severity).toBe('watch');
  });

  test('says of a kiln that climbed on through its hold how fast and for how long', () => {
    // At the top after 645 min at 60 °C/h; twelve minutes later 39 °C beyond.
    const ranOn = facts({
      overshoots: [
        {
          segment: 2,
          overC: celsiusDelta(39),
          atSeconds: seconds(657 * 60),
          aboveForSeconds: seconds(1200),
        },
      ],
    });
    const { figures, instead } = onlyFinding(overshoot, ranOn);
    expect(figures).toMatchObject({ climbedOnMinutes: 12, climbedOnCPerHour: 195 });
    expect(instead).toEqual(['power-stuck-on', 'schedule-suspect']);
  });

  test('is not told within three times the noise, or within the rounding', () => {
    expect(judge(overshoot, withTrace(over(8.9), { noiseC: celsiusDelta(3) }))).toEqual(NOTHING);
    expect(judge(overshoot, withTrace(over(9.9), { resolutionC: celsiusDelta(10) }))).toEqual(
      NOTHING,
    );
  });
});

test('no overshoot where none was measured', () => {
  expect(judge(overshoot, facts())).toEqual(NOTHING);
});

test('cannot be judged without a schedule', () => {
  expect(judge(overshoot, withoutSchedule())).toEqual(inapplicable('no-schedule'));
});
