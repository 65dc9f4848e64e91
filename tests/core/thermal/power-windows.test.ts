import { describe, expect, it } from 'vitest';
import { FULL, OFF, UNKNOWN, type PowerCourse } from '../../../core/thermal/power-course.ts';
import {
  leftOver,
  misfitOf,
  usableWindows,
  wholeShares,
  type PowerWindow,
} from '../../../core/thermal/power-windows.ts';
import { requiredPower } from '../../../core/thermal/wall-model.ts';

const WALL = { memorySeconds: 20_000, conductivityRise: 0.8 };
const LOAD = { share: 1, coupling: 150 };

/** A climb at full power, a stretch of which nothing is known, then free cooling. */
const courseOf = (full: number, unknown: number, off: number): PowerCourse => {
  const count = 1 + full + unknown + off;
  const power = Int8Array.from({ length: count }, (_, i) =>
    i <= full ? FULL : i <= full + unknown ? UNKNOWN : OFF,
  );
  const celsius = Float64Array.from({ length: count }, (_, i) =>
    i <= full + unknown ? 20 + 6 * i : 20 + 6 * (full + unknown) - 3 * (i - full - unknown),
  );
  return { startSeconds: 0, intervalSeconds: 120, roomC: 20, celsius, power };
};

const windowsOf = (course: PowerCourse, shares?: Float64Array): readonly PowerWindow[] => {
  const windows = usableWindows(course, shares);
  if (typeof windows === 'string') throw new Error(windows);
  return windows;
};

describe('windows of known power', () => {
  it('are ten minutes long, all or none, and leave out what is not known', () => {
    const windows = windowsOf(courseOf(100, 20, 60));
    expect(windows.filter(({ share }) => share === 1)).toHaveLength(20);
    expect(windows.filter(({ share }) => share === 0)).toHaveLength(12);
    expect(windows).toHaveLength(32);
  });

  it('hold the mean of a logged output', () => {
    const course = courseOf(100, 20, 60);
    const whole = wholeShares(course);
    const shares = whole.map((share, i) => (i % 5 === 0 ? share : share / 2));
    expect(windowsOf(course, shares)[0]!.share).toBeCloseTo(0.6, 9);
    // A window with an output of none in it is neither heating nor free cooling.
    const broken = whole.map((share, i) => (i === 3 ? 0 : share));
    expect(windowsOf(course, broken)[0]!.from).toBe(6);
  });

  it('are too few, each with its reason', () => {
    expect(usableWindows(null)).toBe('log-starts-hot');
    expect(usableWindows(courseOf(100, 20, 10))).toBe('no-cooling-logged');
    expect(usableWindows(courseOf(0, 120, 60))).toBe('never-at-full-power');
  });
});

describe('what is left over', () => {
  const course = courseOf(100, 20, 60);
  const windows = windowsOf(course).slice(0, 3);
  const required = requiredPower(course, WALL, LOAD);

  it('is what the course required beyond what the kiln had', () => {
    const power = 0.2;
    const left = leftOver(course, windows, [WALL, LOAD], power, power);
    const meanRequired = required.slice(1, 6).reduce((sum, value) => sum + value, 0) / 5;
    // 3 % of full power is what the model may leave while heating.
    const expected = (meanRequired - power * windows[0]!.hotFactor) / power / 0.03;
    expect(left[0]).toBeCloseTo(expected, 9);
  });

  it('comes to one figure in shares of full power', () => {
    expect(misfitOf([1, -1, 1], windows)).toBeCloseTo(0.03, 9);
  });
});
