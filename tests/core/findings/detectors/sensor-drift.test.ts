import { describe, expect, test } from 'vitest';
import { sensorDrift } from '../../../../core/findings/detectors/sensor-drift.ts';
import type { HeatWork } from '../../../../core/model/document.ts';
import { celsiusDelta } from '../../../../core/units.ts';
import { facts, heatWorkAt } from '../../../builders/facts.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';

const range = (estimate: number, spread = 6) => ({
  estimate: celsiusDelta(estimate),
  low: celsiusDelta(estimate - spread),
  high: celsiusDelta(estimate + spread),
});

const withError = (
  estimate: number,
  spread = 6,
  rest: Partial<NonNullable<HeatWork['coupleErrorC']>> = {},
) =>
  facts({
    heatWork: {
      ...heatWorkAt(6),
      coupleErrorC: { ...range(estimate, spread), byPlace: [], oneOffset: null, ...rest },
    },
  });

describe('cones that contradict the couple', () => {
  test.each([
    [-9.9, null],
    [-10, 'watch'],
    [12, 'watch'],
    [-19.9, 'watch'],
    [-20, 'act'],
  ])('by %d °C: %s', (estimate, severity) => {
    expect(judge(sensorDrift, withError(estimate)).findings[0]?.severity ?? null).toBe(severity);
  });

  test('say nothing where they could also agree with it', () => {
    expect(judge(sensorDrift, withError(-12, 13))).toEqual(NOTHING);
  });

  test('of places that no one offset explains are a note, with how far the places part', () => {
    const byPlace = [
      { place: 'top', ...range(-30) },
      { place: 'bottom', ...range(4) },
    ];
    const finding = onlyFinding(sensorDrift, withError(-22, 20, { byPlace, oneOffset: false }));
    expect(finding.severity).toBe('note');
    expect(finding.figures).toMatchObject({ driftDeltaC: -22, placesApartDeltaC: 34 });
    expect(finding.instead).toContain('zones-apart');
  });
});

test('without cones nobody knows', () => {
  expect(judge(sensorDrift, facts())).toEqual(inapplicable('no-witness-cones'));
});

test('nor where the heat-work could not be worked out', () => {
  expect(judge(sensorDrift, facts({ heatWork: null }))).toEqual(inapplicable('no-heat-work'));
});
