import { describe, expect, test } from 'vitest';
import { rampSlow } from '../../../../core/findings/detectors/ramp-slow.ts';
import { celsiusPerHour } from '../../../../core/units.ts';
import {
  SCHEDULE,
  facts,
  firingFacts,
  heatWorkAt,
  withConfidence,
  withoutSchedule,
} from '../../../builders/facts.ts';
import { traceFrom } from '../../../builders/trace.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';

/** The last ramp is 195 °C, due in 195 min at 60 °C/h. */
const lastRamp = (minutes: number) => firingFacts({ lastRamp: { minutes } });

describe('a slow ramp', () => {
  test('is told with its rates, its delay and how far the firing had fallen behind by then', () => {
    const finding = onlyFinding(rampSlow, lastRamp(260));
    expect(finding.evidence).toEqual([
      { fromSeconds: 450 * 60, toSeconds: 710 * 60, celsius: 1117.5 },
    ]);
    expect(finding.figures.segment).toBe(2);
    expect(finding.figures.plannedCPerHour).toBeCloseTo(60, 9);
    expect(finding.figures.achievedCPerHour).toBeCloseTo(45, 9);
    expect(finding.figures.slowerPercent).toBeCloseTo(25, 9);
    expect(finding.figures.lateMinutes).toBeCloseTo(65, 9);
    expect(finding.figures.behindPlanMinutes).toBeCloseTo(65, 9);
    expect(finding.figures).not.toHaveProperty('cameToC');
  });

  test('that stopped short of its target is as far behind the plan as it is late', () => {
    // By the clock after 360 min, but 90 of 900 °C short: the plan was there 36 min before.
    const short = firingFacts({ middleRamp: { toC: 930, verdict: 'not-reached' } });
    const { figures, thresholds } = onlyFinding(rampSlow, short);
    expect(figures.cameToC).toBe(930);
    expect(figures.lateMinutes).toBeCloseTo(36, 9);
    expect(figures.behindPlanMinutes).toBeCloseTo(36, 9);
    expect(thresholds).toEqual({ lateMinutes: 10 });
  });

  test('has no limit beside a figure that keeps it', () => {
    // 34 min on 360 are 8.6 % slower.
    const { thresholds } = onlyFinding(rampSlow, firingFacts({ middleRamp: { minutes: 394 } }));
    expect(thresholds).toEqual({ lateMinutes: 10 });
  });

  test.each([
    // On 195 min, 8 min are 3.9 % and 10 min 4.9 %; the limits in minutes bite first.
    [195 + 7.9, null],
    [195 + 8.1, 'note'],
    // Less than 5 % slower stays a note, however late.
    [195 + 10.2, 'note'],
    [195 + 10.3, 'watch'],
    // An hour late is 23.5 % slower here.
    [195 + 59.9, 'watch'],
    [195 + 60.1, 'act'],
  ])('that takes %d min of 195: %s', (minutes, severity) => {
    expect(judge(rampSlow, lastRamp(minutes)).findings[0]?.severity ?? null).toBe(severity);
  });

  test.each([
    // The first ramp is due in 60 min: 8 % slower is 65.2 min, 10 % slower 66.7 min.
    [65.1, null],
    [65.3, 'note'],
    [66.6, 'note'],
    [66.8, 'watch'],
  ])('that takes %d min of 60: %s', (minutes, severity) => {
    const { findings } = judge(rampSlow, firingFacts({ firstRamp: { minutes } }));
    expect(findings[0]?.severity ?? null).toBe(severity);
  });

  test('is to be acted on where the last climb went with missed heat-work', () => {
    const short = { ...lastRamp(210), heatWork: heatWorkAt(4.5) };
    expect(onlyFinding(rampSlow, short).severity).toBe('act');
    const early = { ...firingFacts({ middleRamp: { minutes: 385 } }), heatWork: heatWorkAt(4.5) };
    expect(onlyFinding(rampSlow, early).severity).toBe('watch');
  });

  test('an hour late but not 10 % slower is watched only', () => {
    // 900 °C at 90 °C/h are due in 600 min; 62 min more are 9.4 % slower.
    const base = firingFacts({ middleRamp: { minutes: 662 } });
    const legs = base.alignment!.legs.map((leg, i) =>
      i === 2 ? { ...leg, planned: { ...leg.planned, rateCPerHour: celsiusPerHour(90) } } : leg,
    );
    const finding = onlyFinding(rampSlow, { ...base, alignment: { ...base.alignment!, legs } });
    expect(finding.severity).toBe('watch');
    expect(finding.figures.lateMinutes).toBeCloseTo(62, 9);
  });

  test('is not told where the readings cannot show so little', () => {
    const coarse = firingFacts({ lastRamp: { minutes: 204 } }, { intervalSeconds: 600 });
    expect(judge(rampSlow, coarse)).toEqual(NOTHING);
  });

  test('asks for no action on an alignment of little confidence', () => {
    const { severity, figures } = onlyFinding(rampSlow, withConfidence(lastRamp(260), 0.4));
    expect(severity).toBe('watch');
    expect(figures.confidencePercent).toBe(40);
  });
});

