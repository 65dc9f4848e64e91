import { describe, expect, it } from 'vitest';
import { zAlignment } from '../../../core/model/document.ts';
import { alignTo, AS_PLANNED, loggedTrace, traceOfStretches } from '../../builders/alignment.ts';
import { firing, type Stretch } from '../../builders/trace.ts';

/** Whether each leg ended within three minutes of when it did in the course it was made from. */
const endsOf = (stretches: readonly Stretch[], startC = 20): number[] =>
  firing(startC, ...stretches)
    .slice(1)
    .map(([minutes]) => 60 * minutes);

const verdicts = (alignment: ReturnType<typeof alignTo>) =>
  alignment.legs.map((leg) => leg.verdict);

describe('a firing that went as planned', () => {
  const alignment = alignTo(traceOfStretches(AS_PLANNED));

  it('has every leg where it was', () => {
    expect(zAlignment.parse(alignment)).toEqual(alignment);
    const ends = endsOf(AS_PLANNED);
    alignment.legs.slice(0, 7).forEach((leg, k) => {
      expect(Math.abs(leg.actual!.endSeconds - ends[k]!)).toBeLessThan(180);
      expect(leg.verdict).toBe('as-planned');
    });
    expect(alignment.legs.at(-1)).toMatchObject({ segment: null, kind: 'cooling' });
  });

  it('is laid with confidence, and without a setpoint nothing is said of one', () => {
    expect(alignment.confidence).toBeGreaterThan(0.75);
    expect(alignment.setpointDisagreementSeconds).toBeNull();
  });

  it('has its plan laid once, from the start of heating', () => {
    expect(Math.abs(alignment.planned[0]!.celsius - 20)).toBeLessThan(1);
    expect(alignment.planned.at(-1)!.celsius).toBe(1000);
  });
});

