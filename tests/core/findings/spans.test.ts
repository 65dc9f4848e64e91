import { describe, expect, test } from 'vitest';
import { isNearPeak, longestMinutes, minutesOf } from '../../../core/findings/spans.ts';
import { seconds } from '../../../core/units.ts';
import { firing, traceFrom } from '../../builders/trace.ts';

const span = (fromMinutes: number, toMinutes: number) => ({
  fromSeconds: seconds(60 * fromMinutes),
  toSeconds: seconds(60 * toMinutes),
});

describe('stretches', () => {
  test('are as long together, and at the longest, as they are', () => {
    expect(minutesOf([span(0, 5), span(20, 32)])).toBe(17);
    expect(longestMinutes([span(0, 5), span(20, 32)])).toBe(12);
    expect([minutesOf([]), longestMinutes([])]).toEqual([0, 0]);
  });

  test('are near the peak if they begin or end within 150 °C of it', () => {
    // 100 °C/h to 1220 °C in twelve hours: 1070 °C after ten and a half.
    const near = isNearPeak(
      traceFrom(firing(20, { rateCPerHour: 100, toC: 1220 }, { rateCPerHour: 200, toC: 220 })),
    );
    expect(near(span(600, 629))).toBe(false);
    expect(near(span(600, 631))).toBe(true);
    expect(near(span(760, 900))).toBe(true);
    expect(near(span(800, 900))).toBe(false);
  });
});
