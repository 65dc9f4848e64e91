import { CONES, positionOfCone, type Cone } from '../../model/cone.ts';
import type { HeatWork } from '../../model/document.ts';
import type { Severity } from '../../model/finding.ts';
import type { Schedule } from '../../model/schedule.ts';
import { SELF_SUPPORTING_END_POINTS } from '../../reference/end-points-self-supporting.ts';
import { clear, defineDetector, found, notApplicable } from '../detector.ts';
import { ranAway } from '../heated-on.ts';
import { topC } from '../legs.ts';
import { namesakeOf } from '../namesake.ts';
import { heatWorkEvidence } from '../off-target.ts';

/** Chosen: a firing that went to the wrong cone still comes out within a cone of it. */
const WITHIN_CONES = 1;
/** The column of the end-point chart that a schedule's top is read against. */
const CHART_C_PER_HOUR = 60;

/** The cone whose end point on the chart lies nearest to a temperature. */
const coneNearest = (temperatureC: number): Cone => {
  const column = SELF_SUPPORTING_END_POINTS.ratesCPerHour.indexOf(CHART_C_PER_HOUR);
  const distanceC = (cone: Cone): number => {
    const row = SELF_SUPPORTING_END_POINTS.rows.find(([name]) => name === cone);
    return Math.abs((row?.[1][column] ?? Infinity) - temperatureC);
  };
  return CONES.reduce((best, cone) => (distanceC(cone) < distanceC(best) ? cone : best));
};

const isNear = (position: number, cone: Cone): boolean =>
  Math.abs(position - positionOfCone(cone)) <= WITHIN_CONES;

const isMadeFor = (schedule: Schedule | null, cone: Cone): boolean =>
  schedule !== null && isNear(positionOfCone(coneNearest(topC(schedule))), cone);

/**
 * `act` wherever nothing else explains a firing so far off; only `watch` where the schedule does go
 * to the cone that was meant and the kiln stopped below it, since a firing may be broken off at the
 * namesake's temperature by chance.
 */
const severityOf = (
  { cone, target }: HeatWork,
  schedule: Schedule | null,
  namesake: Cone,
): Severity => {
  const meant = positionOfCone(target?.cone ?? namesake);
  const isBelow = (cone.position ?? -Infinity) < meant;
  return isBelow && schedule !== null && !isMadeFor(schedule, namesake) ? 'watch' : 'act';
};

/** Was a cone's leading zero lost or added: 06 fired for 6, or 6 for 06? */
export const wrongEndCone = defineDetector({
  id: 'wrong-end-cone',
  needs: ['heatWork', 'trace'],
  wants: ['schedule', 'alignment', 'overshoots'],
  detect: ({ heatWork, trace, schedule, alignment, overshoots }) => {
    const { target, cone } = heatWork;
    if (target === null) return notApplicable('no-target-cone');
    const namesake = namesakeOf(target.cone);
    if (namesake === null) return notApplicable('no-mirrored-cone');
    const { position } = cone;
    if (position !== null && isNear(position, target.cone)) return clear();
    const firedTo = position !== null && isNear(position, namesake);
    const madeFor = isMadeFor(schedule, namesake);
    if (position === null && !madeFor) return notApplicable('no-cone-reached');
    if (!firedTo && !madeFor) return clear();
    // A kiln that would not stop heating may come to the namesake by chance.
    if (!madeFor && ranAway(alignment, overshoots)) return clear('told-by-another');
    const isLowerBound =
      cone.bound === 'at-least' && positionOfCone(namesake) < positionOfCone(target.cone);
    if (isLowerBound && !madeFor) return notApplicable('record-ends-hot');
    return found({
      severity: severityOf(heatWork, schedule, namesake),
      evidence: heatWorkEvidence(heatWork, trace.peakAtSeconds),
      figures: {
        ...(position === null ? {} : { fromNamesakeCones: position - positionOfCone(namesake) }),
        ...(position === null ? {} : { fromTargetCones: position - positionOfCone(target.cone) }),
        ...(schedule === null ? {} : { scheduleTopC: topC(schedule) }),
      },
      thresholds: { fromNamesakeCones: WITHIN_CONES },
      instead: ['schedule-suspect', 'ended-early', 'sensor-wrong-type'],
    });
  },
});
