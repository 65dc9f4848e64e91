import { positionOfCone } from '../../model/cone.ts';
import type { HeatWork } from '../../model/document.ts';
import type { Evidence, FindingId, Severity } from '../../model/finding.ts';
import {
  clear,
  defineDetector,
  found,
  notApplicable,
  type Figures,
  type Verdict,
} from '../detector.ts';
import { asPlanned } from '../as-planned.ts';
import {
  HALF_CONE,
  heatWorkEvidence,
  isNearNamesake,
  offTarget,
  type OffTarget,
} from '../off-target.ts';

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

const INSTEAD = [
  'sensor-drift',
  'wrong-end-cone',
  'schedule-suspect',
  'zones-apart',
] as const satisfies readonly FindingId[];

const verdict = (
  severity: Severity,
  evidence: Evidence[],
  figures: Figures,
  off: OffTarget | null,
): Verdict =>
  found({
    severity,
    evidence,
    figures,
    thresholds: { shortCones: severity === 'note' ? NOTE_CONES : HALF_CONE },
    instead: INSTEAD.filter((id) => id !== 'wrong-end-cone' || (off && isNearNamesake(off))),
  });

/** Is the heat-work short of the cone that was meant? `act` only where the range leaves no doubt. */
export const underfired = defineDetector({
  id: 'underfired',
  needs: ['heatWork', 'trace'],
  wants: ['schedule', 'options'],
  detect: ({ heatWork, trace, schedule, options }) => {
    const { target, cone } = heatWork;
    if (target === null) return notApplicable('no-target-cone');
    const shortMargin: Figures = target.marginC === null ? {} : { shortMarginC: -target.marginC };
    const evidence = heatWorkEvidence(heatWork, trace.peakAtSeconds);
    const off = offTarget(heatWork);
    if (off === null) {
      if (cone.bound === 'at-least') return notApplicable('record-ends-hot');
      const severity = nothingReached(target) ? 'act' : 'watch';
      return verdict(severity, evidence, { peakC: trace.peakC, ...shortMargin }, null);
    }
    const severity = severityOf(off);
    if (severity === null) return clear();
    // A lower bound cannot show that anything is missing: the firing may have gone on.
    if (cone.bound === 'at-least') return notApplicable('record-ends-hot');
    const figures = {
      shortCones: -off.offCones,
      ...shortMargin,
      ...asPlanned(schedule, options.coneType, off),
    };
    return verdict(severity, evidence, figures, off);
  },
});
