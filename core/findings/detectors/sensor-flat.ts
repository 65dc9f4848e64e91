import type { Severity } from '../../model/finding.ts';
import type { Span } from '../../model/scalars.ts';
import type { Trace } from '../../model/trace.ts';
import { celsius, seconds, SECONDS_PER_MINUTE } from '../../units.ts';
import { clear, defineDetector, found, notApplicable } from '../detector.ts';
import { MOST_MARKS } from '../marks.ts';
import { isNearPeak, longestMinutes, minutesOf } from '../spans.ts';
import { isLifeless, leftBehind, repeatingBut, stillRuns, type StillRun } from '../still-runs.ts';

/** Chosen: a lost row or two is over sooner; the kiln has run blind for this long. */
const FLAT_MINUTES = 3;
/** Chosen: a controller whose couple stood still for as long cannot have kept its programme. */
const ACT_MINUTES = 10;
/** Two like readings are chance; a value that came three times may have been stuck (chosen). */
const FEWEST_READINGS = 3;
/** Readings further apart than this show a kiln only now and then: three of them are a quarter hour. */
const COARSEST_SECONDS = 300;

/** From its first reading to its last: what came before and after was measured. */
const spanOf = ({ atSeconds }: Trace, { first, last }: StillRun): Span => ({
  fromSeconds: seconds(atSeconds[first]!),
  toSeconds: seconds(atSeconds[last]!),
});

/** Runs long enough to be judged, while the kiln was heated or cooled: at rest it may stand still. */
const longRuns = (trace: Trace): StillRun[] => {
  const { startSeconds, medianIntervalSeconds } = trace.summary;
  // The reading stopped at some moment within the interval before its first repeat.
  const leastSeconds = FLAT_MINUTES * SECONDS_PER_MINUTE - medianIntervalSeconds / 2;
  return stillRuns(trace.celsius, FEWEST_READINGS).filter((run) => {
    const { fromSeconds, toSeconds } = spanOf(trace, run);
    return toSeconds - fromSeconds >= leastSeconds && fromSeconds >= (startSeconds ?? 0);
  });
};

const severityOf = (spans: readonly Span[], trace: Trace): Severity => {
  const { offSeconds, durationSeconds } = trace.summary;
  const firing = spans.filter(({ fromSeconds }) => fromSeconds < (offSeconds ?? durationSeconds));
  if (firing.length === 0) return 'note';
  const nearPeakMinutes = minutesOf(firing.filter(isNearPeak(trace)));
  return Math.max(longestMinutes(firing), nearPeakMinutes) >= ACT_MINUTES ? 'act' : 'watch';
};

/** Did the reading stand still while the kiln cannot have? */
export const sensorFlat = defineDetector({
  id: 'sensor-flat',
  needs: ['samples'],
  detect: ({ samples }) => {
    if (samples.summary.medianIntervalSeconds > COARSEST_SECONDS) {
      return notApplicable('readings-too-coarse');
    }
    const stuck = longRuns(samples).filter(
      (run) =>
        leftBehind(samples, run) ||
        isLifeless(run, repeatingBut(samples, run), samples.celsius.length),
    );
    const longest = [...stuck].sort((a, b) => b.last - b.first - (a.last - a.first));
    const [worst] = longest;
    if (worst === undefined) return clear();
    const spans = stuck.map((run) => spanOf(samples, run));
    const severity = severityOf(spans, samples);
    return found({
      severity,
      evidence: longest
        .slice(0, MOST_MARKS)
        .map((run) => ({ ...spanOf(samples, run), celsius: celsius(run.celsius) }))
        .sort((a, b) => a.fromSeconds - b.fromSeconds),
      figures: {
        flatC: worst.celsius,
        flatMinutes: longestMinutes(spans),
        times: stuck.length,
      },
      thresholds: { flatMinutes: severity === 'act' ? ACT_MINUTES : FLAT_MINUTES },
      instead: ['sensor-open', 'log-gap'],
    });
  },
});
