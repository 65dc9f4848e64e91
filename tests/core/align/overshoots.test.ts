import { describe, expect, it } from 'vitest';
import { findOvershoots } from '../../../core/align/overshoots.ts';
import { alignTo, AS_PLANNED, traceOfStretches } from '../../builders/alignment.ts';
import type { Stretch } from '../../builders/trace.ts';

const overshootsOf = (stretches: readonly Stretch[]) => {
  const trace = traceOfStretches(stretches);
  return findOvershoots(trace, alignTo(trace).legs);
};

/** The top of the firing goes past its target and comes back before its hold. */
const past = (degrees: number): Stretch[] => [
  ...AS_PLANNED.slice(0, 3),
  { rateCPerHour: 60, toC: 1220 + degrees },
  { rateCPerHour: 120, toC: 1220 },
  { holdMinutes: 15 },
  ...AS_PLANNED.slice(5),
];

describe('overshoots', () => {
  it('are none in a firing that kept to its targets', () => {
    expect(overshootsOf(AS_PLANNED)).toEqual([]);
  });

  it('are measured by how far, when and how long', () => {
    const [overshoot, ...others] = overshootsOf(past(14));
    expect(others).toEqual([]);
    expect(overshoot!.segment).toBe(2);
    expect(overshoot!.overC).toBeGreaterThan(13);
    expect(overshoot!.overC).toBeLessThan(15);
    // 14 °C up at 60 °C/h and down at 120: twenty-one minutes, less the settling allowed.
    expect(overshoot!.aboveForSeconds).toBeGreaterThan(14 * 60);
    expect(overshoot!.aboveForSeconds).toBeLessThan(22 * 60);
  });

  it('say of a peak what the curve shows there', () => {
    const trace = traceOfStretches(past(39));
    const [overshoot] = findOvershoots(trace, alignTo(trace).legs);
    expect(overshoot!.overC).toBe(Math.max(...trace.celsius) - 1220);
    expect(trace.celsius[trace.atSeconds.indexOf(overshoot!.atSeconds)]! - 1220).toBe(
      overshoot!.overC,
    );
  });

  it('do not count a climb that leads straight on to a hotter target', () => {
    expect(overshootsOf(AS_PLANNED).map((overshoot) => overshoot.segment)).not.toContain(1);
  });

  it('are not made of one high reading', () => {
    const trace = traceOfStretches(AS_PLANNED);
    const { legs } = alignTo(trace);
    const inHold = trace.atSeconds.findIndex((at) => at > legs[4]!.actual!.startSeconds + 300);
    const celsius = trace.celsius.map((value, i) => (i === inHold ? value + 6 : value));
    expect(findOvershoots({ ...trace, celsius }, legs)).toEqual([]);
  });
});
