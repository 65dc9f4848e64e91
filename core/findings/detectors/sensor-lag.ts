import { seconds } from '../../units.ts';
import { clear, defineDetector, found, notApplicable } from '../detector.ts';
import { zoneLag } from '../zone-lag.ts';

/**
 * Chosen: at 150 °C/h a lag of 4 min reads 10 °C low, which is about half a cone; a couple in a thin
 * sheath lags by a minute or so.
 */
const WATCH_MINUTES = 4;

/** Does the main couple follow a second one late, on the way up and on the way down? */
export const sensorLag = defineDetector({
  id: 'sensor-lag',
  needs: ['samples'],
  detect: ({ samples }) => {
    if (samples.zones.length === 0) return notApplicable('no-second-place');
    const lags = samples.zones.flatMap((zone) => zoneLag(samples, zone) ?? []);
    const [worst] = lags.sort((a, b) => b.lagMinutes - a.lagMinutes);
    if (worst === undefined) return notApplicable('not-heated-and-cooled');
    // A lag shows both ways; a place that is simply cooler stays cooler on the way down.
    if (worst.lagMinutes < WATCH_MINUTES) return clear();
    return found({
      severity: 'watch',
      evidence: [
        {
          fromSeconds: samples.summary.startSeconds ?? seconds(0),
          toSeconds: samples.summary.durationSeconds,
        },
      ],
      figures: {
        lagMinutes: worst.lagMinutes,
        whileHeatingDeltaC: worst.heatingDeltaC,
        whileCoolingDeltaC: worst.coolingDeltaC,
      },
      thresholds: { lagMinutes: WATCH_MINUTES },
      instead: ['zones-apart', 'sensor-drift'],
    });
  },
});
