import type { AlignedLeg } from '../model/document.ts';
import type { IntendedLeg } from '../schedule/intended-curve.ts';
import type { Course } from '../trace/course.ts';

/** A target counts as reached within this, or within the noise (chosen: a controller's own slack). */
const REACHED_C = 5;
const REACHED_SIGMAS = 3;
/** A hold this far off its level was not kept (chosen: as much as is watched as a drift). */
const OFF_LEVEL_C = 8;
/** A leg is as planned within this share of its planned time … (chosen: well inside the detectors') */
const SAME_SHARE = 0.07;
/** … or within this many seconds, below which no leg's end is certain. */
const SAME_SECONDS = 180;

/** What is known of a leg besides its ends. */
export interface LegContext {
  /** From which side a hold's level is come to. */
  readonly comesFrom: 'below' | 'above';
  /** How far the middle of a hold stood off its level; 0 for a leg that moves. */
  readonly offLevelC: number;
  /** The share of the planned leg that lies within the record: less than 1 where it begins hot. */
  readonly seenShare: number;
}

/** Whether a hold stood short of its level from beginning to end. */
const isShortOf = (
  planned: IntendedLeg,
  actual: Course,
  { comesFrom }: LegContext,
  reachC: number,
): boolean => {
  const side = comesFrom === 'below' ? 1 : -1;
  const lackAt = (atC: number) => side * (planned.endC - atC);
  return Math.min(lackAt(actual.startC), lackAt(actual.endC)) > reachC;
};

/**
 * What a leg came to beside what was planned. A moving leg is judged by its time from start to
 * arrival, a hold by how long the temperature stayed and whether it kept its level; at full power
 * any time is as planned.
 */
export const verdictOf = (
  planned: IntendedLeg,
  actual: Course | null,
  noiseC: number,
  context: LegContext,
): AlignedLeg['verdict'] => {
  if (actual === null) return 'missing';
  const reach = Math.max(REACHED_C, REACHED_SIGMAS * noiseC);
  const lack = planned.kind === 'cooling' ? actual.endC - planned.endC : planned.endC - actual.endC;
  if (planned.kind !== 'hold' && lack > reach) return 'not-reached';
  if (planned.kind === 'hold' && isShortOf(planned, actual, context, reach)) return 'not-reached';
  if (planned.rateCPerHour === null) return 'as-planned';
  const plannedSeconds = context.seenShare * (planned.endSeconds - planned.startSeconds);
  const excess = actual.endSeconds - actual.startSeconds - plannedSeconds;
  if (Math.abs(excess) <= Math.max(SAME_SECONDS, SAME_SHARE * plannedSeconds)) {
    const isOffLevel = Math.abs(context.offLevelC) > Math.max(OFF_LEVEL_C, REACHED_SIGMAS * noiseC);
    return planned.kind === 'hold' && isOffLevel ? 'off-level' : 'as-planned';
  }
  if (planned.kind === 'hold') return excess > 0 ? 'long' : 'short';
  return excess > 0 ? 'slow' : 'fast';
};
