import type { Cone, ConeType } from '../../core/model/cone.ts';
import type { Schedule } from '../../core/model/schedule.ts';
import { scheduleFromCone } from '../../core/schedule/from-cone.ts';
import { exactEntry, typedEntry, type Entry } from './entry.ts';
import { blankLeg, segmentOfLeg, type LegFaults } from './leg-draft.ts';

/** A cone to be reached, as it is typed. */
export interface AimDraft {
  readonly cone: Cone;
  readonly rate: Entry;
  readonly hold: string;
}

/** The chart's middle rate, which most published end points are given for. */
export const COMMON_RATE = exactEntry(60);

export const newAim = (cone: Cone | null): AimDraft => ({
  cone: cone ?? '6',
  rate: COMMON_RATE,
  hold: '',
});

/** Any target will do: only the rate and the hold are judged. */
const SOME_TARGET = typedEntry('1000', 'C');

/** The schedule that brings the cone down, or what is amiss with the rate or the hold. */
export const scheduleOfAim = (
  { cone, rate, hold }: AimDraft,
  coneType: ConeType | undefined,
): { schedule: Schedule } | { faults: LegFaults } => {
  const read = segmentOfLeg({ ...blankLeg(0, 'C'), rate, hold, target: SOME_TARGET });
  if ('faults' in read) return read;
  const { rateCPerHour, holdMinutes } = read.segment;
  if (typeof rateCPerHour !== 'number') return { faults: { wrong: {}, missing: ['rate'] } };
  return {
    schedule: scheduleFromCone({
      cone,
      lastRampCPerHour: rateCPerHour,
      holdMinutes,
      ...(coneType === undefined ? {} : { coneType }),
    }),
  };
};
