import type { Severity } from '../../model/finding.ts';
import type { Span } from '../../model/scalars.ts';
import type { TraceSummary } from '../../model/trace.ts';
import { SECONDS_PER_MINUTE } from '../../units.ts';
import { clear, defineDetector, found } from '../detector.ts';
import { longest } from '../marks.ts';

/** Chosen: a lost row or a connector touched is over sooner; the kiln has run blind for this long. */
const OPEN_MINUTES = 3;
/** Chosen: a controller without its couple for as long as this cannot have kept its programme. */
const ACT_MINUTES = 10;

const minutesOf = (spans: readonly Span[]): number =>
  spans.reduce((sum, span) => sum + span.toSeconds - span.fromSeconds, 0) / SECONDS_PER_MINUTE;

/** The part of a stretch that lies before the heat went off. */
const whileFiring = (spans: readonly Span[], trace: TraceSummary): Span[] => {
  const from = trace.startSeconds ?? 0;
  const to = trace.offSeconds ?? trace.durationSeconds;
  return spans.filter(({ fromSeconds, toSeconds }) => toSeconds > from && fromSeconds < to);
};

/**
 * `act` where the kiln was driven blind for long, not where single rows are blank all over the log;
 * after shut-off an open couple harms nothing.
 */
const severityOf = (firingMinutes: number, longestMinutes: number): Severity => {
  if (firingMinutes < OPEN_MINUTES) return 'note';
  return firingMinutes >= ACT_MINUTES && longestMinutes >= OPEN_MINUTES ? 'act' : 'watch';
};

/** Did the thermocouple give no reading while rows were being written? */
export const sensorOpen = defineDetector({
  id: 'sensor-open',
  needs: ['trace'],
  detect: ({ trace }) => {
    const openMinutes = minutesOf(trace.noReadings);
    if (openMinutes < OPEN_MINUTES) return clear();
    const firing = whileFiring(trace.noReadings, trace);
    const firingMinutes = minutesOf(firing);
    const severity = severityOf(
      firingMinutes,
      Math.max(0, ...firing.map((span) => minutesOf([span]))),
    );
    return found({
      severity,
      evidence: longest(trace.noReadings),
      figures: {
        openMinutes,
        firingMinutes,
        longestMinutes: Math.max(...trace.noReadings.map((span) => minutesOf([span]))),
        times: trace.noReadings.length,
      },
      thresholds: {
        openMinutes: OPEN_MINUTES,
        firingMinutes: severity === 'act' ? ACT_MINUTES : OPEN_MINUTES,
      },
      instead: ['log-gap', 'sensor-spikes', 'power-interrupted'],
    });
  },
});
