import type { Severity } from '../../model/finding.ts';
import { purposeOf, type FiringPurpose } from '../../model/purpose.ts';
import { clear, defineDetector, found, notApplicable } from '../detector.ts';
import { limitFor, passageThrough, wasFiredBefore } from '../ware.ts';

/** Where bound-up water boils out of clay that is not bone dry (common practice). */
const DRYING = { fromC: 80, toC: 130 } as const;
/** A climb is fast that keeps its rate over half of that (chosen: a quarter hour at the limit). */
const KEPT_C = 25;
/** Green ware of ordinary thickness: common practice. */
const GREEN_C_PER_HOUR = 100;
/** Chosen: a controller that was told the limit strays from it by less than a fifth. */
const WATCH_FACTOR = 1.2;
/** Chosen: at twice the limit the next green load is at risk whatever its thickness. */
const ACT_FACTOR = 2;
/**
 * Ware that was fired before takes up water again with its glaze, and gives it off without harm at
 * the rates of everyday glaze firings, up to 200 °C/h (common practice; the rest chosen).
 */
const FIRED_C_PER_HOUR = 250;

const severityOf = (times: number, purpose: FiringPurpose | null): Severity => {
  if (wasFiredBefore(purpose)) return 'note';
  if (times <= WATCH_FACTOR) return 'note';
  return times > ACT_FACTOR && purpose?.isTold === true ? 'act' : 'watch';
};

/**
 * Did the kiln climb too fast through drying? Only ware that is known to be green asks for action: a
 * low cone alone may as well be a glaze.
 */
export const dryingFast = defineDetector({
  id: 'drying-fast',
  needs: ['samples', 'options'],
  wants: ['schedule', 'heatWork'],
  detect: ({ samples, options, schedule, heatWork }) => {
    const passage = passageThrough(samples, DRYING.fromC, DRYING.toC, KEPT_C);
    if (passage === null) return notApplicable('stretch-not-seen');
    const purpose = purposeOf({ options, schedule, heatWork });
    const usual = wasFiredBefore(purpose) ? FIRED_C_PER_HOUR : GREEN_C_PER_HOUR;
    const limitCPerHour = limitFor(usual, options.ware);
    const { fastestCPerHour, evidence } = passage;
    if (fastestCPerHour <= limitCPerHour) return clear();
    return found({
      severity: severityOf(fastestCPerHour / limitCPerHour, purpose),
      evidence: [evidence],
      figures: { fastestCPerHour },
      thresholds: { fastestCPerHour: limitCPerHour },
      instead: ['overshoot', 'ramp-fast', 'schedule-suspect'],
    });
  },
});
