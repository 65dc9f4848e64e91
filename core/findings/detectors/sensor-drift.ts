import type { HeatWork } from '../../model/document.ts';
import type { Severity } from '../../model/finding.ts';
import { clear, defineDetector, found, notApplicable, type Figures } from '../detector.ts';

/** Common practice: half a cone is a usual tolerance, which is some 10 °C about cone 6. */
const WATCH_DELTA_C = 10;
/** Chosen: a whole cone; the next load would be another firing than was meant. */
const ACT_DELTA_C = 20;

type CoupleError = NonNullable<HeatWork['coupleErrorC']>;

/** Cones that no one error explains speak of the kiln's places first, and of the couple second. */
const severityOf = ({ estimate, oneOffset }: CoupleError): Severity => {
  if (oneOffset === false) return 'note';
  return Math.abs(estimate) >= ACT_DELTA_C ? 'act' : 'watch';
};

const apart = ({ byPlace }: CoupleError): Figures => {
  if (byPlace.length < 2) return {};
  const estimates = byPlace.map(({ estimate }) => estimate);
  return { placesApartDeltaC: Math.max(...estimates) - Math.min(...estimates) };
};

/** Do the witness cones say that the couple does not read true? */
export const sensorDrift = defineDetector({
  id: 'sensor-drift',
  needs: ['trace', 'heatWork'],
  detect: ({ trace, heatWork }) => {
    const error = heatWork.coupleErrorC;
    if (error === null) return notApplicable('no-witness-cones');
    const isSure = error.low > 0 || error.high < 0;
    if (!isSure || Math.abs(error.estimate) < WATCH_DELTA_C) return clear();
    const severity = severityOf(error);
    return found({
      severity,
      evidence: [
        { fromSeconds: trace.peakAtSeconds, toSeconds: trace.peakAtSeconds, celsius: trace.peakC },
      ],
      figures: {
        driftDeltaC: error.estimate,
        leastDeltaC: error.low,
        mostDeltaC: error.high,
        ...apart(error),
      },
      thresholds: { driftDeltaC: severity === 'act' ? ACT_DELTA_C : WATCH_DELTA_C },
      instead: ['zones-apart', 'sensor-wrong-type'],
    });
  },
});
