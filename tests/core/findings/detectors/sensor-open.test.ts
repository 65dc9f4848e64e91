import { describe, expect, test } from 'vitest';
import { sensorOpen } from '../../../../core/findings/detectors/sensor-open.ts';
import { seconds } from '../../../../core/units.ts';
import { facts, withTrace } from '../../../builders/facts.ts';
import { NOTHING, judge, onlyFinding } from '../../../builders/judge.ts';

const open = (fromMinutes: number, minutes: number) => ({
  fromSeconds: seconds(fromMinutes * 60),
  toSeconds: seconds((fromMinutes + minutes) * 60),
});
const withOpen = (...noReadings: ReturnType<typeof open>[]) => withTrace(facts(), { noReadings });

describe('a couple without a reading', () => {
  test('is told with how long, how often and how much of it while the kiln fired', () => {
    // The heat goes off at 660 min.
    const finding = onlyFinding(sensorOpen, withOpen(open(100, 2), open(300, 4), open(900, 6)));
    expect(finding.figures).toEqual({
      openMinutes: 12,
      firingMinutes: 6,
      longestMinutes: 6,
      times: 3,
    });
    expect(finding.severity).toBe('watch');
    expect(finding.evidence).toHaveLength(3);
  });

  test.each([
    [2.9, null],
    [3, 'watch'],
    [9.9, 'watch'],
    [10, 'act'],
  ])('for %d min while the kiln fires: %s', (minutes, severity) => {
    const { findings } = judge(sensorOpen, withOpen(open(300, minutes)));
    expect(findings[0]?.severity ?? null).toBe(severity);
  });

  test('in rows one by one is never to be acted on, except near the peak', () => {
    // Fifty-four lone rows of two minutes, from 100 min on or about the peak at 660 min.
    const blanks = (from: number, every: number) =>
      Array.from({ length: 54 }, (_, i) => open(from + every * i, 2));
    const early = onlyFinding(sensorOpen, withOpen(...blanks(100, 6)));
    expect(early.severity).toBe('watch');
    expect(early.figures).toMatchObject({ times: 54, longestMinutes: 2, openMinutes: 108 });
    // 1215 − 150 °C is passed at 495 min.
    expect(onlyFinding(sensorOpen, withOpen(...blanks(500, 2.9))).severity).toBe('act');
  });

  test('adds up over many short stretches', () => {
    const blinks = Array.from({ length: 4 }, (_, i) => open(100 + 50 * i, 1));
    expect(onlyFinding(sensorOpen, withOpen(...blinks)).severity).toBe('watch');
    expect(judge(sensorOpen, withOpen(...blinks.slice(0, 2)))).toEqual(NOTHING);
  });

  test('after the heat went off is a note', () => {
    expect(onlyFinding(sensorOpen, withOpen(open(700, 300))).severity).toBe('note');
  });

  test('counts as firing to the end where no cooling was logged', () => {
    const base = withTrace(withOpen(open(700, 300)), { offSeconds: null });
    expect(onlyFinding(sensorOpen, base).severity).toBe('act');
  });
});

test('readings far off the course for minutes are an open couple that was written as a number', () => {
  const dropout = (minutes: number) =>
    withTrace(facts(), {
      repairs: [{ kind: 'dropout', ...open(300, minutes), samples: 1 + Math.floor(minutes) }],
    });
  expect(onlyFinding(sensorOpen, dropout(3)).figures).toMatchObject({ openMinutes: 3, times: 1 });
  expect(judge(sensorOpen, dropout(2.9))).toEqual(NOTHING);
});

test('no open couple where every row had a reading', () => {
  expect(judge(sensorOpen, facts())).toEqual(NOTHING);
});

test('blank rows all over a log are watched and not acted on, however many', () => {
  const blanks = Array.from({ length: 30 }, (_, k) => open(100 + 10 * k, 1));
  expect(onlyFinding(sensorOpen, withOpen(...blanks)).severity).toBe('watch');
});
