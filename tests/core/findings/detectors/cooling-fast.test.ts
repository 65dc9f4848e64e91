import { expect, test } from 'vitest';
import { coolingFast } from '../../../../core/findings/detectors/cooling-fast.ts';
import { celsius, celsiusPerHour, seconds } from '../../../../core/units.ts';
import { facts } from '../../../builders/facts.ts';
import { inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';
import { plainFiring, wareFacts } from '../../../builders/ware.ts';

test.each([
  [299, null],
  [301, 'note'],
])('a glaze that cools by itself at %d °C/h: %s', (crystals, severity) => {
  const cooled = wareFacts(plainFiring({ crystals }));
  expect(judge(coolingFast, cooled).findings[0]?.severity ?? null).toBe(severity);
});

test('a bisque has no glaze to suffer', () => {
  const bisque = wareFacts(plainFiring({ crystals: 500 }), { purpose: 'bisque' });
  expect(judge(coolingFast, bisque)).toMatchObject({ outcome: 'clear', reason: 'no-glaze' });
});

/** A fall from 1100 to 900 °C planned at 100 °C/h that took so many minutes. */
const controlled = (tookMinutes: number) => {
  const base = facts();
  const planned = {
    startSeconds: seconds(40_000),
    endSeconds: seconds(47_200),
    startC: celsius(1100),
    endC: celsius(900),
    rateCPerHour: celsiusPerHour(-100),
  };
  const actual = {
    ...planned,
    endSeconds: seconds(40_000 + tookMinutes * 60),
    rateCPerHour: celsiusPerHour((-200 / tookMinutes) * 60),
  };
  const leg = { segment: 2, kind: 'cooling' as const, planned, actual, verdict: 'fast' as const };
  return { ...base, alignment: { ...base.alignment!, legs: [...base.alignment!.legs, leg] } };
};

test.each([
  [120, null],
  [101, null],
  [99, 'watch'],
])('a fall of two hours that took %d min: %s', (minutes, severity) => {
  expect(judge(coolingFast, controlled(minutes)).findings[0]?.severity ?? null).toBe(severity);
});

test('a fall that was not kept is told with its plan', () => {
  const { figures } = onlyFinding(coolingFast, controlled(60));
  expect(figures).toMatchObject({ segment: 2, plannedCPerHour: 100, fastestCPerHour: 200 });
});

test('a record that ends hot says nothing of it', () => {
  const hot = wareFacts([
    { rateCPerHour: 100, toC: 1100 },
    { rateCPerHour: 400, toC: 900 },
  ]);
  expect(judge(coolingFast, hot)).toEqual(inapplicable('stretch-not-seen'));
});
