import { describe, expect, test } from 'vitest';
import { sensorLag } from '../../../../core/findings/detectors/sensor-lag.ts';
import type { Facts } from '../../../../core/findings/facts.ts';
import { facts } from '../../../builders/facts.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';

/** An invented firing with a second meter that runs ahead of the main couple. */
const withSecond = (lagMinutes: number, offC = 0): Facts => {
  const base = facts();
  const { celsius, slopeCPerHour } = base.samples;
  const second = celsius.map((value, i) => value + (slopeCPerHour[i]! * lagMinutes) / 60 + offC);
  return { ...base, samples: { ...base.samples, zones: [{ channel: 'meter', celsius: second }] } };
};

describe('a couple that follows late', () => {
  test.each([
    [3.9, null],
    [4.1, 'watch'],
    [9, 'watch'],
  ])('by %d min: %s', (lagMinutes, severity) => {
    const { findings } = judge(sensorLag, withSecond(lagMinutes));
    expect(findings[0]?.severity ?? null).toBe(severity);
  });

  test('reads low while heating and high while cooling', () => {
    const { figures } = onlyFinding(sensorLag, withSecond(6));
    expect(figures['whileHeatingDeltaC']).toBeCloseTo(-15, 0);
    expect(figures['whileCoolingDeltaC']).toBeGreaterThan(5);
  });

  test('is not one that is off by the same both ways', () => {
    expect(judge(sensorLag, withSecond(0, 25))).toEqual(NOTHING);
  });

  test('is not the main couple where the other follows late', () => {
    expect(judge(sensorLag, withSecond(-12))).toEqual(NOTHING);
  });
});

test('one place cannot show a lag', () => {
  expect(judge(sensorLag, facts())).toEqual(inapplicable('no-second-place'));
});

test('a second meter without readings cannot either', () => {
  const base = withSecond(6);
  const zones = [{ channel: 'meter', celsius: base.samples.celsius.map(() => NaN) }];
  expect(judge(sensorLag, { ...base, samples: { ...base.samples, zones } })).toEqual(
    inapplicable('not-heated-and-cooled'),
  );
});
