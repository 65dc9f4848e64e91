import { describe, expect, it } from 'vitest';
import { elementLost } from '../../../../core/findings/detectors/element-lost.ts';
import type { Facts } from '../../../../core/findings/facts.ts';
import { facts } from '../../../builders/facts.ts';
import { fired, type Fired, type Told } from '../../../builders/fired.ts';
import { inapplicable, judge, NOTHING, onlyFinding } from '../../../builders/judge.ts';
import { BACKED_BRICK, THICK_BRICK } from '../../../kiln/kilns.ts';
import { FAST_GLAZE, SLOW_BISQUE } from '../../../kiln/schedules.ts';
import type { KilnPlan } from '../../../kiln/kiln.ts';

const SETUP = { loadKg: 40, roomC: 20, logger: { intervalSeconds: 60, noiseC: 0.5 } } as const;

const factsOf = ({ trace, document }: Fired, circuits?: number): Facts => ({
  ...facts(),
  samples: trace,
  trace: document.trace,
  elements: document.elements,
  options: circuits === undefined ? {} : { kiln: { circuits } },
});

/** Full power from 590 °C on; one of the circuits opens at 850 °C. */
const lost = (kiln: KilnPlan, circuits: number, schedule = FAST_GLAZE, told: Told = {}) => {
  const elements = { ...kiln.elements, circuits, upperShare: 0.5 };
  const firing = fired(
    {
      ...SETUP,
      seed: 51,
      kiln: { ...kiln, elements },
      schedule,
      faults: [{ kind: 'circuit-open', when: { heatingPastC: 850 }, circuit: 0 }],
    },
    told,
  );
  const atSeconds = firing.firing.truth.faults[0]!.fromSeconds;
  return { given: factsOf(firing, circuits), atSeconds };
};

describe('element-lost', () => {
  it.each([
    ['thick brick', THICK_BRICK, 6],
    ['backed brick', BACKED_BRICK, 4],
  ])('tells when, and what share, of the %s’s', (_, kiln, circuits) => {
    const { given, atSeconds } = lost(kiln, circuits);
    const { severity, evidence, figures } = onlyFinding(elementLost, given);
    expect(severity).toBe('act');
    expect(Math.abs(evidence[0]!.fromSeconds - atSeconds)).toBeLessThan(600);
    expect(Math.abs(figures['lostPercent']! - 100 / circuits)).toBeLessThan(5);
    expect(figures['oneCircuitPercent']).toBeCloseTo(100 / circuits, 9);
  });

  it('tells it below full power where the output was logged, and not where it was not', () => {
    const { given, atSeconds } = lost(BACKED_BRICK, 6, SLOW_BISQUE, { withOutput: true });
    const { evidence, figures } = onlyFinding(elementLost, given);
    expect(Math.abs(evidence[0]!.fromSeconds - atSeconds)).toBeLessThan(600);
    expect(Math.abs(figures['lostPercent']! - 100 / 6)).toBeLessThan(5);
    const { given: unseen } = lost(BACKED_BRICK, 6, SLOW_BISQUE);
    expect(judge(elementLost, unseen)).toEqual(inapplicable('never-at-full-power'));
  });

  it('does not ask for action where one of twelve circuits went', () => {
    const { given } = lost(BACKED_BRICK, 12);
    const { findings } = judge(elementLost, given);
    expect(findings.map(({ severity }) => severity)).not.toContain('act');
  });

  it.each([
    ['', {}],
    [', by the output too', { withOutput: true }],
  ])('is silent where all circuits held%s', (_, told) => {
    const whole = fired({ ...SETUP, seed: 52, kiln: THICK_BRICK, schedule: FAST_GLAZE }, told);
    expect(judge(elementLost, factsOf(whole))).toEqual(NOTHING);
  });

  it('does not apply where full power was never needed', () => {
    expect(judge(elementLost, facts())).toEqual(inapplicable('never-at-full-power'));
  });

  it('does not apply where no cooling was logged', () => {
    const record = { untilC: 1150 };
    const short = fired({ ...SETUP, seed: 53, kiln: THICK_BRICK, schedule: FAST_GLAZE, record });
    expect(judge(elementLost, factsOf(short))).toEqual(inapplicable('power-not-fitted'));
  });
});
