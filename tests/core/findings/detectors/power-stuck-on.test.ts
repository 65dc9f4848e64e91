import { describe, expect, it } from 'vitest';
import { powerStuckOn } from '../../../../core/findings/detectors/power-stuck-on.ts';
import type { Facts } from '../../../../core/findings/facts.ts';
import { alignTo, AS_PLANNED, traceOfStretches } from '../../../builders/alignment.ts';
import { facts, withConfidence, withoutSchedule } from '../../../builders/facts.ts';
import { inapplicable, judge, NOTHING, onlyFinding } from '../../../builders/judge.ts';
import type { Stretch } from '../../../builders/trace.ts';

const SCHEDULE = 'rate_per_hour,target,hold_minutes\n100,120,30\n180,1100,0\n60,1220,15\n';
/** The climb goes on past 1220 °C for so many minutes; then the kiln cools by itself. */
const runOn = (minutes: number): Stretch[] => [
  ...AS_PLANNED.slice(0, 4),
  { rateCPerHour: 90, toC: 1220 + 1.5 * minutes },
  { rateCPerHour: 180, toC: 600 },
  { rateCPerHour: 90, toC: 200 },
];
const factsOf = (stretches: readonly Stretch[]): Facts => {
  const samples = traceOfStretches(stretches);
  return { ...facts(), samples, trace: samples.summary, alignment: alignTo(samples, SCHEDULE) };
};

describe('power-stuck-on', () => {
  it('asks for action where the kiln climbed on for twenty minutes past its last target', () => {
    const { severity, figures } = onlyFinding(powerStuckOn, factsOf(runOn(20)));
    expect(severity).toBe('act');
    expect(figures['stuckMinutes']).toBeCloseTo(20, -1);
    expect(figures['overDeltaC']).toBeGreaterThan(20);
  });

  it('only watches a climb on at the ramp’s own rate: another programme may have run', () => {
    const on: Stretch[] = [
      ...AS_PLANNED.slice(0, 4),
      { rateCPerHour: 60, toC: 1245 },
      { rateCPerHour: 180, toC: 600 },
      { rateCPerHour: 90, toC: 200 },
    ];
    expect(onlyFinding(powerStuckOn, factsOf(on)).severity).toBe('watch');
  });

  it('is silent at an overshoot of eight minutes', () => {
    expect(judge(powerStuckOn, factsOf(runOn(8)))).toEqual(NOTHING);
  });

  it('is silent where the kiln kept its plan', () => {
    const kept = [...AS_PLANNED.slice(0, 5), ...AS_PLANNED.slice(7)];
    expect(judge(powerStuckOn, factsOf(kept))).toEqual(NOTHING);
  });

  it('asks for no action where another programme may have run, and says nothing of a guess', () => {
    const run = factsOf(runOn(20));
    const { severity, figures } = onlyFinding(powerStuckOn, withConfidence(run, 0.4));
    expect(severity).toBe('watch');
    expect(figures['confidencePercent']).toBeCloseTo(40, 9);
    expect(judge(powerStuckOn, withConfidence(run, 0.1))).toEqual(
      inapplicable('alignment-uncertain'),
    );
  });

  it('sees a climb without output, also without a schedule', () => {
    const base = withoutSchedule(factsOf(AS_PLANNED));
    const none = base.samples.celsius.map(() => 0);
    const samples = { ...base.samples, outputPercent: none };
    expect(judge(powerStuckOn, { ...base, samples }).outcome).toBe('found');
  });

  it('does not apply without schedule and output, or to a fuel-fired kiln', () => {
    const base = factsOf(AS_PLANNED);
    expect(judge(powerStuckOn, withoutSchedule(base))).toEqual(inapplicable('no-schedule'));
    const fuelled = { ...base, options: { kiln: { heat: 'fuel' as const } } };
    expect(judge(powerStuckOn, fuelled)).toEqual(inapplicable('fuel-fired'));
  });
});
