import { positionOfCone, type ConeType } from '../model/cone.ts';
import type { Schedule } from '../model/schedule.ts';
import { reachOf } from '../schedule/reach.ts';
import type { Figures } from './detector.ts';
import { HALF_CONE, type OffTarget } from './off-target.ts';

/**
 * Where a schedule, followed to the letter, comes to the cone that was meant and the firing did not:
 * how far from that cone it comes. The kiln is to be mended then, and the schedule to be left alone.
 * Nothing where the schedule misses its cone itself, or hardly differs from the firing.
 */
export const asPlanned = (
  schedule: Schedule | null,
  coneType: ConeType | undefined,
  { cone, offCones }: OffTarget,
): Figures => {
  const position = schedule && reachOf(schedule, coneType).position;
  if (position === null) return {};
  const asPlannedOffCones = position - positionOfCone(cone);
  const isForItsCone = Math.abs(asPlannedOffCones) <= HALF_CONE;
  const wasFollowed = Math.abs(offCones - asPlannedOffCones) < HALF_CONE;
  return isForItsCone && !wasFollowed ? { asPlannedOffCones } : {};
};
