import { expect, test } from 'vitest';
import { quartzFastCooling } from '../../../../core/findings/detectors/quartz-fast-cooling.ts';
import { inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';
import { plainFiring, wareFacts } from '../../../builders/ware.ts';

const severityAt = (rates: Parameters<typeof plainFiring>[0], thicknessMm?: number) => {
  const ware = thicknessMm === undefined ? {} : { ware: { thicknessMm } };
  return (
    judge(quartzFastCooling, wareFacts(plainFiring(rates), ware)).findings[0]?.severity ?? null
  );
};

test.each([
  [{ quartzDown: 199 }, null],
  [{ quartzDown: 201 }, 'note'],
  [{ quartzDown: 301 }, 'watch'],
  [{ cristobalite: 199 }, null],
  [{ cristobalite: 201 }, 'note'],
] as const)('ware of unknown thickness, %o: %s', (rates, severity) => {
  expect(severityAt(rates)).toBe(severity);
});

test.each([
  [49, null],
  [51, 'watch'],
])('ware of 16 mm at %d °C/h: %s', (quartzDown, severity) => {
  expect(severityAt({ quartzDown }, 16)).toBe(severity);
});

test('the faster of the two changes is told, by where its stretch begins', () => {
  const facts = wareFacts(plainFiring({ quartzDown: 220, cristobalite: 260 }));
  const finding = onlyFinding(quartzFastCooling, facts);
  expect(finding.figures['fromC']).toBe(250);
  expect(finding.figures['fastestCPerHour']).toBeCloseTo(260, 6);
});

test('a record that ends hot says nothing of it', () => {
  const hot = wareFacts([
    { rateCPerHour: 100, toC: 1000 },
    { rateCPerHour: 400, toC: 700 },
  ]);
  expect(judge(quartzFastCooling, hot)).toEqual(inapplicable('no-cooling-logged'));
});
