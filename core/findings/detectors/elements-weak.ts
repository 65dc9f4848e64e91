import { clear, defineDetector, found, notApplicable } from '../detector.ts';

/** Common practice: elements a tenth above their new resistance are replaced, 1/1.1 of the power. */
const ACT_PERCENT = 90;
/** Chosen: what relative power is told to (the bench `relative-power`) above that. */
const WATCH_PERCENT = 92;

/** Has the kiln less power than in the earlier good firing that was given with this one? */
export const elementsWeak = defineDetector({
  id: 'elements-weak',
  needs: ['elements'],
  detect: ({ elements }) => {
    const { relativePower, relativePowerReason, limited } = elements;
    if (relativePower === null) {
      if (relativePowerReason === 'no-reference') return notApplicable('no-reference');
      if (relativePowerReason === 'never-at-full-power') {
        return notApplicable('never-at-full-power');
      }
      return notApplicable('power-not-fitted');
    }
    const relativePowerPercent = 100 * relativePower.value;
    if (relativePowerPercent > WATCH_PERCENT) return clear();
    return found({
      severity: relativePowerPercent <= ACT_PERCENT ? 'act' : 'watch',
      evidence: limited.map(({ fromSeconds, toSeconds }) => ({ fromSeconds, toSeconds })),
      figures: {
        relativePowerPercent,
        lowPercent: 100 * relativePower.low,
        highPercent: 100 * relativePower.high,
      },
      thresholds: {
        relativePowerPercent: relativePowerPercent <= ACT_PERCENT ? ACT_PERCENT : WATCH_PERCENT,
      },
      instead: ['element-lost', 'supply-varies', 'sensor-drift'],
    });
  },
});
