import { describe, expect, it } from 'vitest';
import { powerInterrupted } from '../../../../core/findings/detectors/power-interrupted.ts';
import type { Facts } from '../../../../core/findings/facts.ts';
import { alignTo, AS_PLANNED, traceOfStretches } from '../../../builders/alignment.ts';
import { facts } from '../../../builders/facts.ts';
import { inapplicable, judge, NOTHING, onlyFinding } from '../../../builders/judge.ts';
import type { Stretch } from '../../../builders/trace.ts';

const factsOf = (stretches: readonly Stretch[]): Facts => {
  const samples = traceOfStretches(stretches);
  const alignment = alignTo(samples);
  return { ...facts(), samples, trace: samples.summary, alignment };
};
/** A fall of so many degrees at 200 °C/h from 800 °C, in the middle of the main climb. */
const fallen = (deltaC: number): Stretch[] => [
  ...AS_PLANNED.slice(0, 2),
  { rateCPerHour: 180, toC: 800 },
  { rateCPerHour: 200, toC: 800 - deltaC },
  { rateCPerHour: 180, toC: 1100 },
  ...AS_PLANNED.slice(3),
];

describe('power-interrupted', () => {
  it('tells a fall of ten minutes in mid-climb, and how long it was', () => {
    const { severity, figures } = onlyFinding(powerInterrupted, factsOf(fallen(200 / 6)));
    expect(severity).toBe('watch');
    expect(figures['interruptedMinutes']).toBeCloseTo(10, -0.5);
  });

  it('asks for action where the power was gone for more than an hour', () => {
    expect(onlyFinding(powerInterrupted, factsOf(fallen(230))).severity).toBe('act');
  });

  it('is silent at a dip of a minute', () => {
    expect(judge(powerInterrupted, factsOf(fallen(3.3)))).toEqual(NOTHING);
  });

  it('takes neither a controlled fall nor the kiln’s own cooling for one', () => {
    expect(judge(powerInterrupted, factsOf(AS_PLANNED))).toEqual(NOTHING);
  });

  it('does not take the way back from an overshoot for one', () => {
    const over: Stretch[] = [
      ...AS_PLANNED.slice(0, 3),
      { rateCPerHour: 60, toC: 1234 },
      { rateCPerHour: 120, toC: 1220 },
      { holdMinutes: 15 },
      ...AS_PLANNED.slice(5),
    ];
    expect(judge(powerInterrupted, factsOf(over))).toEqual(NOTHING);
  });

  it('does not apply to a fuel-fired kiln', () => {
    const fuelled = { ...factsOf(fallen(60)), options: { kiln: { heat: 'fuel' as const } } };
    expect(judge(powerInterrupted, fuelled)).toEqual(inapplicable('fuel-fired'));
  });
});
