import type { HeatWork } from '../../model/document.ts';
import type { Severity } from '../../model/finding.ts';
import type { Schedule } from '../../model/schedule.ts';
import type { TraceSummary } from '../../model/trace.ts';
import { celsius } from '../../units.ts';
import { clear, found, notApplicable } from '../detector.ts';
import { LEFT_MINUTES, endsEarly, wasGivingOut } from '../early-end.ts';
import { coolsByItself, isAfterPeak, remainderMinutes, type Unfinished } from '../legs.ts';
import { offTarget } from '../off-target.ts';
import { isPeakShort } from '../short-peak.ts';
import { defineScheduleDetector } from '../schedule-detector.ts';

/** `act` where the ware is certainly short of its cone; a note where the cone was reached anyway. */
const severityOf = (heatWork: HeatWork | null, onlyCoolingLeft: boolean): Severity => {
  if (onlyCoolingLeft) return 'watch';
  const off = heatWork === null ? null : offTarget(heatWork);
  if (off?.certain && off.offCones < 0) return 'act';
  const verdict = heatWork?.target?.verdict;
  return verdict === 'within' || verdict === 'over' ? 'note' : 'watch';
};

/**
 * Whether it is the controlled cooling that was left out. A few minutes that the top's hold lacks
 * besides, as noise has it, change nothing of that.
 */
const isOnlyCooling = (schedule: Schedule, { legs, minutes }: Unfinished): boolean => {
  const cooling = legs.filter(({ segment }) => segment !== null && isAfterPeak(schedule, segment));
  const coolingMinutes = cooling.reduce((sum, leg) => sum + remainderMinutes(leg), 0);
  return coolingMinutes > 0 && minutes - coolingMinutes < Math.min(LEFT_MINUTES, coolingMinutes);
};

/** Whether it was a climb that was cut, and the record's peak lies in its leg: that is its end. */
const isCutClimb = ({ legs }: Unfinished, { peakAtSeconds }: TraceSummary): boolean =>
  legs[0]?.kind === 'ramp' &&
  legs[0].actual !== null &&
  peakAtSeconds >= legs[0].actual.startSeconds;

/** Did the firing stop, and the kiln begin to cool by itself, before the schedule was through? */
export const endedEarly = defineScheduleDetector({
  id: 'ended-early',
  needs: ['trace', 'samples'],
  wants: ['heatWork'],
  detect: ({ schedule, alignment, trace, samples, heatWork }) => {
    if (trace.offSeconds === null || !coolsByItself(alignment)) {
      return notApplicable('no-cooling-logged');
    }
    const left = endsEarly(alignment, trace);
    if (left === null) return clear();
    // A kiln that could not get there was switched off for it: peak-not-reached tells of both.
    if (isPeakShort(schedule, trace) && wasGivingOut(alignment, samples)) {
      return clear('told-by-another');
    }
    // A line through noise may end a little above anything that was read.
    const isAfterTop = (left.endedSeconds ?? 0) > trace.peakAtSeconds && isCutClimb(left, trace);
    const endedC = isAfterTop
      ? trace.peakC
      : celsius(Math.min(left.endedC ?? trace.peakC, trace.peakC));
    const endedSeconds = isAfterTop
      ? trace.peakAtSeconds
      : (left.endedSeconds ?? trace.peakAtSeconds);
    return found({
      severity: severityOf(heatWork, isOnlyCooling(schedule, left)),
      evidence: [{ fromSeconds: endedSeconds, toSeconds: endedSeconds, celsius: endedC }],
      figures: { leftMinutes: left.minutes, endedC },
      thresholds: { leftMinutes: LEFT_MINUTES },
      instead: ['power-interrupted', 'element-lost', 'ceiling-near', 'sensor-open'],
    });
  },
});
