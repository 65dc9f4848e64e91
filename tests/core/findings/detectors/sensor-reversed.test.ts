import { describe, expect, test } from 'vitest';
import { sensorReversed } from '../../../../core/findings/detectors/sensor-reversed.ts';
import type { Facts } from '../../../../core/findings/facts.ts';
import { facts } from '../../../builders/facts.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';
import { traceFrom, type CurvePoint } from '../../../builders/trace.ts';

const of = (points: readonly CurvePoint[], setpoint?: (atSeconds: number) => number): Facts => {
  const trace = traceFrom(points, { noiseC: 0.3, resolutionC: 0.1 });
  const samples = { ...trace, setpointC: setpoint ? trace.atSeconds.map(setpoint) : null };
  return facts({ trace: samples.summary, samples });
};

/** From 20 °C down to `lowestC` in five hours and back up in ten. */
const fall = (lowestC: number): readonly CurvePoint[] => [
  [0, 20],
  [300, lowestC],
  [900, 18],
];

describe('crossed leads', () => {
  test('show a reading that falls below any room and comes back as the kiln cools', () => {
    const finding = onlyFinding(sensorReversed, of(fall(-180)));
    expect(finding.severity).toBe('act');
    expect(finding.figures['lowestC']).toBeCloseTo(-180, -1);
    expect(finding.evidence[0]!.toSeconds).toBeGreaterThan(50_000);
  });

  test.each([
    [-19, null],
    [-21, 'act'],
  ])('down to %d °C: %s', (lowestC, severity) => {
    const { findings } = judge(sensorReversed, of(fall(lowestC)));
    expect(findings[0]?.severity ?? null).toBe(severity);
  });

  test('show sooner where the logged setpoint rises meanwhile', () => {
    const rising = (atSeconds: number) => 20 + atSeconds / 60;
    expect(onlyFinding(sensorReversed, of(fall(-12), rising)).severity).toBe('act');
    expect(
      judge(
        sensorReversed,
        of(fall(-12), () => 20),
      ),
    ).toEqual(NOTHING);
    expect(judge(sensorReversed, of(fall(-9), rising))).toEqual(NOTHING);
  });

  test('are not told of a fall that is over at once', () => {
    const dip: readonly CurvePoint[] = [
      [0, 20],
      [200, 300],
      [203, -60],
      [206, 310],
      [600, 1000],
    ];
    expect(judge(sensorReversed, of(dip))).toEqual(NOTHING);
  });
});

test('a record that begins hot may simply be cooling', () => {
  expect(
    judge(
      sensorReversed,
      of([
        [0, 400],
        [600, -30],
      ]),
    ),
  ).toEqual(inapplicable('starts-hot'));
});

test('a firing as it should be has none', () => {
  expect(judge(sensorReversed, facts())).toEqual(NOTHING);
});
