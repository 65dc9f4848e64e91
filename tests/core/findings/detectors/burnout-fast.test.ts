import { expect, test } from 'vitest';
import { burnoutFast } from '../../../../core/findings/detectors/burnout-fast.ts';
import { inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';
import { plainFiring, wareFacts } from '../../../builders/ware.ts';

const bisque = (burnout: number) => wareFacts(plainFiring({ burnout }), { cone: '04' });

test.each([
  [159, null],
  [161, 'note'],
  [199, 'note'],
  [201, 'watch'],
  [500, 'watch'],
])('a bisque at %d °C/h through 700–900 °C: %s', (rate, severity) => {
  expect(judge(burnoutFast, bisque(rate)).findings[0]?.severity ?? null).toBe(severity);
});

// Both published bisque programmes of the reference notes: 150 and 200 °F/h through this stretch.
test.each([150 / 1.8, 200 / 1.8])('a published programme’s %d °C/h is within limits', (rate) => {
  expect(judge(burnoutFast, bisque(rate)).outcome).toBe('clear');
});

test('thick ware has a slower limit', () => {
  const thick = wareFacts(plainFiring({ burnout: 100 }), {
    purpose: 'bisque',
    ware: { thicknessMm: 12 },
  });
  expect(onlyFinding(burnoutFast, thick)).toMatchObject({ severity: 'watch' });
});

test('a glaze load has burnt out before', () => {
  const glaze = wareFacts(plainFiring({ burnout: 300 }), { cone: '6' });
  expect(judge(burnoutFast, glaze)).toEqual(inapplicable('ware-fired-before'));
});

test('a firing that stayed below is not judged', () => {
  const low = wareFacts([{ rateCPerHour: 300, toC: 800 }], { cone: '04' });
  expect(judge(burnoutFast, low)).toEqual(inapplicable('stretch-not-seen'));
});
