import { clear, defineDetector, found, notApplicable } from '../detector.ts';
import { CRISTOBALITE, QUARTZ, quartzLimit } from '../quartz.ts';
import { passageThrough } from '../ware.ts';

/** Chosen: half as fast again as the limit is no closed kiln's cooling through here. */
const WATCH_FACTOR = 1.5;

/**
 * Did the kiln cool too fast through quartz inversion, or through the change of cristobalite? The
 * faster of the two is told: watched where the thickness was told, or clearly beyond the limit.
 */
export const quartzFastCooling = defineDetector({
  id: 'quartz-fast-cooling',
  needs: ['samples', 'options'],
  detect: ({ samples, options }) => {
    const limitCPerHour = quartzLimit(options.ware);
    const seen = [QUARTZ, CRISTOBALITE].flatMap(({ highC, lowC, keptC }) => {
      const passage = passageThrough(samples, highC, lowC, keptC);
      return passage === null ? [] : [{ fromC: highC, ...passage }];
    });
    const [fastest] = seen.sort((a, b) => b.fastestCPerHour - a.fastestCPerHour);
    if (fastest === undefined) return notApplicable('no-cooling-logged');
    const { fromC, fastestCPerHour, evidence } = fastest;
    if (fastestCPerHour <= limitCPerHour) return clear();
    const isWatched = options.ware !== undefined || fastestCPerHour > WATCH_FACTOR * limitCPerHour;
    return found({
      severity: isWatched ? 'watch' : 'note',
      evidence: [evidence],
      figures: { fastestCPerHour, fromC },
      thresholds: { fastestCPerHour: limitCPerHour },
      instead: ['opened-hot', 'cooling-fast'],
    });
  },
});
