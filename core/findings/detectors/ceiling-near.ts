import { topC } from '../legs.ts';
import { clear, defineDetector, found, notApplicable } from '../detector.ts';

/** Chosen: a last ramp of 60 °C/h needs about this much in reserve on the test kilns. */
const WATCH_DELTA_C = 100;

/** Is the temperature at which the kiln runs out of power close to what is asked of it? */
export const ceilingNear = defineDetector({
  id: 'ceiling-near',
  needs: ['elements', 'trace'],
  wants: ['schedule'],
  detect: ({ elements, trace, schedule }) => {
    const { fit, fitReason, ceilingC, ceilingRange } = elements;
    if (fit === null) {
      const isIdle = fitReason === 'never-at-full-power';
      return notApplicable(isIdle ? 'never-at-full-power' : 'power-not-fitted');
    }
    // Beyond what wire bears.
    if (ceilingC === null || ceilingRange === null) return clear();
    const askedC = Math.max(trace.peakC, schedule === null ? -Infinity : topC(schedule));
    const reserveDeltaC = ceilingC - askedC;
    if (reserveDeltaC > WATCH_DELTA_C) return clear();
    const at = trace.peakAtSeconds;
    return found({
      severity: ceilingRange.highC < askedC ? 'act' : 'watch',
      evidence: [{ fromSeconds: at, toSeconds: at, celsius: trace.peakC }],
      figures: {
        ceilingC,
        lowC: ceilingRange.lowC,
        highC: ceilingRange.highC,
        askedC,
        reserveDeltaC,
      },
      thresholds: { reserveDeltaC: WATCH_DELTA_C },
      instead: ['elements-weak', 'element-lost', 'supply-varies'],
    });
  },
});
