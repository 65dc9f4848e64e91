import { clear, defineDetector, found, notApplicable } from '../detector.ts';

/** Chosen: a load is known to about a tenth; this much more is surely more. */
const HEAVIER_PERCENT = 25;
/** Chosen: a kiln that keeps its power is not slow for want of it. */
const WEAK_PERCENT = 92;

/** Was there more in the kiln than in the earlier good firing that was given with this one? */
export const heavyLoad = defineDetector({
  id: 'heavy-load',
  needs: ['elements'],
  detect: ({ elements }) => {
    const { relativeLoad, relativePower, relativePowerReason, limited } = elements;
    if (relativePowerReason === 'no-reference') return notApplicable('no-reference');
    if (relativeLoad === null || relativePower === null) return notApplicable('power-not-fitted');
    const heavierPercent = 100 * (relativeLoad - 1);
    if (heavierPercent < HEAVIER_PERCENT) return clear();
    const isWeakToo = 100 * relativePower.value <= WEAK_PERCENT;
    return found({
      severity: 'note',
      evidence: limited.map(({ fromSeconds, toSeconds }) => ({ fromSeconds, toSeconds })),
      figures: { heavierPercent, relativePowerPercent: 100 * relativePower.value },
      thresholds: { heavierPercent: HEAVIER_PERCENT },
      instead: isWeakToo ? ['elements-weak', 'cooling-differs'] : ['cooling-differs'],
    });
  },
});
