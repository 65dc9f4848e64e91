import { describe, expect, test } from 'vitest';
import { measureZones } from '../../../core/heatwork/zones.ts';
import type { Trace } from '../../../core/model/trace.ts';
import { traceFrom } from '../../builders/trace.ts';
import { cone6, measure } from './measuring.ts';

const trace = traceFrom(cone6(), { intervalSeconds: 20 });

/** The same firing with another place that differs by a function of the main reading. */
const withZone = (of: (readC: number, i: number) => number): Trace => ({
  ...trace,
  zones: [{ channel: 'bottom', celsius: trace.celsius.map(of) }],
});

describe('another measured place', () => {
  test('like the main one stands where the main one does', () => {
    const [zone] = measureZones(
      withZone((readC) => readC),
      'self-supporting',
    );
    expect(zone!.position).toBeCloseTo(measure(cone6()).cone.position!, 6);
    expect(zone).toMatchObject({ channel: 'bottom', cone: '6', meanDifferenceC: 0 });
    expect(zone!.peakC).toBeCloseTo(trace.summary.peakC, 6);
  });

  test('20 °C cooler stands lower', () => {
    const [zone] = measureZones(
      withZone((readC) => readC - 20),
      'self-supporting',
    );
    expect(zone!.meanDifferenceC).toBeCloseTo(-20, 6);
    expect(zone!.position).toBeLessThan(5.6);
    expect(zone!.position).toBeGreaterThan(5);
  });

  test('with holes is measured over what it read', () => {
    const holed = withZone((readC, i) => (i % 5 === 0 ? NaN : readC));
    const [zone] = measureZones(holed, 'self-supporting');
    expect(zone!.position).toBeCloseTo(measure(cone6()).cone.position!, 1);
    expect(zone!.meanDifferenceC).toBeCloseTo(0, 6);
  });

  test('that hardly ever read is left out', () => {
    const dead = withZone((readC, i) => (i < 5 ? readC : NaN));
    expect(measureZones(dead, 'self-supporting')).toEqual([]);
  });
});
