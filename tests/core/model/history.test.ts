import { expect, test } from 'vitest';
import { zForecast, zHistoryStep } from '../../../core/model/history.ts';

test('a forecast that is not yet to be told says why', () => {
  const forecast = {
    firings: null,
    reason: 'too-few-firings',
    limitKind: 'usual-replacement',
    limitPower: 0.91,
  };
  expect(zForecast.parse(forecast)).toEqual(forecast);
  expect(zForecast.safeParse({ ...forecast, limitKind: 'never' }).success).toBe(false);
});

test('a step is of one of three kinds', () => {
  const step = { kind: 'lost', firing: 3, powerPercent: -17, coupleDeltaC: null };
  expect(zHistoryStep.parse(step)).toEqual(step);
  expect(zHistoryStep.safeParse({ ...step, kind: 'odd' }).success).toBe(false);
});
