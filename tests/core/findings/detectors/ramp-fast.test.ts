import { describe, expect, test } from 'vitest';
import { rampFast } from '../../../../core/findings/detectors/ramp-fast.ts';
import {
  SCHEDULE,
  facts,
  firingFacts,
  heatWorkAt,
  withConfidence,
  withoutSchedule,
} from '../../../builders/facts.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';

/** The last ramp is 195 °C, due in 195 min at 60 °C/h. */
const lastRamp = (minutes: number) => firingFacts({ lastRamp: { minutes } });

describe('a fast ramp', () => {
  test('is told with its rates and how early it was', () => {
    const finding = onlyFinding(rampFast, lastRamp(150));
    expect(finding.figures.achievedCPerHour).toBeCloseTo(78, 9);
    expect(finding.figures.fasterPercent).toBeCloseTo(30, 9);
    expect(finding.figures.earlyMinutes).toBeCloseTo(45, 9);
    expect(finding.figures).not.toHaveProperty('behindDeltaC');
    expect(finding.instead[0]).toBe('power-stuck-on');
    expect(finding.evidence[0]).toMatchObject({ fromSeconds: 450 * 60, toSeconds: 600 * 60 });
  });

  test.each([
    [195 - 7.9, null],
    [195 - 8.1, 'note'],
    [195 - 9.9, 'note'],
    [195 - 10.1, 'watch'],
    [195 - 20, 'watch'],
    // Half as fast again: 195 °C at 90 °C/h take 130 min.
    [130.2, 'watch'],
    [129.8, 'act'],
  ])('that takes %d min of 195: %s', (minutes, severity) => {
    expect(judge(rampFast, lastRamp(minutes)).findings[0]?.severity ?? null).toBe(severity);
  });

  test('is to be acted on where the last climb went with missed heat-work', () => {
    const short = { ...lastRamp(180), heatWork: heatWorkAt(4.5) };
    expect(onlyFinding(rampFast, short).severity).toBe('act');
    expect(onlyFinding(rampFast, lastRamp(180)).severity).toBe('watch');
  });

  test('that makes up for temperature lost before is a note', () => {
    // From 920 the last ramp has 295 °C to go: in its planned 195 min that is 91 °C/h.
    const catchingUp = firingFacts({ middleRamp: { toC: 920, verdict: 'not-reached' } });
    const finding = onlyFinding(rampFast, catchingUp);
    expect(finding.severity).toBe('note');
    expect(finding.figures.achievedCPerHour).toBeCloseTo(90.8, 1);
    expect(finding.figures.behindDeltaC).toBeCloseTo(100, 6);
    expect(finding.figures.madeUpMinutes).toBeCloseTo(100, 6);
    expect(finding.figures).not.toHaveProperty('earlyMinutes');
    expect(finding.instead).not.toContain('power-stuck-on');
  });

  test('that makes up for time lost before is a note, and one that overtakes the plan is not', () => {
    const behind = (lastMinutes: number) =>
      firingFacts({ middleRamp: { minutes: 420 }, lastRamp: { minutes: lastMinutes } });
    // An hour late into a ramp of 195 min: in 135 it is on the plan again.
    expect(onlyFinding(rampFast, behind(135)).severity).toBe('note');
    expect(onlyFinding(rampFast, behind(120)).severity).toBe('note');
    expect(onlyFinding(rampFast, behind(60)).severity).toBe('act');
  });

  test('of a twentieth and less stays a note, however early', () => {
    // The middle ramp of 900 °C is due in 360 min.
    const { findings } = judge(rampFast, firingFacts({ middleRamp: { minutes: 345 } }));
    expect(findings[0]?.severity).toBe('note');
  });

  test('asks for no action on an alignment of little confidence', () => {
    expect(onlyFinding(rampFast, withConfidence(lastRamp(100), 0.4)).severity).toBe('watch');
  });
});

test('no fast ramp where all went as planned, or slower', () => {
  expect(judge(rampFast, facts())).toEqual(NOTHING);
  expect(judge(rampFast, lastRamp(300))).toEqual(NOTHING);
});

test('cannot be judged without a schedule, or where no climb had a rate', () => {
  expect(judge(rampFast, withoutSchedule())).toEqual(inapplicable('no-schedule'));
  const full = SCHEDULE.segments.map((own) => ({ ...own, rateCPerHour: 'full' as const }));
  const schedule = { ...SCHEDULE, segments: full };
  expect(judge(rampFast, facts({ schedule }))).toEqual(inapplicable('no-rated-ramp'));
});
