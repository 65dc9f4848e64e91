import { expect, test } from 'vitest';
import { openedHot } from '../../../../core/findings/detectors/opened-hot.ts';
import { inapplicable, judge, NOTHING, onlyFinding } from '../../../builders/judge.ts';
import { wareFacts } from '../../../builders/ware.ts';
import type { Stretch } from '../../../builders/trace.ts';

/** Up to 1220 °C, cooled shut to a temperature, and from there on in some other way. */
const cooledTo = (openC: number, then: readonly Stretch[]) =>
  wareFacts([
    { rateCPerHour: 150, toC: 1220 },
    { holdMinutes: 15 },
    { rateCPerHour: 200, toC: 1000 },
    { rateCPerHour: 120, toC: 700 },
    { rateCPerHour: 50, toC: openC },
    ...then,
  ]);
const opened = (openC: number) =>
  cooledTo(openC, [
    { rateCPerHour: 900, toC: openC - 80 },
    { rateCPerHour: 200, toC: 60 },
  ]);

test.each([
  [195, null],
  [210, 'watch'],
  [590, 'watch'],
  [615, 'act'],
])('a kiln opened at %d °C: %s', (openC, severity) => {
  expect(judge(openedHot, opened(openC)).findings[0]?.severity ?? null).toBe(severity);
});

test('the moment and the temperature are told', () => {
  const { figures, evidence } = onlyFinding(openedHot, opened(300));
  expect(figures['openedC']).toBeGreaterThan(295);
  expect(figures['openedC']).toBeLessThan(306);
  expect(figures['beforeCPerHour']).toBeCloseTo(50, 0);
  expect(evidence[0]!.celsius).toBe(figures['openedC']);
});

test('a kiln that stays shut is not opened', () => {
  expect(judge(openedHot, cooledTo(300, [{ rateCPerHour: 30, toC: 60 }]))).toEqual(NOTHING);
});

test('the end of a controlled fall is no opening', () => {
  const slow = wareFacts([
    { rateCPerHour: 150, toC: 1220 },
    { rateCPerHour: 60, toC: 760 },
    // A light kiln, its heat off.
    { rateCPerHour: 250, toC: 500 },
    { rateCPerHour: 100, toC: 100 },
  ]);
  expect(judge(openedHot, slow)).toEqual(NOTHING);
});

test('a bung drawn, which a shut kiln may have lost as well, is not called an opening', () => {
  expect(judge(openedHot, cooledTo(500, [{ rateCPerHour: 180, toC: 60 }]))).toEqual(NOTHING);
});

test('a record without cooling says nothing of it', () => {
  const hot = wareFacts([{ rateCPerHour: 150, toC: 1220 }]);
  expect(judge(openedHot, hot)).toEqual(inapplicable('no-cooling-logged'));
});
