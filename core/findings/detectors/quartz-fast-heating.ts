import { clear, defineDetector, found, notApplicable } from '../detector.ts';
import { QUARTZ, quartzLimit } from '../quartz.ts';
import { passageThrough } from '../ware.ts';

/**
 * Did the kiln climb too fast through quartz inversion? A note only where the ware's thickness was not
 * told: everyday ware goes through unharmed.
 */
export const quartzFastHeating = defineDetector({
  id: 'quartz-fast-heating',
  needs: ['samples', 'options'],
  detect: ({ samples, options }) => {
    const passage = passageThrough(samples, QUARTZ.lowC, QUARTZ.highC, QUARTZ.keptC);
    if (passage === null) return notApplicable('stretch-not-seen');
    const { fastestCPerHour, evidence } = passage;
    const limitCPerHour = quartzLimit(options.ware);
    if (fastestCPerHour <= limitCPerHour) return clear();
    return found({
      severity: options.ware === undefined ? 'note' : 'watch',
      evidence: [evidence],
      figures: { fastestCPerHour },
      thresholds: { fastestCPerHour: limitCPerHour },
      instead: ['drying-fast', 'quartz-fast-cooling'],
    });
  },
});
