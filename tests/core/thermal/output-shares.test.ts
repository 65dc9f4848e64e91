import { describe, expect, it } from 'vitest';
import { outputShares } from '../../../core/thermal/output-shares.ts';
import { FULL, OFF, UNKNOWN } from '../../../core/thermal/power-course.ts';
import { firing, traceFrom } from '../../builders/trace.ts';

const POINTS = firing(20, { rateCPerHour: 300, toC: 1000 }, { rateCPerHour: 200, toC: 300 });
const trace = traceFrom(POINTS);
const count = Math.floor(trace.summary.durationSeconds / 120) + 1;
const at = (i: number) => trace.celsius[2 * i]!;
const course = {
  startSeconds: 0,
  intervalSeconds: 120,
  roomC: 20,
  celsius: Float64Array.from({ length: count }, (_, i) => at(i)),
  power: new Int8Array(count).fill(UNKNOWN),
};
const withOutput = (percent: (atSeconds: number) => number) => ({
  ...trace,
  summary: { ...trace.summary, offSeconds: null },
  outputPercent: trace.atSeconds.map(percent),
});

describe('shares of full power by the logged output', () => {
  it('are none without an output in the log', () => {
    expect(outputShares({ ...trace, outputPercent: null }, course)).toBeNull();
  });

  it('are means of what was logged, above 400 °C', () => {
    const shares = outputShares(
      withOutput((atSeconds) => (atSeconds % 120 === 0 ? 60 : 70)),
      course,
    )!;
    const cold = course.celsius.findIndex((celsius) => celsius >= 400);
    expect(shares.subarray(0, cold).every(Number.isNaN)).toBe(true);
    // Readings every minute: the middle one at 60 %, those at both ends at 70.
    expect(shares[cold + 5]).toBeCloseTo(2 / 3, 9);
  });

  it('are 0 where the kiln is known to be off, and unknown where no output was logged', () => {
    const power = course.power.map((_, i) => (i > 150 ? OFF : UNKNOWN));
    power[100] = FULL;
    const shares = outputShares(
      withOutput(() => NaN),
      { ...course, power },
    )!;
    expect(shares[160]).toBe(0);
    expect(shares[90]).toBeNaN();
    expect(shares[100]).toBe(1);
  });
});