describe('a climb that fell back and was regained', () => {
  /** The middle ramp broken at 570 °C: down by `fallC` in 40 min, back at the planned 150 °C/h. */
  const interrupted = (fallC: number, restCPerHour = 150) => {
    const backMinutes = (fallC / restCPerHour) * 60;
    const legMinutes = (900 / restCPerHour) * 60;
    const at = 90 + legMinutes / 2;
    const driven = firingFacts({ middleRamp: { minutes: legMinutes + 40 + backMinutes } });
    const corners: [number, number][] = [
      [0, 20],
      [60, 120],
      [90, 120],
      [at, 570],
      [at + 40, 570 - fallC],
      [at + 40 + backMinutes, 570],
      [90 + legMinutes + 40 + backMinutes, 1020],
    ];
    const samples = traceFrom(corners, { noiseC: 0.5, resolutionC: 0.1 });
    return { ...driven, samples, trace: samples.summary };
  };

  test('is watched at most, and the power stands first', () => {
    // Down 100 °C in 40 min and back in 40: 80 min of 440, beyond an hour and 10 %.
    const { severity, figures, instead } = onlyFinding(rampSlow, interrupted(100));
    expect(severity).toBe('watch');
    expect(figures.fallenMinutes).toBeCloseTo(80, -1);
    expect(figures.otherwiseCPerHour).toBeCloseTo(150, -1);
    expect(instead[0]).toBe('power-interrupted');
    expect(instead).not.toContain('elements-weak');
  });

  test('is as grave as the rest of it was slow', () => {
    // 900 °C at 100 °C/h take three hours longer without any fall.
    const { severity, instead } = onlyFinding(rampSlow, interrupted(100, 100));
    expect(severity).toBe('act');
    expect(instead[0]).toBe('power-interrupted');
    expect(instead).toContain('elements-weak');
  });

  test('does not count a dip of less than 15 °C', () => {
    expect(onlyFinding(rampSlow, interrupted(10)).figures).not.toHaveProperty('fallenMinutes');
  });
});

test('a climb at just the next segment’s rate is an entry first, and never to be acted on', () => {
  // 900 °C at the last ramp's 60 °C/h instead of 150: nine hours longer.
  const atNext = onlyFinding(rampSlow, firingFacts({ middleRamp: { minutes: 900 } }));
  expect(atNext.severity).toBe('watch');
  expect(atNext.figures.nextCPerHour).toBeCloseTo(60, 9);
  expect(atNext.instead[0]).toBe('schedule-suspect');
  const another = onlyFinding(rampSlow, firingFacts({ middleRamp: { minutes: 700 } }));
  expect(another.severity).toBe('act');
  expect(another.figures).not.toHaveProperty('nextCPerHour');
  expect(another.instead[0]).toBe('elements-weak');
});

describe('no slow ramp', () => {
  test('where all went as planned, or faster', () => {
    expect(judge(rampSlow, facts())).toEqual(NOTHING);
    expect(judge(rampSlow, lastRamp(100))).toEqual(NOTHING);
  });

  test('where the firing merely began late', () => {
    // Each climb is held against its own time, not against the plan's clock.
    expect(judge(rampSlow, firingFacts({ dryingHold: { minutes: 120 } }))).toEqual(NOTHING);
  });
});

describe('cannot be judged', () => {
  test('without a schedule or an alignment', () => {
    expect(judge(rampSlow, withoutSchedule())).toEqual(inapplicable('no-schedule'));
    expect(judge(rampSlow, facts({ alignment: null }))).toEqual(inapplicable('no-alignment'));
    expect(judge(rampSlow, withConfidence(facts(), 0.1))).toEqual(
      inapplicable('alignment-uncertain'),
    );
  });

  test('where no climb had a rate', () => {
    const full = SCHEDULE.segments.map((own) => ({ ...own, rateCPerHour: 'full' as const }));
    const schedule = { ...SCHEDULE, segments: full };
    expect(judge(rampSlow, facts({ schedule }))).toEqual(inapplicable('no-rated-ramp'));
  });
});
