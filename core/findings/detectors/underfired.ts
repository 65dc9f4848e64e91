import { positionOfCone } from '../../model/cone.ts';
import type { HeatWork } from '../../model/document.ts';
import type { Evidence, Severity } from '../../model/finding.ts';
import {
  clear,
  defineDetector,
  found,
  notApplicable,
  type Figures,
  type Verdict,
} from '../detector.ts';
import { HALF_CONE, heatWorkEvidence, offTarget, type OffTarget } from '../off-target.ts';

/** Chosen: most of the way to the half cone from which a firing counts as short. */
const NOTE_CONES = 0.35;

const severityOf = ({ offCones, certain }: OffTarget): Severity | null => {
  const shortCones = -offCones;
  if (shortCones < NOTE_CONES) return null;
  if (shortCones <= HALF_CONE) return 'note';
  return certain ? 'act' : 'watch';
};

/** The coolest cone still stands, and a target of at least a cone more was meant. */
const nothingReached = (target: NonNullable<HeatWork['target']>): boolean =>
  positionOfCone(target.cone) > positionOfCone('021');

const verdict = (severity: Severity, evidence: Evidence[], figures: Figures): Verdict =>
  found({
    severity,
    evidence,
    figures,
    thresholds: { shortCones: severity === 'note' ? NOTE_CONES : HALF_CONE },
    instead: ['sensor-drift', 'wrong-end-cone', 'schedule-suspect', 'zones-apart'],
  });

/** Is the heat-work short of the cone that was meant? `act` only where the range leaves no doubt. */
export const underfired = defineDetector({
  id: 'underfired',
  needs: ['heatWork', 'trace'],
  detect: ({ heatWork, trace }) => {
    const { target, cone } = heatWork;
    if (target === null) return notApplicable('no-target-cone');
    const shortDelta: Figures = target.marginC === null ? {} : { shortDeltaC: -target.marginC };
    const evidence = heatWorkEvidence(heatWork, trace.peakAtSeconds);
    const off = offTarget(heatWork);
    if (off === null) {
      if (cone.bound === 'at-least') return notApplicable('record-ends-hot');
      const severity = nothingReached(target) ? 'act' : 'watch';
      return verdict(severity, evidence, { peakC: trace.peakC, ...shortDelta });
    }
    const severity = severityOf(off);
    if (severity === null) return clear();
    // A lower bound cannot show that anything is missing: the firing may have gone on.
    if (cone.bound === 'at-least') return notApplicable('record-ends-hot');
    return verdict(severity, evidence, { shortCones: -off.offCones, ...shortDelta });
  },
});
