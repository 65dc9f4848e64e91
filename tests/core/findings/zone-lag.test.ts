import { describe, expect, test } from 'vitest';
import { zoneLag } from '../../../core/findings/zone-lag.ts';
import type { Trace } from '../../../core/model/trace.ts';
import { firing, traceFrom } from '../../builders/trace.ts';

const UP_AND_DOWN = traceFrom(
  firing(20, { rateCPerHour: 150, toC: 1000 }, { rateCPerHour: 100, toC: 100 }),
  { noiseC: 0.3 },
);

/** Another place that is `τ·slope` ahead of the main couple, and off by what is told. */
const ahead = (trace: Trace, lagMinutes: number, offC: (atC: number) => number = () => 0) => ({
  channel: 'second meter',
  celsius: trace.celsius.map(
    (value, i) => value + (trace.slopeCPerHour[i]! * lagMinutes) / 60 + offC(value),
  ),
});

describe('a lag', () => {
  // A first-order sensor on a ramp reads rate · τ behind (any text on measurement dynamics).
  test('is found, with the difference both ways', () => {
    const lag = zoneLag(UP_AND_DOWN, ahead(UP_AND_DOWN, 6))!;
    expect(lag.lagMinutes).toBeCloseTo(6, 1);
    expect(lag.heatingDeltaC).toBeCloseTo(-15, 0);
    expect(lag.coolingDeltaC).toBeCloseTo(10, 0);
  });

  test('is not taken for an error that is the same both ways', () => {
    const lag = zoneLag(
      UP_AND_DOWN,
      ahead(UP_AND_DOWN, 0, (atC) => 5 + 0.01 * atC),
    )!;
    expect(lag.lagMinutes).toBeCloseTo(0, 1);
  });

  test('of the other place is negative', () => {
    expect(zoneLag(UP_AND_DOWN, ahead(UP_AND_DOWN, -3))!.lagMinutes).toBeCloseTo(-3, 1);
  });

  test('cannot be told from heating alone', () => {
    const climb = traceFrom(firing(20, { rateCPerHour: 150, toC: 1000 }));
    expect(zoneLag(climb, ahead(climb, 6))).toBeNull();
  });

  test('needs readings of the other place', () => {
    const silent = { channel: 'z', celsius: UP_AND_DOWN.celsius.map(() => NaN) };
    expect(zoneLag(UP_AND_DOWN, silent)).toBeNull();
  });
});
