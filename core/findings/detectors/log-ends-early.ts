import type { Alignment } from '../../model/document.ts';
import { clear, defineDetector, found } from '../detector.ts';
import { coolsByItself, unfinished } from '../legs.ts';
import { USABLE_CONFIDENCE_PERCENT } from '../schedule-detector.ts';

/** Chosen: a kiln this cool has no heat-work and no risky cooling before it any more. */
const HOT_C = 200;
/** Chosen: this near its hottest reading the record stops before the heat-work was over. */
const AT_PEAK_DELTA_C = 50;
/** Chosen: the boundary between two legs is not known much better. */
const LEFT_MINUTES = 10;

/** Scheduled time that the record does not show, in minutes; 0 where no alignment tells. */
const unseenMinutes = (alignment: Alignment | null): number =>
  alignment === null || 100 * alignment.confidence < USABLE_CONFIDENCE_PERCENT
    ? 0
    : unfinished(alignment).minutes;

/**
 * Did the record stop while the firing may have gone on? Never `act`: nothing is known to be wrong
 * with the firing, only that its end was not seen.
 */
export const logEndsEarly = defineDetector({
  id: 'log-ends-early',
  needs: ['trace', 'samples'],
  wants: ['alignment'],
  detect: ({ trace, samples, alignment }) => {
    const leftMinutes = unseenMinutes(alignment);
    const isControlled = leftMinutes >= LEFT_MINUTES && alignment && !coolsByItself(alignment);
    if (trace.offSeconds !== null && !isControlled) return clear('cooling-logged');
    const lastC = samples.smoothC.at(-1) ?? trace.minC;
    if (lastC < HOT_C) return clear('ends-cool');
    const belowPeakDeltaC = Math.max(0, trace.peakC - lastC);
    const hidesHeatWork = belowPeakDeltaC < AT_PEAK_DELTA_C || leftMinutes >= LEFT_MINUTES;
    const at = trace.durationSeconds;
    return found({
      severity: hidesHeatWork ? 'watch' : 'note',
      evidence: [{ fromSeconds: at, toSeconds: at }],
      figures: { lastC, belowPeakDeltaC, leftMinutes },
      thresholds: { lastC: HOT_C, belowPeakDeltaC: AT_PEAK_DELTA_C, leftMinutes: LEFT_MINUTES },
      instead: ['ended-early', 'power-interrupted', 'sensor-open'],
    });
  },
});
