import { SECONDS_PER_MINUTE, seconds } from '../../units.ts';
import { clear, defineDetector, found } from '../detector.ts';

/** Chosen: a top hold is often five minutes, and one reading in it cannot show its length. */
const NOTE_MINUTES = 5;
/** Chosen: from here on a whole hold can pass between two readings, and overshoots are not seen. */
const WATCH_MINUTES = 15;
/** Chosen: as much as a hold may be off before it is told. */
const STEP_DELTA_C = 5;

/** Are the readings too far apart, or rounded too far, to see what is asked of them? */
export const logCoarse = defineDetector({
  id: 'log-coarse',
  needs: ['trace'],
  detect: ({ trace }) => {
    const intervalMinutes = trace.medianIntervalSeconds / SECONDS_PER_MINUTE;
    const stepDeltaC = trace.resolutionC;
    if (intervalMinutes <= NOTE_MINUTES && stepDeltaC < STEP_DELTA_C) return clear();
    const isVery = intervalMinutes > WATCH_MINUTES;
    return found({
      severity: isVery ? 'watch' : 'note',
      evidence: [{ fromSeconds: seconds(0), toSeconds: trace.durationSeconds }],
      figures: { intervalMinutes, stepDeltaC },
      thresholds: {
        intervalMinutes: isVery ? WATCH_MINUTES : NOTE_MINUTES,
        stepDeltaC: STEP_DELTA_C,
      },
      instead: [],
    });
  },
});
