import { describe, expect, it } from 'vitest';
import { thinnedCurve } from '../../../core/trace/curve.ts';
import { celsius, seconds } from '../../../core/units.ts';
import { firing, traceFrom } from '../../builders/trace.ts';

describe('the thinned curve', () => {
  const trace = traceFrom(
    firing(20, { rateCPerHour: 100, toC: 1220 }, { rateCPerHour: 150, toC: 100 }),
    {
      intervalSeconds: 5,
    },
  );

  it('keeps the peak and stays within a few thousand points', () => {
    const curve = thinnedCurve(trace, null);
    expect(curve.atSeconds.length).toBeLessThanOrEqual(3000);
    expect(Math.max(...curve.celsius)).toBe(1220);
    expect(curve.differenceC).toBeNull();
  });

  it('holds the difference to the plan, and nothing where the plan does not reach', () => {
    const planned = [
      { atSeconds: seconds(600), celsius: celsius(20) },
      { atSeconds: seconds(36_600), celsius: celsius(1020) },
    ];
    const { atSeconds, differenceC } = thinnedCurve(trace, planned);
    const at = (moment: number) => differenceC![atSeconds.findIndex((time) => time >= moment)];
    expect(at(0)).toBeNull();
    expect(at(7200)).toBeCloseTo((600 * 100) / 3600, 0);
    expect(at(40_000)).toBeNull();
  });
});
