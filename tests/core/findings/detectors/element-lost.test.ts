import { describe, expect, it } from 'vitest';
import { elementLost } from '../../../../core/findings/detectors/element-lost.ts';
import type { Facts } from '../../../../core/findings/facts.ts';
import { facts } from '../../../builders/facts.ts';
import { fired } from '../../../builders/fired.ts';
import { inapplicable, judge, NOTHING, onlyFinding } from '../../../builders/judge.ts';
import { BACKED_BRICK, THICK_BRICK } from '../../../kiln/kilns.ts';
import { FAST_GLAZE } from '../../../kiln/schedules.ts';
import type { KilnPlan } from '../../../kiln/kiln.ts';

/** Full power from 590 °C on; one of the circuits opens at 850 °C. */
const lost = (kiln: KilnPlan, circuits: number) => {
  const elements = { ...kiln.elements, circuits, upperShare: 0.5 };
  const { firing, trace, document } = fired({
    seed: 51,
    kiln: { ...kiln, elements },
    schedule: FAST_GLAZE,
    loadKg: 40,
    roomC: 20,
    logger: { intervalSeconds: 60, noiseC: 0.5 },
    faults: [{ kind: 'circuit-open', when: { heatingPastC: 850 }, circuit: 0 }],
  });
  const given: Facts = {
    ...facts(),
    samples: trace,
    trace: document.trace,
    elements: document.elements,
    options: { kiln: { circuits } },
  };
  return { given, atSeconds: firing.truth.faults[0]!.fromSeconds };
};

describe('element-lost', () => {
  it.each([
    [THICK_BRICK, 6],
    [BACKED_BRICK, 4],
  ])('tells when, and what share, of %o with %s circuits', (kiln, circuits) => {
    const { given, atSeconds } = lost(kiln, circuits);
    const { severity, evidence, figures } = onlyFinding(elementLost, given);
    expect(severity).toBe('act');
    expect(Math.abs(evidence[0]!.fromSeconds - atSeconds)).toBeLessThan(600);
    expect(Math.abs(figures['lostPercent']! - 100 / circuits)).toBeLessThan(5);
    expect(figures['oneCircuitPercent']).toBeCloseTo(100 / circuits, 9);
  });

  it('does not ask for action where one of twelve circuits went', () => {
    const { given } = lost(BACKED_BRICK, 12);
    const { findings } = judge(elementLost, given);
    expect(findings.map(({ severity }) => severity)).not.toContain('act');
  });

  it('is silent where all circuits held', () => {
    const { trace, document } = fired({
      seed: 52,
      kiln: THICK_BRICK,
      schedule: FAST_GLAZE,
      loadKg: 40,
      roomC: 20,
      logger: { intervalSeconds: 60, noiseC: 0.5 },
    });
    const given = {
      ...facts(),
      samples: trace,
      trace: document.trace,
      elements: document.elements,
    };
    expect(judge(elementLost, given)).toEqual(NOTHING);
  });

  it('does not apply where full power was never needed', () => {
    expect(judge(elementLost, facts())).toEqual(inapplicable('never-at-full-power'));
  });
});
