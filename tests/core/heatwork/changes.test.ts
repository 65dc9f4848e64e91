import { describe, expect, test } from 'vitest';
import { kineticsOf } from '../../../core/cones/cone-kinetics.ts';
import { doseOf, occupancyOf } from '../../../core/cones/occupancy.ts';
import { peakChange, slowerChange, soakChange } from '../../../core/heatwork/changes.ts';
import { firingParts } from '../../../core/heatwork/firing-parts.ts';
import { measured } from '../../../core/heatwork/measured.ts';
import { curveFrom, firing, traceFrom, type CurvePoint } from '../../builders/trace.ts';
import { cone6, hold, ramp } from './measuring.ts';

const six = kineticsOf('self-supporting', '6');
const doseIn = (points: CurvePoint[]): number => doseOf(six, occupancyOf(curveFrom(points)));

const partsOf = (points: CurvePoint[]) => {
  const trace = traceFrom(points, { intervalSeconds: 10 });
  return firingParts(measured(trace, { target: null, legs: trace.summary.legs }))!;
};

/** Every change is checked against a firing that really was so. */
describe('a changed firing', () => {
  const parts = partsOf(cone6(1215, 10));

  test.each([-10, -4, 0, 15, 60])('with %d min more at the top', (minutes) => {
    expect(soakChange(parts)(six, minutes) / doseIn(cone6(1215, 10 + minutes))).toBeCloseTo(1, 2);
  });

  test('held at the end of a climb that had no hold', () => {
    const held = soakChange(partsOf(cone6(1215)))(six, 20);
    expect(held / doseIn(cone6(1215, 20))).toBeCloseTo(1, 2);
  });

  test.each([-30, -5, 0, 12, 40])('with a peak %d °C higher', (byC) => {
    expect(peakChange(parts)(six, byC) / doseIn(cone6(1215 + byC, 10))).toBeCloseTo(1, 1);
  });

  test.each([0.5, 1, 2, 3])('with a last stretch %d times as slow', (factor) => {
    const slower = firing(
      ...([20, ramp(150, 1100), ramp(60, 1115), ramp(60 / factor, 1215)] as const),
      ...[hold(10), ramp(250, 300)],
    );
    expect(slowerChange(parts)(six, Math.log(factor)) / doseIn(slower)).toBeCloseTo(1, 2);
  });
});
