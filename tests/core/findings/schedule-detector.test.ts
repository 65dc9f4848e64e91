import { describe, expect, test } from 'vitest';
import { clear, found, type Detector, type Verdict } from '../../../core/findings/detector.ts';
import {
  TRUSTED_CONFIDENCE_PERCENT,
  USABLE_CONFIDENCE_PERCENT,
  defineScheduleDetector,
} from '../../../core/findings/schedule-detector.ts';
import type { Severity } from '../../../core/model/finding.ts';
import { facts, withConfidence, withoutSchedule } from '../../builders/facts.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../builders/judge.ts';

const saying = (verdict: Verdict): Detector =>
  defineScheduleDetector({ id: 'ramp-slow', needs: ['trace'], detect: () => verdict });

const finding = (severity: Severity): Detector =>
  saying(
    found({ severity, evidence: [], figures: { lateMinutes: 70 }, thresholds: {}, instead: [] }),
  );

const withPercent = (percent: number) => withConfidence(facts(), percent / 100);

describe('a detector that holds a firing against its schedule', () => {
  test('needs the schedule and its alignment', () => {
    expect(finding('act').needs).toEqual(['schedule', 'alignment', 'trace']);
    expect(judge(finding('act'), withoutSchedule())).toEqual(inapplicable('no-schedule'));
    expect(judge(finding('act'), facts({ alignment: null }))).toEqual(inapplicable('no-alignment'));
  });

  test('asks for action on a trusted alignment', () => {
    const { severity, figures } = onlyFinding(
      finding('act'),
      withPercent(TRUSTED_CONFIDENCE_PERCENT),
    );
    expect(severity).toBe('act');
    expect(figures).toEqual({ lateMinutes: 70 });
  });

  test('asks for none on one that is trusted less, and says how little', () => {
    const { severity, figures, thresholds } = onlyFinding(finding('act'), withPercent(49));
    expect(severity).toBe('watch');
    expect(figures).toEqual({ lateMinutes: 70, confidencePercent: 49 });
    expect(thresholds).toEqual({ confidencePercent: 50 });
  });

  test.each(['watch', 'note'] as const)('leaves a %s what it is', (severity) => {
    expect(onlyFinding(finding(severity), withPercent(30)).severity).toBe(severity);
  });

  test('judges nothing on an alignment that is a guess', () => {
    const guess = withPercent(USABLE_CONFIDENCE_PERCENT - 1);
    expect(judge(finding('act'), guess)).toEqual(inapplicable('alignment-uncertain'));
    expect(judge(saying(clear()), withPercent(USABLE_CONFIDENCE_PERCENT))).toEqual(NOTHING);
  });
});
