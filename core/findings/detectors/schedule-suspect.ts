import { positionOfCone, type Cone, type ConeType } from '../../model/cone.ts';
import type { Severity } from '../../model/finding.ts';
import type { Schedule } from '../../model/schedule.ts';
import { reachOf, type Reach } from '../../schedule/reach.ts';
import { slipsOf, type Slip } from '../../schedule/slips.ts';
import { seconds } from '../../units.ts';
import { clear, defineDetector, found, type Figures } from '../detector.ts';
import { namesakeOf } from '../namesake.ts';
import { hasValley, oddEntry, putsInOrder } from '../odd-entries.ts';

/**
 * Chosen: schedules are tuned to their kiln, whose couple and unevenness are worth a cone, and what a
 * hold is worth is doubted by half a cone; beyond both, a schedule is not for its cone.
 */
const OFF_CONES = 1.5;
/** A schedule this near to a cone is made for it (chosen: the usual half cone and a hold's doubt). */
const MADE_FOR_CONES = 1;
/** A mended schedule that is to explain a miss comes this near to the cone that was meant (chosen). */
const MENDED_CONES = 0.75;
/** So far off, a schedule is wrong whatever explains it (chosen). */
const ACT_CONES = 3;

/** What is wrong with a schedule, and what explains it. */
interface Suspicion {
  readonly slip: Slip | null;
  readonly segment: number | null;
  readonly offCones: number | null;
  /** How far it comes from the cone of the same number with the zero lost or added. */
  readonly fromNamesakeCones: number | null;
}

/** How far from a cone a schedule comes; a schedule that bends no cone is below all of them. */
const offOf = ({ position }: Reach, cone: Cone): number =>
  (position ?? positionOfCone('022') - 1) - positionOfCone(cone);

/** Where the cone is the entry that is wrong. */
const byNamesake = (reach: Reach, cone: Cone): number | null => {
  const namesake = namesakeOf(cone);
  if (namesake === null) return null;
  const off = offOf(reach, namesake);
  return Math.abs(off) <= MADE_FOR_CONES ? off : null;
};

/** The slip whose mended schedule comes nearest to the cone, if it comes near enough. */
const bestSlip = (schedule: Schedule, cone: Cone, coneType: ConeType): Slip | null => {
  const near = slipsOf(schedule)
    .filter((slip) => slip.kind !== 'target' || putsInOrder(schedule, slip))
    .filter(({ mended }) => !hasValley(mended))
    .map((slip) => ({ slip, off: Math.abs(offOf(reachOf(slip.mended, coneType), cone)) }))
    .filter(({ off }) => off <= MENDED_CONES)
    .sort((a, b) => a.off - b.off);
  return near[0]?.slip ?? null;
};

const suspicionOf = (
  schedule: Schedule,
  reach: Reach,
  cone: Cone | null,
  coneType: ConeType,
): Suspicion | null => {
  const offCones = cone === null ? null : offOf(reach, cone);
  const odd = oddEntry(schedule);
  const isOff = offCones !== null && Math.abs(offCones) > OFF_CONES;
  if (cone === null || !isOff) {
    // A long soak that does bring down the cone that was meant was meant as well.
    const isMeant = odd?.slip?.kind === 'hold' && offCones !== null;
    if (odd === null || isMeant) return null;
    return { slip: odd.slip, segment: odd.segment, offCones, fromNamesakeCones: null };
  }
  const slip = bestSlip(schedule, cone, coneType);
  const fromNamesakeCones = slip === null ? byNamesake(reach, cone) : null;
  const entry = slip ?? (fromNamesakeCones === null ? (odd?.slip ?? null) : null);
  return { slip: entry, segment: entry?.segment ?? null, offCones, fromNamesakeCones };
};

/** `act` where the schedule certainly misses its cone, unless the ware got what was meant all the same. */
const severityOf = ({ offCones, slip, fromNamesakeCones }: Suspicion, gotIt: boolean): Severity => {
  const off = Math.abs(offCones ?? 0);
  const isExplained = slip !== null || fromNamesakeCones !== null;
  return !gotIt && off > OFF_CONES && (isExplained || off > ACT_CONES) ? 'act' : 'watch';
};

const ENTRY_UNIT = { target: 'C', unit: 'PeakC', rate: 'CPerHour', hold: 'Minutes' } as const;

const slipFigures = (slip: Slip | null, entered: Reach, coneType: ConeType): Figures => {
  if (slip === null) return {};
  const unit = ENTRY_UNIT[slip.kind];
  const mended = reachOf(slip.mended, coneType);
  const isPlaced = mended.position !== null && entered.position !== null;
  return {
    ...(isPlaced ? { slippedCones: entered.position - mended.position } : {}),
    [`entered${unit}`]: slip.entered,
    [`meant${unit}`]: slip.meant,
    mendedMinutes: mended.minutes,
  };
};

/**
 * Would the schedule itself miss what it is for, even followed to the letter; or does an entry look
 * slipped: a digit lost, hours for minutes, °C for °F, a cone without its zero?
 */
export const scheduleSuspect = defineDetector({
  id: 'schedule-suspect',
  needs: ['schedule', 'options', 'trace'],
  wants: ['heatWork'],
  detect: ({ schedule, options, trace, heatWork }) => {
    const coneType = options.coneType ?? 'self-supporting';
    const reach = reachOf(schedule, coneType);
    const suspicion = suspicionOf(schedule, reach, options.cone ?? schedule.cone, coneType);
    if (suspicion === null) return clear();
    const { slip, segment, offCones, fromNamesakeCones } = suspicion;
    return found({
      severity: severityOf(suspicion, heatWork?.target?.verdict === 'within'),
      evidence: [
        {
          fromSeconds: trace.startSeconds ?? seconds(0),
          toSeconds: trace.offSeconds ?? trace.durationSeconds,
        },
      ],
      figures: {
        ...(segment === null ? {} : { segment }),
        ...slipFigures(slip, reach, coneType),
        ...(offCones === null ? {} : { offCones }),
        ...(fromNamesakeCones === null ? {} : { fromNamesakeCones }),
        scheduledPeakC: reach.peakC,
        scheduledMinutes: reach.minutes,
      },
      thresholds: offCones === null ? {} : { offCones: OFF_CONES },
      instead: fromNamesakeCones === null ? [] : ['wrong-end-cone'],
    });
  },
});
