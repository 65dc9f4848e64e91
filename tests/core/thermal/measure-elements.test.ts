import { describe, expect, it } from 'vitest';
import { measureElements } from '../../../core/thermal/measure-elements.ts';
import { fired } from '../../builders/fired.ts';
import { THIN_BRICK } from '../../kiln/kilns.ts';
import { DECAL, FAST_GLAZE } from '../../kiln/schedules.ts';
import type { Setup } from '../../kiln/types.ts';

const NO_REFERENCE = { known: null, reason: 'no-reference' } as const;
const SETUP: Setup = {
  seed: 41,
  kiln: THIN_BRICK,
  schedule: FAST_GLAZE,
  loadKg: 35,
  roomC: 20,
  logger: { intervalSeconds: 60, noiseC: 0.4 },
};

describe('what a firing says of power and loss', () => {
  it('is a fitted kiln, how it heats and cools, and its power against a reference', () => {
    const reference = fired(SETUP).document;
    const { elements } = fired({ ...SETUP, seed: 42 }, { options: { reference } }).document;
    expect(elements).toMatchObject({ fitReason: null, relativePowerReason: null });
    expect(elements!.relativePower!.value).toBeCloseTo(1, 1);
    expect(elements!.capability.length).toBeGreaterThan(3);
  });

  it('is nothing, with its reasons, where full power was never needed', () => {
    const { elements, trace } = fired({ ...SETUP, schedule: DECAL }).document;
    expect(elements).toEqual({
      limited: [],
      capability: [],
      ceilingC: null,
      ceilingRange: null,
      ceilingAtLeastC: trace.peakC,
      hottestCone: null,
      fit: null,
      fitReason: 'never-at-full-power',
      relativePower: null,
      relativePowerReason: 'no-reference',
      relativeLoad: null,
    });
  });

  it('is told by the logged output where no schedule is given', () => {
    const { elements } = fired(SETUP, { schedule: null, withOutput: true }).document;
    expect(elements!.fit).not.toBeNull();
  });

  it('says why where the record starts hot', () => {
    const { trace, document } = fired(SETUP);
    const hot = { ...trace, summary: { ...trace.summary, startSeconds: null } };
    const told = measureElements(hot, document.alignment, 'self-supporting', NO_REFERENCE);
    expect(told).toMatchObject({ fit: null, fitReason: 'log-starts-hot', capability: [] });
  });
});
