import type { Severity } from '../../model/finding.ts';
import type { Span } from '../../model/scalars.ts';
import type { Trace, TraceSummary } from '../../model/trace.ts';
import { clear, defineDetector, found } from '../detector.ts';
import { isFalseReading } from '../false-readings.ts';
import { longest } from '../marks.ts';
import { isNearPeak, longestMinutes, minutesOf } from '../spans.ts';

/** Chosen: a lost row or a connector touched is over sooner; the kiln has run blind for this long. */
const OPEN_MINUTES = 3;
/** Chosen: a controller without its couple for as long as this cannot have kept its programme. */
const ACT_MINUTES = 10;

/**
 * Stretches without a usable reading: rows without any, and readings far off the course for as long,
 * which is what an open couple or a shorted lead shows where the logger writes a number all the same.
 */
const openSpans = ({ noReadings, repairs }: TraceSummary): Span[] => [
  ...noReadings,
  ...repairs.filter((repair) => isFalseReading(repair) && minutesOf([repair]) >= OPEN_MINUTES),
];

/** The part of a stretch that lies before the heat went off. */
const whileFiring = (spans: readonly Span[], trace: TraceSummary): Span[] => {
  const from = trace.startSeconds ?? 0;
  const to = trace.offSeconds ?? trace.durationSeconds;
  return spans.filter(({ fromSeconds, toSeconds }) => toSeconds > from && fromSeconds < to);
};

/**
 * `act` where the kiln was driven blind for long, or the heat-work done unseen; blank rows one by one
 * elsewhere add up to no such thing. After shut-off an open couple harms nothing.
 */
const severityOf = (firing: readonly Span[], samples: Trace): Severity => {
  const firingMinutes = minutesOf(firing);
  if (firingMinutes < OPEN_MINUTES) return 'note';
  const isBlind = longestMinutes(firing) >= OPEN_MINUTES && firingMinutes >= ACT_MINUTES;
  const nearPeakMinutes = minutesOf(firing.filter(isNearPeak(samples)));
  return isBlind || nearPeakMinutes >= ACT_MINUTES ? 'act' : 'watch';
};

/** Did the thermocouple give no reading while rows were being written? */
export const sensorOpen = defineDetector({
  id: 'sensor-open',
  needs: ['trace', 'samples'],
  detect: ({ trace, samples }) => {
    const open = openSpans(trace);
    const openMinutes = minutesOf(open);
    if (openMinutes < OPEN_MINUTES) return clear();
    const firing = whileFiring(open, trace);
    const severity = severityOf(firing, samples);
    return found({
      severity,
      evidence: longest(open),
      figures: {
        openMinutes,
        firingMinutes: minutesOf(firing),
        longestMinutes: longestMinutes(open),
        times: open.length,
      },
      thresholds: {
        openMinutes: OPEN_MINUTES,
        firingMinutes: severity === 'act' ? ACT_MINUTES : OPEN_MINUTES,
      },
      instead: ['log-gap', 'sensor-spikes', 'power-interrupted'],
    });
  },
});
