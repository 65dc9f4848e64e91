import { describe, expect, test } from 'vitest';
import { kineticsOf } from '../../../core/cones/cone-kinetics.ts';
import { doseOf, occupancyOf } from '../../../core/cones/occupancy.ts';
import { accumulatedDose } from '../../../core/heatwork/accumulated.ts';
import { joinTraces } from '../../../core/trace/join-traces.ts';
import { traceFrom } from '../../builders/trace.ts';
import { cone6 } from './measuring.ts';

const six = kineticsOf('self-supporting', '6');
const asRead = (readC: number) => readC;

describe('the accumulated dose', () => {
  test.each([0.25, 1, 10, 60, 600])(
    'ends at the whole dose, sampled every %d s',
    (intervalSeconds) => {
      const trace = traceFrom(cone6(), { intervalSeconds, noiseC: 0.8 });
      const last = accumulatedDose(trace, six, asRead).at(-1)!;
      expect(Math.abs(last.dose / doseOf(six, occupancyOf(trace)) - 1)).toBeLessThan(1e-3);
      expect(last.atSeconds).toBe(trace.atSeconds.at(-1));
    },
  );

  test('never falls, is a few hundred points, and begins at nothing', () => {
    const curve = accumulatedDose(traceFrom(cone6(), { intervalSeconds: 1 }), six, asRead);
    expect(curve.length).toBeGreaterThan(150);
    expect(curve.length).toBeLessThan(400);
    expect(curve[0]).toEqual({ atSeconds: 0, dose: 0 });
    for (let i = 1; i < curve.length; i += 1) {
      expect(curve[i]!.dose).toBeGreaterThanOrEqual(curve[i - 1]!.dose);
      expect(curve[i]!.atSeconds).toBeGreaterThan(curve[i - 1]!.atSeconds);
    }
  });

  test('drawn straight between its points, is nowhere further off than a hundredth', () => {
    const trace = traceFrom(cone6(1215, 30), { intervalSeconds: 10 });
    const curve = accumulatedDose(trace, six, asRead);
    const whole = curve.at(-1)!.dose;
    for (let i = 1; i < curve.length; i += 1) {
      const [from, to] = [curve[i - 1]!, curve[i]!];
      const middle = (from.atSeconds + to.atSeconds) / 2;
      const exact = doseOf(six, occupancyOf(trace, -Infinity, middle));
      expect(Math.abs((from.dose + to.dose) / 2 - exact)).toBeLessThan(0.01 * whole);
    }
  });

  test('is that of the corrected readings', () => {
    const trace = traceFrom(cone6());
    const hotter = accumulatedDose(trace, six, (readC) => readC + 10).at(-1)!.dose;
    expect(hotter / accumulatedDose(trace, six, asRead).at(-1)!.dose).toBeGreaterThan(1.3);
  });

  test('stands still between two logs, and counts both', () => {
    const one = traceFrom(cone6());
    const both = joinTraces(one, one, one.summary.durationSeconds + 36_000);
    const curve = accumulatedDose(both, six, asRead);
    const alone = doseOf(six, occupancyOf(one));
    expect(Math.abs(curve.at(-1)!.dose / (2 * alone) - 1)).toBeLessThan(1e-3);
    const rows = curve.filter(
      ({ atSeconds }) =>
        atSeconds >= one.summary.durationSeconds &&
        atSeconds < both.summary.gaps[0]!.toSeconds + 60,
    );
    for (const { dose } of rows) expect(Math.abs(dose / alone - 1)).toBeLessThan(0.01);
  });
});
