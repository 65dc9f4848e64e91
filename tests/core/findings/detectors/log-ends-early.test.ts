import { describe, expect, test } from 'vitest';
import { celsius, seconds } from '../../../../core/units.ts';
import { logEndsEarly } from '../../../../core/findings/detectors/log-ends-early.ts';
import {
  facts,
  firingFacts,
  withConfidence,
  withTrace,
  withoutSchedule,
} from '../../../builders/facts.ts';
import { judge, onlyFinding } from '../../../builders/judge.ts';

/** The record stops on the last ramp, with 130 of its 195 min and the hold to come. */
const stopsClimbing = firingFacts({
  lastRamp: { minutes: 65, toC: 1085, verdict: 'not-reached' },
  topHold: null,
  cooling: null,
});
/** The record stops with the hold. */
const stopsAtPeak = firingFacts({ cooling: null });
/** The record goes on a while after the hold, and nobody can tell when the heat went off. */
const stopsBelowPeak = (toC: number) =>
  withTrace(firingFacts({ cooling: { minutes: 60, toC } }), { offSeconds: null });

describe('a record that ends early', () => {
  test('is watched where part of the schedule was still to come', () => {
    const { severity, figures, evidence } = onlyFinding(logEndsEarly, stopsClimbing);
    expect(severity).toBe('watch');
    expect(figures).toMatchObject({ lastC: 1085, leftMinutes: 130 + 15 });
    expect(figures.belowPeakDeltaC).toBeLessThan(5);
    expect(evidence).toEqual([{ fromSeconds: 515 * 60, toSeconds: 515 * 60 }]);
  });

  test('is watched where it stops at its peak, schedule or none', () => {
    expect(onlyFinding(logEndsEarly, stopsAtPeak).severity).toBe('watch');
    expect(onlyFinding(logEndsEarly, withoutSchedule(stopsAtPeak)).severity).toBe('watch');
  });

  test('is seen in a controlled fall, which the trace alone takes for the kiln’s own', () => {
    // The cooling to 1100 °C is the schedule's, and an hour of it is still to come.
    const base = firingFacts({ cooling: { minutes: 60, toC: 1100 } });
    const down = { ...base.alignment!.legs[5]!, segment: 3 };
    const planned = { ...down.planned, endC: celsius(1000), endSeconds: seconds(780 * 60) };
    const legs = [...base.alignment!.legs.slice(0, 5), { ...down, planned }];
    const falling = { ...base, alignment: { ...base.alignment!, legs } };
    expect(falling.trace.offSeconds).not.toBeNull();
    expect(onlyFinding(logEndsEarly, falling).figures).toMatchObject({ lastC: 1100 });
    expect(judge(logEndsEarly, withoutSchedule(falling)).reason).toBe('cooling-logged');
  });

  test('is a note where the heat-work was over', () => {
    expect(onlyFinding(logEndsEarly, stopsBelowPeak(1100)).severity).toBe('note');
    expect(onlyFinding(logEndsEarly, stopsBelowPeak(1180)).severity).toBe('watch');
  });

  test('does not count legs of an alignment that is a guess', () => {
    const { figures } = onlyFinding(logEndsEarly, withConfidence(stopsClimbing, 0.1));
    expect(figures.leftMinutes).toBe(0);
  });
});

describe('a record that goes on to the end', () => {
  test('shows the kiln cooling by itself', () => {
    expect(judge(logEndsEarly, facts())).toMatchObject({
      outcome: 'clear',
      reason: 'cooling-logged',
    });
  });

  test('or a kiln that is cool, whenever its heat went off', () => {
    expect(judge(logEndsEarly, stopsBelowPeak(199))).toMatchObject({
      outcome: 'clear',
      reason: 'ends-cool',
    });
    expect(judge(logEndsEarly, stopsBelowPeak(201)).outcome).toBe('found');
  });
});
