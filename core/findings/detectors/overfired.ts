import type { Alignment, Overshoot } from '../../model/document.ts';
import type { FindingId, Severity } from '../../model/finding.ts';
import type { Schedule } from '../../model/schedule.ts';
import { clear, defineDetector, found, notApplicable } from '../detector.ts';
import { asPlanned } from '../as-planned.ts';
import { ranAway } from '../heated-on.ts';
import { isTop, lengthMinutes } from '../legs.ts';
import {
  HALF_CONE,
  heatWorkEvidence,
  isNearNamesake,
  offTarget,
  type OffTarget,
} from '../off-target.ts';
import { USABLE_CONFIDENCE_PERCENT } from '../schedule-detector.ts';

/** Chosen: most of the way to the half cone from which a firing counts as beyond. */
const NOTE_CONES = 0.35;

const severityOf = ({ offCones, certain }: OffTarget): Severity | null => {
  if (offCones < NOTE_CONES) return null;
  if (offCones <= HALF_CONE) return 'note';
  return certain ? 'act' : 'watch';
};

/** Chosen: so much longer, in share and in time, a hold at the top is the likely reason. */
const LONG_SHARE = 1.2;
const LONG_MINUTES = 5;

interface LongHold {
  readonly segment: number;
  readonly plannedMinutes: number;
  readonly heldMinutes: number;
}

/** The hold at the schedule's hottest target, where it ran clearly longer than planned. */
const longTopHold = (
  schedule: Schedule | null,
  alignment: Alignment | null,
  overshoots: readonly Overshoot[],
): LongHold | null => {
  if (schedule === null || alignment === null) return null;
  if (100 * alignment.confidence < USABLE_CONFIDENCE_PERCENT) return null;
  const holds = alignment.legs.flatMap(({ segment, kind, planned, actual }) => {
    if (segment === null || kind !== 'hold' || actual === null) return [];
    const plannedMinutes = lengthMinutes(planned);
    const heldMinutes = lengthMinutes(actual);
    const leastMinutes = Math.max(LONG_SHARE * plannedMinutes, plannedMinutes + LONG_MINUTES);
    // A kiln that heated on through its hold did not hold: its overshoot is the reason.
    const isHeld = isTop(schedule, segment) && !ranAway(alignment, overshoots, segment);
    const isLong = isHeld && heldMinutes >= leastMinutes;
    return isLong ? { segment, plannedMinutes, heldMinutes } : [];
  });
  return holds[0] ?? null;
};

const INSTEAD = [
  'sensor-drift',
  'overshoot',
  'power-stuck-on',
  'schedule-suspect',
  'wrong-end-cone',
] as const satisfies readonly FindingId[];

/** A hold that ran long is an entry (hours for minutes), or heating that would not stop. */
const INSTEAD_OF_LONG_HOLD = [
  'schedule-suspect',
  'power-stuck-on',
  'sensor-drift',
] as const satisfies readonly FindingId[];

const insteadOf = (longHold: LongHold | null, off: OffTarget): readonly FindingId[] =>
  longHold === null
    ? INSTEAD.filter((id) => id !== 'wrong-end-cone' || isNearNamesake(off))
    : INSTEAD_OF_LONG_HOLD;

/** Is the heat-work beyond the cone that was meant? `act` only where the range leaves no doubt. */
export const overfired = defineDetector({
  id: 'overfired',
  needs: ['heatWork', 'trace'],
  wants: ['schedule', 'alignment', 'options', 'overshoots'],
  detect: ({ heatWork, trace, schedule, alignment, options, overshoots }) => {
    const { target } = heatWork;
    if (target === null) return notApplicable('no-target-cone');
    const off = offTarget(heatWork);
    const severity = off === null ? null : severityOf(off);
    if (off === null || severity === null) return clear();
    const longHold = longTopHold(schedule, alignment, overshoots);
    return found({
      severity,
      evidence: heatWorkEvidence(heatWork, trace.peakAtSeconds),
      figures: {
        overCones: off.offCones,
        ...(target.marginC === null ? {} : { pastMarginC: target.marginC }),
        ...asPlanned(schedule, options.coneType, off),
        ...longHold,
      },
      thresholds: { overCones: severity === 'note' ? NOTE_CONES : HALF_CONE },
      instead: insteadOf(longHold, off),
    });
  },
});
