import { describe, expect, it } from 'vitest';
import { zonesApart } from '../../../../core/findings/detectors/zones-apart.ts';
import type { Zone } from '../../../../core/model/document.ts';
import { celsius, celsiusDelta } from '../../../../core/units.ts';
import { facts, heatWorkAt } from '../../../builders/facts.ts';
import { inapplicable, judge, NOTHING, onlyFinding } from '../../../builders/judge.ts';

const zone = (position: number | null, peakC: number): Zone => ({
  channel: 'lower',
  peakC: celsius(peakC),
  cone: null,
  position,
  meanDifferenceC: celsiusDelta(-10),
});
const withZone = (position: number | null, peakC: number) => ({
  ...facts(),
  heatWork: heatWorkAt(6),
  zones: [zone(position, peakC)],
});

describe('zones-apart', () => {
  it('watches places more than a cone apart', () => {
    const { severity, figures } = onlyFinding(zonesApart, withZone(4.9, 1190));
    expect(severity).toBe('watch');
    expect(figures['apartCones']).toBeCloseTo(1.1, 9);
  });

  it('is silent at a cone, which is ordinary', () => {
    expect(judge(zonesApart, withZone(5.05, 1190))).toEqual(NOTHING);
  });

  it('goes by temperature where no cone was reached', () => {
    const { peakC } = facts().trace;
    expect(onlyFinding(zonesApart, withZone(null, peakC - 26)).severity).toBe('watch');
    expect(judge(zonesApart, withZone(null, peakC - 24))).toEqual(NOTHING);
  });

  it('does not apply where only one place was measured', () => {
    expect(judge(zonesApart, { ...facts(), zones: [] })).toEqual(inapplicable('no-second-place'));
  });
});
