import { describe, expect, it } from 'vitest';
import { readSetpoint, snapToSetpoint } from '../../../core/align/setpoint.ts';
import { alignTo, AS_PLANNED } from '../../builders/alignment.ts';
import { logOf } from '../../builders/log.ts';
import { firing, traceFrom } from '../../builders/trace.ts';
import { makeTrace } from '../../../core/trace/make-trace.ts';

/** A kiln that lags its setpoint by four minutes, with the setpoint logged beside it. */
const lagging = () => {
  const setpoint = traceFrom(firing(20, ...AS_PLANNED.slice(0, 7)), { intervalSeconds: 30 });
  const behind = 8;
  const celsius = setpoint.celsius.map((_, i) => setpoint.celsius[Math.max(0, i - behind)]!);
  return makeTrace(
    logOf({ atSeconds: setpoint.atSeconds, celsius }, { setpointC: setpoint.celsius }),
  );
};

describe('the corners of a logged setpoint', () => {
  it('are where the programme turned', () => {
    const corners = readSetpoint(lagging())!.corners;
    const turns = firing(20, ...AS_PLANNED.slice(0, 7))
      .slice(1, -1)
      .map(([minutes]) => 60 * minutes);
    for (const turn of turns) {
      expect(Math.min(...corners.map((corner) => Math.abs(corner - turn)))).toBeLessThan(90);
    }
  });

  it('are unknown without a column, or with one that is mostly empty', () => {
    const trace = lagging();
    expect(readSetpoint({ ...trace, setpointC: null })).toBeNull();
    expect(readSetpoint({ ...trace, setpointC: trace.setpointC!.fill(NaN) })).toBeNull();
  });
});

describe('an alignment with a setpoint', () => {
  const alignment = alignTo(lagging());
  const minutesOf = (k: number) => alignment.legs[k]!.actual!.endSeconds / 60;

  it('takes from it when the programme moved on, and from the kiln when it arrived', () => {
    // The hold at 120 °C ends at 90 min by the programme; the kiln came to it four minutes late.
    expect(Math.abs(minutesOf(1) - 90)).toBeLessThan(1.5);
    expect(Math.abs(minutesOf(0) - 64)).toBeLessThan(2);
  });

  it('says how far the two disagreed', () => {
    expect(alignment.setpointDisagreementSeconds).toBeGreaterThan(180);
    expect(alignment.setpointDisagreementSeconds).toBeLessThan(400);
  });
});

describe('holding boundaries against corners', () => {
  const moments = new Map([
    [10, 1000],
    [20, 2000],
    [30, 9000],
  ]);

  it('moves those at which the programme moves on, if a corner is near', () => {
    const { moments: snapped, disagreementSeconds } = snapToSetpoint(
      moments,
      new Set([20, 30]),
      [900, 2100, 5000],
    );
    expect([...snapped.values()]).toEqual([1000, 2100, 9000]);
    expect(disagreementSeconds).toBe(4000);
  });

  it('does nothing without corners', () => {
    expect(snapToSetpoint(moments, new Set([20]), null)).toEqual({
      moments,
      disagreementSeconds: null,
    });
  });
});