describe('what may go otherwise', () => {
  it('idle time before the start', () => {
    const alignment = alignTo(traceOfStretches([{ holdMinutes: 90 }, ...AS_PLANNED]));
    expect(Math.abs(alignment.legs[0]!.actual!.startSeconds - 5400)).toBeLessThan(180);
    expect(Math.abs(alignment.planned[0]!.atSeconds - 5400)).toBeLessThan(180);
    expect(new Set(verdicts(alignment))).toEqual(new Set(['as-planned']));
  });

  it('a ramp the kiln could not follow, with a controller that waits', () => {
    const slow = AS_PLANNED.flatMap((stretch, k): Stretch[] =>
      k === 3
        ? [
            { rateCPerHour: 45, toC: 1160 },
            { rateCPerHour: 30, toC: 1220 },
          ]
        : [stretch],
    );
    const alignment = alignTo(traceOfStretches(slow));
    expect(verdicts(alignment).slice(0, 5)).toEqual([
      'as-planned',
      'as-planned',
      'as-planned',
      'slow',
      'as-planned',
    ]);
    expect(Math.abs(alignment.legs[3]!.actual!.endSeconds - endsOf(slow)[4]!)).toBeLessThan(240);
  });

  it('a top that was never reached, with a controller that does not wait', () => {
    const short: Stretch[] = [
      ...AS_PLANNED.slice(0, 3),
      { rateCPerHour: 35, toC: 1170 },
      { rateCPerHour: 150, toC: 1000 },
      ...AS_PLANNED.slice(6),
    ];
    const alignment = alignTo(traceOfStretches(short));
    expect(alignment.legs[3]).toMatchObject({ segment: 2, kind: 'ramp', verdict: 'not-reached' });
    expect(alignment.legs[3]!.actual!.endC).toBeCloseTo(1170, -0.7);
  });

  it('a hold cut short, and one drawn out', () => {
    const held = (minutes: number) =>
      alignTo(
        traceOfStretches(
          AS_PLANNED.map((stretch, k) => (k === 1 ? { holdMinutes: minutes } : stretch)),
        ),
      );
    expect(held(12).legs[1]!.verdict).toBe('short');
    expect(held(75).legs[1]!.verdict).toBe('long');
  });

  it('a leg left out', () => {
    const alignment = alignTo(traceOfStretches(AS_PLANNED.filter((_, k) => k !== 1)));
    expect(verdicts(alignment).slice(0, 4)).toEqual([
      'as-planned',
      'missing',
      'as-planned',
      'as-planned',
    ]);
  });

  it('a firing that stopped half-way', () => {
    const aborted: Stretch[] = [
      ...AS_PLANNED.slice(0, 2),
      { rateCPerHour: 180, toC: 870 },
      { rateCPerHour: 200, toC: 500 },
      { rateCPerHour: 90, toC: 150 },
    ];
    const alignment = alignTo(traceOfStretches(aborted));
    expect(verdicts(alignment).slice(0, 3)).toEqual(['as-planned', 'as-planned', 'not-reached']);
    expect(verdicts(alignment).slice(3, 7)).toEqual(['missing', 'missing', 'missing', 'missing']);
    const off = alignment.legs.at(-1)!;
    expect(off.segment).toBeNull();
    expect(Math.abs(off.actual!.startSeconds - endsOf(aborted)[2]!)).toBeLessThan(240);
  });

  it.each([10, 25, 40])(
    'a top passed by %s °C: the climb ends where it passed its target',
    (over) => {
      const past: Stretch[] = [
        ...AS_PLANNED.slice(0, 3),
        { rateCPerHour: 60, toC: 1220 + over },
        { holdMinutes: 15 },
        ...AS_PLANNED.slice(5),
      ];
      const alignment = alignTo(traceOfStretches(past));
      const crossing = endsOf(AS_PLANNED)[3]!;
      expect(alignment.legs[3]).toMatchObject({ kind: 'ramp', verdict: 'as-planned' });
      expect(Math.abs(alignment.legs[3]!.actual!.endSeconds - crossing)).toBeLessThan(240);
      expect(alignment.legs[4]).toMatchObject({ kind: 'hold', verdict: 'long' });
    },
  );

  it('a climb programmed at the rate meant for the next: it ends at its own target', () => {
    const slipped: Stretch[] = [
      ...AS_PLANNED.slice(0, 2),
      { rateCPerHour: 60, toC: 1220 },
      ...AS_PLANNED.slice(4),
    ];
    const alignment = alignTo(traceOfStretches(slipped));
    expect(alignment.legs[2]!.verdict).toBe('slow');
    expect(alignment.legs[2]!.actual!.endC).toBeCloseTo(1100, -1);
    expect(alignment.legs[3]!.verdict).toBe('as-planned');
  });

  it('a record that ends while the firing goes on', () => {
    const alignment = alignTo(traceOfStretches(AS_PLANNED.slice(0, 4)));
    expect(alignment.legs.every((leg) => leg.segment !== null)).toBe(true);
    expect(verdicts(alignment)).toEqual([
      'as-planned',
      'as-planned',
      'as-planned',
      'as-planned',
      'missing',
      'missing',
      'missing',
    ]);
  });

  it('a record that ends in the middle of a controlled fall', () => {
    const cut: Stretch[] = [...AS_PLANNED.slice(0, 5), { rateCPerHour: 150, toC: 1130 }];
    const alignment = alignTo(traceOfStretches(cut));
    expect(alignment.legs.at(-1)!.segment).not.toBeNull();
    expect(alignment.legs[5]).toMatchObject({ kind: 'cooling', verdict: 'not-reached' });
    expect(alignment.legs[5]!.actual!.rateCPerHour).toBeCloseTo(-150, -1);
  });

  it('a record that begins hot: the plan is laid through its first reading', () => {
    const stretches = AS_PLANNED.slice(2);
    const alignment = alignTo(traceOfStretches(stretches, 600));
    expect(verdicts(alignment).slice(0, 2)).toEqual(['missing', 'missing']);
    expect(
      Math.abs(alignment.legs[2]!.actual!.endSeconds - endsOf(stretches, 600)[0]!),
    ).toBeLessThan(180);
    const { planned } = alignment.legs[2]!;
    const atZero =
      planned.startC +
      ((planned.endC - planned.startC) * -planned.startSeconds) /
        (planned.endSeconds - planned.startSeconds);
    expect(atZero).toBeCloseTo(600, -1);
  });

  it('power gone in mid-climb', () => {
    const cut: Stretch[] = [
      ...AS_PLANNED.slice(0, 2),
      { rateCPerHour: 180, toC: 700 },
      { rateCPerHour: 160, toC: 600 },
      { rateCPerHour: 220, toC: 1100 },
      ...AS_PLANNED.slice(3),
    ];
    const alignment = alignTo(traceOfStretches(cut));
    expect(alignment.legs.slice(0, 7).every((leg) => leg.actual !== null)).toBe(true);
    expect(Math.abs(alignment.legs[2]!.actual!.endSeconds - endsOf(cut)[4]!)).toBeLessThan(300);
    expect(alignment.legs[2]!.verdict).toBe('slow');
  });
});

describe('a schedule that is not the one that was run', () => {
  it('is laid without confidence', () => {
    const other = 'rate_per_hour,target,hold_minutes\n250,500,90\n40,700,60\n300,1000,120\n';
    expect(alignTo(traceOfStretches(AS_PLANNED), other).confidence).toBeLessThan(0.4);
  });
});

describe('full power', () => {
  it('is planned to take as long as it took', () => {
    const schedule =
      'rate_per_hour,target,hold_minutes\n100,120,30\nfull,1100,0\n60,1220,15\n150,1000,20\n';
    const alignment = alignTo(loggedTrace(firing(20, ...AS_PLANNED)), schedule);
    const leg = alignment.legs[2]!;
    expect(leg.planned.rateCPerHour).toBeNull();
    expect(leg.verdict).toBe('as-planned');
    const took = (course: { startSeconds: number; endSeconds: number }) =>
      course.endSeconds - course.startSeconds;
    expect(took(leg.planned)).toBeCloseTo(took(leg.actual!), 3);
  });
});
