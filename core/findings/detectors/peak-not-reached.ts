import type { HeatWork } from '../../model/document.ts';
import type { Severity } from '../../model/finding.ts';
import type { Span } from '../../model/scalars.ts';
import type { Trace } from '../../model/trace.ts';
import { clear, found, notApplicable, type NotApplicableReason } from '../detector.ts';
import { endsEarly, wasGivingOut } from '../early-end.ts';
import { topC } from '../legs.ts';
import { offTarget } from '../off-target.ts';
import { defineScheduleDetector } from '../schedule-detector.ts';
import { peakToleranceC, shortOfPeakC } from '../short-peak.ts';

/** Chosen: at cone 6 a quarter to half a cone (the cones stand 17 and 36 °C apart there). */
const WATCH_DELTA_C = 8;

/** A record that ends this near its hottest reading may have stopped on the climb (chosen). */
const AT_PEAK_DELTA_C = 10;

/** Why the hottest moment of the record may not be the kiln's. */
const unknownPeak = ({ summary, smoothC }: Trace): NotApplicableReason | null => {
  const { gaps, noReadings, offSeconds, peakC, peakAtSeconds, medianIntervalSeconds } = summary;
  const isBeside = ({ fromSeconds, toSeconds }: Span): boolean =>
    peakAtSeconds >= fromSeconds - medianIntervalSeconds &&
    peakAtSeconds <= toSeconds + medianIntervalSeconds;
  if ([...gaps, ...noReadings].some(isBeside)) return 'gap-at-peak';
  const endsAtPeak = (smoothC.at(-1) ?? -Infinity) >= peakC - AT_PEAK_DELTA_C;
  return offSeconds === null && endsAtPeak ? 'record-ends-hot' : null;
};

/** `act` where the ware is certainly short of its cone with it. */
const severityOf = (shortDeltaC: number, heatWork: HeatWork | null): Severity => {
  if (shortDeltaC < WATCH_DELTA_C) return 'note';
  const off = heatWork === null ? null : offTarget(heatWork);
  return off?.certain && off.offCones < 0 ? 'act' : 'watch';
};

/** Did the kiln get to the schedule's hottest target? */
export const peakNotReached = defineScheduleDetector({
  id: 'peak-not-reached',
  needs: ['trace', 'samples'],
  wants: ['heatWork'],
  detect: ({ schedule, alignment, trace, samples, heatWork }) => {
    const targetC = topC(schedule);
    const shortDeltaC = shortOfPeakC(schedule, trace);
    const limitDeltaC = peakToleranceC(trace);
    if (shortDeltaC <= limitDeltaC) return clear();
    const unknown = unknownPeak(samples);
    if (unknown !== null) return notApplicable(unknown);
    // A firing that was broken off while it climbed briskly is told by ended-early, with its cause.
    if (endsEarly(alignment, trace) !== null && !wasGivingOut(alignment, samples)) {
      return clear('told-by-another');
    }
    const at = trace.peakAtSeconds;
    return found({
      severity: severityOf(shortDeltaC, heatWork),
      evidence: [{ fromSeconds: at, toSeconds: at, celsius: trace.peakC }],
      figures: { targetC, peakC: trace.peakC, shortDeltaC },
      thresholds: { shortDeltaC: limitDeltaC },
      instead: [
        'ended-early',
        'elements-weak',
        'ceiling-near',
        'element-lost',
        'power-interrupted',
      ],
    });
  },
});
