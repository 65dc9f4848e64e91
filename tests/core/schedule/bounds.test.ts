import { describe, expect, it } from 'vitest';
import { badSchedule, HOTTEST_TARGET_C } from '../../../core/schedule/bounds.ts';
import { fromFahrenheit } from '../../../core/units.ts';

describe('the bounds of a schedule', () => {
  it('let every cone’s °C target pass and catch its °F number (cone 14 is 1384 °C, 2523 °F)', () => {
    expect(HOTTEST_TARGET_C).toBeGreaterThan(1384);
    expect(HOTTEST_TARGET_C).toBeLessThan(2523);
    expect(fromFahrenheit(2523)).toBeCloseTo(1384, 0);
  });

  it('make refusals that carry their line', () => {
    expect(badSchedule('no', 4)).toMatchObject({ code: 'bad-schedule', line: 4, message: 'no' });
  });
});
