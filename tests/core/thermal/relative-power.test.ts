import { describe, expect, it } from 'vitest';
import { relativePower, relativePowerOf } from '../../../core/thermal/relative-power.ts';
import { courseOfTrace } from '../../../core/thermal/power-course.ts';
import { fired } from '../../builders/fired.ts';
import { THICK_BRICK, THIN_BRICK } from '../../kiln/kilns.ts';
import { FAST_GLAZE } from '../../kiln/schedules.ts';
import type { Setup } from '../../kiln/types.ts';

const SETUP: Setup = {
  seed: 11,
  kiln: THIN_BRICK,
  schedule: FAST_GLAZE,
  loadKg: 40,
  roomC: 20,
  supply: { wander: 0 },
  logger: { intervalSeconds: 60, noiseC: 0.5 },
};

describe('relative power', () => {
  const reference = fired(SETUP);

  // Truth: V²/R of the test kiln's elements. The bench `relative-power` has the whole study.
  it.each([
    [THIN_BRICK, 60, 1],
    [THIN_BRICK, 30, 1.2],
    [THICK_BRICK, 55, 1.15],
  ])(
    'of %o with %s kg and resistance times %s is told within 6 %%',
    (kiln, loadKg, elementWear) => {
      const before = kiln === THIN_BRICK ? reference : fired({ ...SETUP, kiln });
      const after = fired({ ...SETUP, kiln, seed: 12, loadKg, elementWear });
      const { relative } = relativePowerOf(after.document, before.document);
      expect(Math.abs(relative!.value * elementWear - 1)).toBeLessThan(0.06);
      expect(relative!.low).toBeLessThan(relative!.value);
      expect(relative!.high).toBeGreaterThan(relative!.value);
      const { trace, document } = after;
      const known = before.document.elements!.fit;
      const full = relativePower(courseOfTrace(trace, document.elements!.limited), known);
      expect(full.relative!.value).toBeCloseTo(relative!.value, 2);
    },
  );

  it('of the reference itself is 1', () => {
    const { relative } = relativePowerOf(reference.document, reference.document);
    expect(Math.abs(relative!.value - 1)).toBeLessThan(0.01);
  });

  it('is not known without a fit of the reference', () => {
    const { elements } = reference.document;
    const bare = { elements: { ...elements!, fit: null } };
    expect(relativePowerOf(reference.document, bare)).toEqual({
      relative: null,
      reason: 'no-reference-fit',
    });
    expect(relativePower(null, elements!.fit).reason).toBe('log-starts-hot');
  });
});
