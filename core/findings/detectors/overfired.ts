import type { Severity } from '../../model/finding.ts';
import { clear, defineDetector, found, notApplicable } from '../detector.ts';
import { HALF_CONE, heatWorkEvidence, offTarget, type OffTarget } from '../off-target.ts';

/** Chosen: most of the way to the half cone from which a firing counts as beyond. */
const NOTE_CONES = 0.35;

const severityOf = ({ offCones, certain }: OffTarget): Severity | null => {
  if (offCones < NOTE_CONES) return null;
  if (offCones <= HALF_CONE) return 'note';
  return certain ? 'act' : 'watch';
};

/** Is the heat-work beyond the cone that was meant? `act` only where the range leaves no doubt. */
export const overfired = defineDetector({
  id: 'overfired',
  needs: ['heatWork', 'trace'],
  detect: ({ heatWork, trace }) => {
    const { target } = heatWork;
    if (target === null) return notApplicable('no-target-cone');
    const off = offTarget(heatWork);
    const severity = off === null ? null : severityOf(off);
    if (off === null || severity === null) return clear();
    return found({
      severity,
      evidence: heatWorkEvidence(heatWork, trace.peakAtSeconds),
      figures: {
        overCones: off.offCones,
        ...(target.marginC === null ? {} : { overDeltaC: target.marginC }),
      },
      thresholds: { overCones: severity === 'note' ? NOTE_CONES : HALF_CONE },
      instead: [
        'sensor-drift',
        'overshoot',
        'power-stuck-on',
        'schedule-suspect',
        'wrong-end-cone',
      ],
    });
  },
});
