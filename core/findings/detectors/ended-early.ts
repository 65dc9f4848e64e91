import type { HeatWork } from '../../model/document.ts';
import type { Severity } from '../../model/finding.ts';
import { celsius } from '../../units.ts';
import { clear, found, notApplicable } from '../detector.ts';
import { coolsByItself, unfinished } from '../legs.ts';
import { offTarget } from '../off-target.ts';
import { defineScheduleDetector } from '../schedule-detector.ts';

/** Chosen: half as long again as nearly every boundary between legs is known to (6 min). */
const LEFT_MINUTES = 10;
/** `act` where the ware is certainly short of its cone; a note where the cone was reached anyway. */
const severityOf = (heatWork: HeatWork | null, onlyCoolingLeft: boolean): Severity => {
  if (onlyCoolingLeft) return 'watch';
  const off = heatWork === null ? null : offTarget(heatWork);
  if (off?.certain && off.offCones < 0) return 'act';
  const verdict = heatWork?.target?.verdict;
  return verdict === 'within' || verdict === 'over' ? 'note' : 'watch';
};

/** Did the firing stop, and the kiln begin to cool by itself, before the schedule was through? */
export const endedEarly = defineScheduleDetector({
  id: 'ended-early',
  needs: ['trace'],
  wants: ['heatWork'],
  detect: ({ alignment, trace, heatWork }) => {
    const { offSeconds } = trace;
    if (offSeconds === null || !coolsByItself(alignment)) return notApplicable('no-cooling-logged');
    const left = unfinished(alignment);
    if (left.minutes < LEFT_MINUTES) return clear();
    // A line through noise may end a little above anything that was read.
    const endedC = celsius(Math.min(left.endedC ?? trace.peakC, trace.peakC));
    const endedSeconds = left.endedSeconds ?? offSeconds;
    const onlyCoolingLeft = left.legs.every(({ planned }) => planned.endC < planned.startC);
    return found({
      severity: severityOf(heatWork, onlyCoolingLeft),
      evidence: [{ fromSeconds: endedSeconds, toSeconds: endedSeconds, celsius: endedC }],
      figures: { leftMinutes: left.minutes, endedC },
      thresholds: { leftMinutes: LEFT_MINUTES },
      instead: ['power-interrupted', 'element-lost', 'ceiling-near', 'sensor-open'],
    });
  },
});
