import { purposeOf } from '../../model/purpose.ts';
import { clear, defineDetector, found, notApplicable } from '../detector.ts';
import { limitFor, passageThrough, wasFiredBefore } from '../ware.ts';

/** Where carbon and sulphur leave (common practice). */
const BURNOUT = { fromC: 700, toC: 900 } as const;
/** A climb is fast that keeps its rate over half of that (chosen). */
const KEPT_C = 100;
/**
 * Chosen: moderate bisque programmes go through at 80 to 120 °C/h (two published ones, reference
 * notes) and brisk ones at 150; the fault, a black core, is put down to fast climbs of 600–1000 °C.
 */
const NOTE_C_PER_HOUR = 160;
/** Chosen: faster than any of them. */
const WATCH_C_PER_HOUR = 200;

/**
 * Did green ware climb too fast through burnout? Never `act`: clays differ in what they hold, and the
 * next load is only at risk if this one shows it.
 */
export const burnoutFast = defineDetector({
  id: 'burnout-fast',
  needs: ['samples', 'options'],
  wants: ['schedule', 'heatWork'],
  detect: ({ samples, options, schedule, heatWork }) => {
    if (wasFiredBefore(purposeOf({ options, schedule, heatWork }))) {
      return notApplicable('ware-fired-before');
    }
    const passage = passageThrough(samples, BURNOUT.fromC, BURNOUT.toC, KEPT_C);
    if (passage === null) return notApplicable('stretch-not-seen');
    const { fastestCPerHour, evidence } = passage;
    const noteCPerHour = limitFor(NOTE_C_PER_HOUR, options.ware);
    const watchCPerHour = limitFor(WATCH_C_PER_HOUR, options.ware);
    if (fastestCPerHour <= noteCPerHour) return clear();
    const isWatched = fastestCPerHour > watchCPerHour;
    return found({
      severity: isWatched ? 'watch' : 'note',
      evidence: [evidence],
      figures: { fastestCPerHour },
      thresholds: { fastestCPerHour: isWatched ? watchCPerHour : noteCPerHour },
      instead: ['ramp-fast', 'schedule-suspect'],
    });
  },
});
