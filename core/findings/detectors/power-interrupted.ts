import type { Alignment } from '../../model/document.ts';
import type { Trace } from '../../model/trace.ts';
import { seconds, SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../../units.ts';
import { lowerBound } from '../../numeric/search.ts';
import { defineDetector, foundAny, notApplicable, type Draft } from '../detector.ts';

/** Issue's floor: five minutes; chosen a minute less, since couple and wire make the ends late. */
const LEAST_MINUTES = 4;
/** Chosen: beyond this the load got another firing than was meant. */
const ACT_MINUTES = 60;
/** Chosen: no ripple of a controller falls so far, or so fast for so long. */
const LEAST_FALL_C = 6;
const LEAST_FALL_C_PER_HOUR = 50;
/** Three noises and a step of the logger are no fall either. */
const NOISES = 4;

interface Fall {
  readonly fromSeconds: number;
  readonly toSeconds: number;
  readonly fromC: number;
  readonly toC: number;
}

/** Each fall from a height to the lowest point before that height is regained, up to a moment. */
const fallsWithin = ({ atSeconds, smoothC }: Trace, from: number, to: number): Fall[] => {
  const falls: Fall[] = [];
  let top = from;
  let bottom = from;
  for (let i = from; i < to; i++) {
    if (smoothC[i]! < smoothC[bottom]!) bottom = i;
    if (smoothC[i]! < smoothC[top]!) continue;
    if (bottom > top) {
      falls.push({
        fromSeconds: atSeconds[top]!,
        toSeconds: atSeconds[bottom]!,
        fromC: smoothC[top]!,
        toC: smoothC[bottom]!,
      });
    }
    top = i;
    bottom = i;
  }
  return falls;
};

/** The target that the kiln stood at or was on its way to; a fall back to it is no loss of power. */
const levelAt = (alignment: Alignment | null, atSeconds: number): number => {
  const leg = alignment?.legs.findLast(
    ({ segment, actual }) =>
      segment !== null && actual !== null && actual.startSeconds <= atSeconds,
  );
  return leg?.planned.endC ?? Infinity;
};

/** Whether heating was still meant to go on: a controlled fall, and what comes after it, is not. */
const heatingEnds = (alignment: Alignment | null, trace: Trace): number => {
  const { offSeconds, durationSeconds, peakAtSeconds } = trace.summary;
  const falls = alignment?.legs.find(
    ({ kind, planned }) => kind === 'cooling' || planned.endC < planned.startC - 1,
  );
  const ends = falls?.actual?.startSeconds ?? (alignment === null ? peakAtSeconds : Infinity);
  return Math.min(ends, offSeconds ?? durationSeconds);
};

/** Was the power gone for a while during the climb, and then back? */
export const powerInterrupted = defineDetector({
  id: 'power-interrupted',
  needs: ['options', 'trace', 'samples'],
  wants: ['alignment'],
  detect: ({ options, trace, samples, alignment }) => {
    if (options.kiln?.heat === 'fuel') return notApplicable('fuel-fired');
    const from = lowerBound(samples.atSeconds, trace.startSeconds ?? 0);
    const to = lowerBound(samples.atSeconds, heatingEnds(alignment, samples));
    const leastC = Math.max(LEAST_FALL_C, NOISES * trace.noiseC, 2 * trace.resolutionC);
    const drafts = fallsWithin(samples, from, to).flatMap((fall): Draft[] => {
      const { fromSeconds, toSeconds } = fall;
      const fallenDeltaC = Math.min(fall.fromC, levelAt(alignment, fromSeconds)) - fall.toC;
      const interruptedMinutes = (toSeconds - fromSeconds) / SECONDS_PER_MINUTE;
      const fellCPerHour = (fallenDeltaC * SECONDS_PER_HOUR) / (toSeconds - fromSeconds);
      if (fallenDeltaC < leastC || interruptedMinutes < LEAST_MINUTES) return [];
      if (fellCPerHour < LEAST_FALL_C_PER_HOUR) return [];
      return [
        {
          severity: interruptedMinutes >= ACT_MINUTES ? 'act' : 'watch',
          evidence: [{ fromSeconds: seconds(fromSeconds), toSeconds: seconds(toSeconds) }],
          figures: { interruptedMinutes, fallenDeltaC, fellCPerHour },
          thresholds: { interruptedMinutes: LEAST_MINUTES, fallenDeltaC: leastC },
          instead: ['sensor-open', 'sensor-spikes', 'opened-hot'],
        },
      ];
    });
    return foundAny(drafts);
  },
});
