import { describe, expect, test } from 'vitest';
import { kineticsOf } from '../../../core/cones/cone-kinetics.ts';
import { doseOf, joined } from '../../../core/cones/occupancy.ts';
import { firingParts } from '../../../core/heatwork/firing-parts.ts';
import { measured } from '../../../core/heatwork/measured.ts';
import { firing, traceFrom, type CurvePoint } from '../../builders/trace.ts';
import { cone6, ramp } from './measuring.ts';

const partsOf = (points: CurvePoint[]) => {
  const trace = traceFrom(points, { intervalSeconds: 20 });
  const all = measured(trace, { target: null, legs: trace.summary.legs });
  return { all, parts: firingParts(all) };
};

describe('a firing taken apart', () => {
  test('is the whole firing when put together', () => {
    const { all, parts } = partsOf(cone6(1215, 15));
    const six = kineticsOf('self-supporting', '6');
    const together = doseOf(six, joined(parts!.before, parts!.lastStretch, parts!.after));
    expect(together / doseOf(six, all.record.occupancy)).toBeCloseTo(1, 5);
  });

  test('has its last stretch, rate and soak', () => {
    const { parts } = partsOf(cone6(1215, 15));
    expect(parts!.lastFromC).toBeCloseTo(1115, 0);
    expect(parts!.rampEndC).toBeCloseTo(1215, 0);
    expect(parts!.rampRateCPerHour).toBeCloseTo(60, 1);
    expect(parts!.soakC).toBeCloseTo(1215, 0);
    expect(parts!.soakMinutes).toBeCloseTo(15, 1);
    expect(partsOf(cone6()).parts!.soakMinutes).toBe(0);
  });

  test('cannot be had where the last climb was not seen', () => {
    expect(partsOf(firing(1210, ramp(60, 1215), ramp(250, 300))).parts).toBeNull();
  });
});
