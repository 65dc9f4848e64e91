import { describe, expect, it } from 'vitest';
import { fitKiln, fitPower } from '../../../core/thermal/fit-kiln.ts';
import { courseOfTrace, OFF, type PowerCourse } from '../../../core/thermal/power-course.ts';
import { fired } from '../../builders/fired.ts';
import { BACKED_BRICK } from '../../kiln/kilns.ts';
import { FAST_GLAZE } from '../../kiln/schedules.ts';
import type { Setup } from '../../kiln/types.ts';

const SETUP: Setup = {
  seed: 4,
  kiln: BACKED_BRICK,
  schedule: FAST_GLAZE,
  loadKg: 45,
  roomC: 18,
  logger: { intervalSeconds: 60, noiseC: 0.4 },
};
const courseOf = (setup: Setup): PowerCourse => {
  const { trace, document } = fired(setup);
  return courseOfTrace(trace, document.elements!.limited)!;
};
const whole = courseOf(SETUP);
const { fit } = fitKiln(whole);

describe('a kiln fitted to one firing', () => {
  it('leaves little over', () => {
    expect(fit!.misfitShare).toBeLessThan(0.03);
  });

  it('has a wall that remembers for hours, and a load of its order, as usual kilns do', () => {
    expect(fit!.wall.memorySeconds / 3600).toBeGreaterThan(2);
    expect(fit!.wall.memorySeconds / 3600).toBeLessThan(20);
    expect(fit!.load.share).toBeGreaterThan(0.2);
    expect(fit!.load.share).toBeLessThan(2);
  });

  it('tells a heavier load with the same power', () => {
    const { again } = fitPower(courseOf({ ...SETUP, seed: 5, loadKg: 65 }), fit!);
    // 65 and 14 kg of shelves against 45 and 14.
    expect(again!.load.share / fit!.load.share).toBeGreaterThan(1.15);
    expect(again!.power / fit!.power).toBeCloseTo(1, 1);
  });
});

const without = (power: number): PowerCourse => ({
  ...whole,
  power: whole.power.map((value) => (value === power ? 0 : value)),
});

describe('no kiln is fitted', () => {
  it('to a record that starts hot', () => {
    expect(fitKiln(null)).toEqual({ fit: null, reason: 'log-starts-hot' });
    expect(fitPower(null, fit!).reason).toBe('log-starts-hot');
  });

  it('to one without cooling', () => {
    expect(fitKiln(without(OFF)).reason).toBe('no-cooling-logged');
  });

  it('to one that was never at full power', () => {
    expect(fitKiln(without(1)).reason).toBe('never-at-full-power');
  });

  it('to one that no closed kiln can have run', () => {
    // Opened: what cools in ten hours falls within one.
    const off = whole.power.indexOf(OFF);
    const opened = whole.celsius.map((value, i) =>
      i < off ? value : Math.max(400, value - (i - off) * 12),
    );
    expect(fitKiln({ ...whole, celsius: opened }).reason).toBe('course-does-not-fit');
    expect(fitPower({ ...whole, celsius: opened }, fit!).reason).toBe('course-does-not-fit');
  });
});
