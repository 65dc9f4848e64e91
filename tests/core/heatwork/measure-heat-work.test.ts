import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { measureHeatWork } from '../../../core/heatwork/measure-heat-work.ts';
import { CONES, positionOfCone } from '../../../core/model/cone.ts';
import { zHeatWork } from '../../../core/model/document.ts';
import { SELF_SUPPORTING_END_POINTS } from '../../../core/reference/end-points-self-supporting.ts';
import { firing, traceFrom } from '../../builders/trace.ts';
import { cellsOf } from '../reference/shared-reference.ts';
import { cone6, hold, measure, ramp } from './measuring.ts';

describe('constant-rate firings to the chart’s end points (cone maker, 2016; 022 left out)', () => {
  const charted = cellsOf(SELF_SUPPORTING_END_POINTS).filter(
    ({ cone, rateCPerHour }) => cone !== '022' && rateCPerHour !== 15,
  );

  test.each(charted.map((cell) => [cell.cone, cell.rateCPerHour, cell.endPointC] as const))(
    'cone %s at %d °C/h to %d °C is within 0.3 cone',
    (name, rate, endPointC) => {
      const cone = CONES.find((known) => known === name)!;
      const fired = measure(firing(20, ramp(rate, endPointC)), { target: cone });
      expect(Math.abs(fired.cone.position! - positionOfCone(cone))).toBeLessThan(0.3);
      expect(fired.target!.verdict).toBe('within');
      // A cone's column can be off by the fit, never by more than the fit's own limit of 4 °C.
      expect(Math.abs(fired.target!.marginC!)).toBeLessThan(4);
    },
  );
});

describe('what decides', () => {
  test('is the last 200 °C: ten hours more below it stay within 0.05 cone', () => {
    for (const topC of [1063, 1186, 1222, 1285]) {
      const last = [ramp(60, topC), hold(5), ramp(250, 300)];
      const quick = measure(firing(20, ramp(300, topC - 200), ...last));
      const long = measure(firing(20, ramp(300, topC - 200), hold(600), ...last));
      expect(Math.abs(long.cone.position! - quick.cone.position!)).toBeLessThan(0.05);
    }
  });

  test('a top hold of 3–5 min adds less than a quarter cone (common practice)', () => {
    // Cones 04, 5 and 6 by the chart, with the usual last ramp of 60 °C/h. It does not hold where
    // neighbouring cones are only 10 °C apart, as 7, 8 and 9 are: 5 min there are 0.3 cone.
    for (const topC of [1063, 1186, 1222]) {
      const held = (minutes: number) =>
        measure(
          firing(
            20,
            ramp(150, 1000),
            ramp(60, topC),
            ...(minutes > 0 ? [hold(minutes)] : []),
            ramp(250, 300),
          ),
        ).cone.position!;
      for (const minutes of [3, 5]) {
        expect(held(minutes)).toBeGreaterThan(held(0));
        expect(held(minutes) - held(0)).toBeLessThan(0.25);
      }
    }
  });

  test('not how often the logger looked: 10 s to 5 min agree', () => {
    const places = [10, 30, 60, 300].map(
      (intervalSeconds) =>
        // Corners on whole five minutes.
        measure(
          firing(20, ramp(120, 1100), ramp(60, 1210), hold(10), ramp(240, 300)),
          {},
          {
            intervalSeconds,
          },
        ).cone.position!,
    );
    for (const place of places) expect(Math.abs(place - places[0]!)).toBeLessThan(0.02);
  });

  test('not noise or rounding', () => {
    const clean = measure(cone6()).cone.position!;
    const noisy = measure(cone6(), {}, { noiseC: 1.2, resolutionC: 1 }).cone.position!;
    expect(Math.abs(noisy - clean)).toBeLessThan(0.03);
  });
});

describe('the measure', () => {
  test('satisfies its schema and its own order, for any plain firing', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 400, max: 1400 }),
        fc.integer({ min: 8, max: 400 }),
        fc.integer({ min: 0, max: 120 }),
        fc.constantFrom('self-supporting', 'large', 'small', 'iron-free' as const),
        fc.constantFrom(null, '06', '6', '10' as const),
        (topC, rate, minutes, coneType, target) => {
          const stretches = [ramp(rate, topC), ...(minutes > 0 ? [hold(minutes)] : [])];
          const points = firing(20, ...stretches, ramp(200, 100));
          const fired = measure(points, { coneType, target }, { intervalSeconds: 300 });
          expect(() => zHeatWork.parse(fired)).not.toThrow();
          expect(fired.byCone.map(({ cone }) => cone)).toEqual([...CONES]);
          const { position, lowPosition, highPosition, label, bound } = fired.cone;
          expect(label === null).toBe(position === null);
          if (position !== null && lowPosition !== null) {
            expect(lowPosition).toBeLessThanOrEqual(position);
          }
          if (position !== null && bound === 'both-ways') {
            expect(highPosition).toBeGreaterThanOrEqual(position);
          }
          for (const { lowAmount, amount, highAmount } of fired.remedies) {
            expect(lowAmount).toBeLessThanOrEqual(amount);
            if (highAmount !== null) expect(highAmount).toBeGreaterThanOrEqual(amount);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  test('is unknown, not nought, below the coolest cone', () => {
    const fired = measure(firing(20, ramp(100, 480), ramp(100, 50)), { target: '06' });
    expect(fired.cone).toEqual({
      label: null,
      position: null,
      lowPosition: null,
      highPosition: null,
      bound: 'both-ways',
    });
    expect(fired.equivalentC).toBeNull();
    expect(fired.target!.verdict).toBe('under');
  });

  test('of a record that ends while hot is a bound', () => {
    const fired = measure(firing(20, ramp(60, 1186)), { target: '6', recordEnds: 'while-hot' });
    expect(fired.cone.bound).toBe('at-least');
    expect(fired.cone.highPosition).toBeNull();
    expect(fired.cone.lowPosition).toBeLessThan(fired.cone.position!);
  });

  test('beyond the hottest cone stops there', () => {
    const fired = measure(firing(20, ramp(60, 1450), ramp(250, 300)), { target: '12' });
    expect(fired.cone).toMatchObject({ label: '14', position: 14, bound: 'at-least' });
    expect(fired.target!.verdict).toBe('over');
  });

  test('tells shares and growth of the target, else of the nearest cone', () => {
    const toward = measure(cone6(), { target: '9' });
    const nine = toward.byCone.find(({ cone }) => cone === '9')!;
    expect(toward.accumulated.at(-1)!.dose / nine.dose).toBeCloseTo(1, 3);
    const nearest = measure(cone6(1210));
    const six = nearest.byCone.find(({ cone }) => cone === '6')!;
    expect(nearest.accumulated.at(-1)!.dose / six.dose).toBeCloseTo(1, 3);
  });

  test('with witness cones stands where they say, and tells the couple’s error', () => {
    const observedCones = [
      { cone: '6', place: 'shelf 2', bendDegrees: 90 },
      { cone: '7', place: 'shelf 2', bendDegrees: 10 },
    ] as const;
    const fired = measure(cone6(1230), { target: '6', observedCones });
    expect(Math.abs(fired.cone.position! - 6)).toBeLessThan(0.2);
    expect(fired.coupleErrorC!.estimate).toBeGreaterThan(5);
    expect(measure(cone6(1230)).coupleErrorC).toBeNull();
  });

  test('of one sample is nothing', () => {
    const trace = traceFrom(cone6());
    const one = { ...trace, atSeconds: trace.atSeconds.subarray(0, 1) };
    expect(measureHeatWork(one, { target: null, legs: [] })).toBeNull();
  });
});
