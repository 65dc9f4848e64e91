import { describe, expect, it } from 'vitest';
import { findLimited } from '../../../core/thermal/limited.ts';
import { alignTo, AS_PLANNED, traceOfStretches } from '../../builders/alignment.ts';
import type { Stretch } from '../../builders/trace.ts';

const limitedIn = (
  stretches: readonly Stretch[],
  schedule?: string,
  outputPercent?: number,
  confidence = 0.8,
) => {
  const trace = traceOfStretches(stretches);
  const output = outputPercent === undefined ? null : trace.celsius.map(() => outputPercent);
  return findLimited(
    { ...trace, outputPercent: output },
    {
      ...alignTo(trace, schedule),
      confidence,
    },
  );
};

/** From 900 °C on the kiln gives 90 °C/h where 180 were asked of it. */
const TIRED: Stretch[] = [
  ...AS_PLANNED.slice(0, 2),
  { rateCPerHour: 180, toC: 900 },
  { rateCPerHour: 90, toC: 1100 },
  ...AS_PLANNED.slice(3),
];

describe('stretches in which the kiln climbed as fast as it could', () => {
  it('are none where it followed its plan', () => {
    expect(limitedIn(AS_PLANNED)).toEqual([]);
  });

  it('begin where it fell behind and end where it arrived', () => {
    const [limited, ...others] = limitedIn(TIRED);
    expect(others).toEqual([]);
    expect(limited!.plannedCPerHour).toBeCloseTo(180, 6);
    expect(limited!.achievedCPerHour).toBeCloseTo(90, -0.5);
    expect(limited!.fromC).toBeCloseTo(900, -1.4);
    expect(limited!.toC).toBeCloseTo(1085, -1.4);
  });

  it('are a ramp programmed at full power, until it nears its target', () => {
    const schedule =
      'rate_per_hour,target,hold_minutes\n100,120,30\nfull,1100,0\n60,1220,15\n150,1000,20\n';
    const [limited] = limitedIn(AS_PLANNED, schedule);
    // Its last 60 °C are not counted: there a controller may ease off.
    expect(limited!.toC).toBeCloseTo(1040, -0.5);
    expect(limited).toMatchObject({ plannedCPerHour: null });
    expect(limited!.achievedCPerHour).toBeCloseTo(180, -0.5);
  });

  it('are denied by a logged output that says the power was not full', () => {
    expect(limitedIn(TIRED, undefined, 60)).toEqual([]);
  });

  it('are seen in a logged output that was full, also where the kiln kept up', () => {
    // The three climbs of the schedule; the holds and the fall are none.
    expect(limitedIn(AS_PLANNED, undefined, 100)).toHaveLength(3);
  });

  it('are only those that bend as full power does, where another programme may have run', () => {
    // Level at 90 °C/h: perhaps that was programmed.
    expect(limitedIn(TIRED, undefined, undefined, 0.3)).toEqual([]);
    const bending: Stretch[] = [
      ...TIRED.slice(0, 3),
      { rateCPerHour: 110, toC: 1000 },
      { rateCPerHour: 90, toC: 1050 },
      { rateCPerHour: 75, toC: 1100 },
      ...TIRED.slice(4),
    ];
    expect(limitedIn(bending, undefined, undefined, 0.3)).toHaveLength(1);
  });

  it('are none where a segment ran level at the next one’s rate', () => {
    const asNext: Stretch[] = [
      ...AS_PLANNED.slice(0, 2),
      { rateCPerHour: 180, toC: 900 },
      { rateCPerHour: 60, toC: 1220 },
      ...AS_PLANNED.slice(4),
    ];
    expect(limitedIn(asNext)).toEqual([]);
  });

  it('do not take a power cut for full power', () => {
    const cut: Stretch[] = [
      ...AS_PLANNED.slice(0, 2),
      { rateCPerHour: 180, toC: 800 },
      { rateCPerHour: 150, toC: 680 },
      { rateCPerHour: 180, toC: 1100 },
      ...AS_PLANNED.slice(3),
    ];
    expect(limitedIn(cut)).toEqual([]);
  });
});
