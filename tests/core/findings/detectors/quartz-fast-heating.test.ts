import { expect, test } from 'vitest';
import { quartzFastHeating } from '../../../../core/findings/detectors/quartz-fast-heating.ts';
import { inapplicable, judge } from '../../../builders/judge.ts';
import { plainFiring, wareFacts } from '../../../builders/ware.ts';

const severityAt = (quartzUp: number, thicknessMm?: number) => {
  const ware = thicknessMm === undefined ? {} : { ware: { thicknessMm } };
  const facts = wareFacts(plainFiring({ quartzUp }), ware);
  return judge(quartzFastHeating, facts).findings[0]?.severity ?? null;
};

test.each([
  [199, null],
  [201, 'note'],
  [400, 'note'],
])('ware of unknown thickness at %d °C/h: %s', (rate, severity) => {
  expect(severityAt(rate)).toBe(severity);
});

// At most 50 °C/h is advised for large ware (a text on sanitary ware, reference notes).
test.each([
  [49, null],
  [51, 'watch'],
])('ware of 16 mm at %d °C/h: %s', (rate, severity) => {
  expect(severityAt(rate, 16)).toBe(severity);
});

test('a firing that stayed below is not judged', () => {
  const low = wareFacts([{ rateCPerHour: 300, toC: 560 }]);
  expect(judge(quartzFastHeating, low)).toEqual(inapplicable('stretch-not-seen'));
});
