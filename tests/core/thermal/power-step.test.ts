import { describe, expect, it } from 'vitest';
import { outputShares } from '../../../core/thermal/output-shares.ts';
import { courseOfTrace, OFF } from '../../../core/thermal/power-course.ts';
import { findPowerStep, fitPowerStep } from '../../../core/thermal/power-step.ts';
import { wholeShares } from '../../../core/thermal/power-windows.ts';
import { fired, type Told } from '../../builders/fired.ts';
import { THIN_BRICK } from '../../kiln/kilns.ts';
import { FAST_GLAZE, GLAZE_WITH_HOLD } from '../../kiln/schedules.ts';
import type { ScheduleFile } from '../../kiln/types.ts';

/** One of four even circuits, a quarter of the power, opens at 850 °C; or none does. */
const courseWith = (schedule: ScheduleFile, isLost: boolean, told: Told = {}) => {
  const elements = { ...THIN_BRICK.elements, circuits: 4, upperShare: 0.5 };
  const { firing, trace, document } = fired(
    {
      seed: 71,
      kiln: { ...THIN_BRICK, elements },
      schedule,
      loadKg: 40,
      roomC: 20,
      logger: { intervalSeconds: 60, noiseC: 0.5 },
      faults: isLost ? [{ kind: 'circuit-open', when: { heatingPastC: 850 }, circuit: 0 }] : [],
    },
    told,
  );
  const course = courseOfTrace(trace, document.elements!.limited)!;
  const atSeconds = firing.truth.faults[0]?.fromSeconds ?? NaN;
  return {
    course,
    shares: outputShares(trace, course) ?? wholeShares(course),
    truth: (atSeconds - course.startSeconds) / course.intervalSeconds,
  };
};

describe('a power that falls at a moment', () => {
  it.each([
    ['at full power', FAST_GLAZE, {}],
    ['by a logged output', GLAZE_WITH_HOLD, { withOutput: true }],
  ])('is found and measured %s', (_, schedule, told) => {
    const { course, shares, truth } = courseWith(schedule, true, told);
    const interval = findPowerStep(course, shares)!;
    // Within ten minutes, and 5 % of full power.
    expect(Math.abs(interval - truth)).toBeLessThan(5);
    const { lostShare, error } = fitPowerStep(course, interval, shares)!;
    expect(Math.abs(lostShare - 0.25)).toBeLessThan(0.05);
    expect(error).toBeLessThan(0.05);
  });

  it.each([
    ['at full power', FAST_GLAZE, {}],
    ['by a logged output', GLAZE_WITH_HOLD, { withOutput: true }],
  ])('is none where the power stayed %s', (_, schedule, told) => {
    const { course, shares } = courseWith(schedule, false, told);
    expect(findPowerStep(course, shares)).toBeNull();
  });

  it('is not fitted without cooling, or where nothing was heated beyond the moment', () => {
    const { course } = courseWith(FAST_GLAZE, true);
    const power = course.power.map((value) => (value === OFF ? 0 : value));
    expect(fitPowerStep({ ...course, power }, 150)).toBeNull();
    expect(fitPowerStep(null, 150)).toBeNull();
    expect(fitPowerStep(course, 1)).toBeNull();
    expect(fitPowerStep(course, course.power.length - 1)).toBeNull();
  });
});
