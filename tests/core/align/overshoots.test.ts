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

describe('a hold that full power follows', () => {
  const FREE = 'rate_per_hour,target,hold_minutes\n60,100,15\nfull,1205,30\n';
  const TO_100: Stretch = { rateCPerHour: 60, toC: 100 };
  const rest: Stretch[] = [
    { rateCPerHour: 300, toC: 1205 },
    { holdMinutes: 30 },
    { rateCPerHour: 250, toC: 100 },
  ];
  const over100 = (...there: Stretch[]) => {
    const trace = traceOfStretches([TO_100, ...there, ...rest]);
    return findOvershoots(trace, alignTo(trace, FREE).legs).filter(({ segment }) => segment === 0);
  };

  it.each([0, 2, 6, 10])('was not overshot by a climb that began after %s min of it', (minutes) => {
    expect(over100({ holdMinutes: minutes }, { rateCPerHour: 900, toC: 220 })).toEqual([]);
  });

  it('was overshot where the kiln came back to it', () => {
    const [over] = over100(
      { rateCPerHour: 300, toC: 120 },
      { rateCPerHour: 200, toC: 101 },
      { holdMinutes: 5 },
    );
    expect(over!.overC).toBeCloseTo(20, -0.6);
  });
});
