import type { AlignedLeg, Alignment } from '../../model/document.ts';
import type { Trace } from '../../model/trace.ts';
import { seconds, SECONDS_PER_MINUTE } from '../../units.ts';
import { defineDetector, foundAny, notApplicable, type Draft } from '../detector.ts';
import { borne, USABLE_CONFIDENCE_PERCENT } from '../schedule-detector.ts';

/**
 * Chosen: a tuned kiln climbs past a target for some minutes, three quarters of the floor of 15 min
 * is beyond that, and what sticks for so long will stick for good one day.
 */
const STUCK_MINUTES = 12;
/** Chosen: a climb past the target, not the drift of a hold. */
const LEAST_OVER_DELTA_C = 10;
/** Chosen: the record is only ripple below this. */
const CLIMBING_C_PER_HOUR = 20;
/**
 * Relays that stick bring full power, more than the ramp before them took. A climb no faster than
 * that ramp may as well be another programme, and asks for no action (chosen: a fifth faster).
 */
const FASTER_SHARE = 1.2;
/** An output so low asks for nothing (chosen). */
const NO_OUTPUT_PERCENT = 5;

interface Climb {
  readonly from: number;
  readonly to: number;
}

/** The ramp that was last begun, to whose target the kiln climbs or has climbed; null before any. */
const rampAt = (alignment: Alignment, atSeconds: number): AlignedLeg | null =>
  alignment.legs.findLast(
    ({ kind, actual }) => kind === 'ramp' && actual !== null && actual.startSeconds <= atSeconds,
  ) ?? null;

/** Whether the kiln climbed faster than the ramp before had done, or that ramp is not known. */
const isFullPower = (alignment: Alignment | null, climb: Draft['figures'], at: number): boolean => {
  const before = alignment && rampAt(alignment, at)?.actual?.rateCPerHour;
  const rateCPerHour = (climb.overDeltaC! / climb.stuckMinutes!) * 60;
  return !before || rateCPerHour > FASTER_SHARE * before;
};

const isAsked = (trace: Trace, alignment: Alignment | null, i: number): boolean => {
  const output = trace.outputPercent?.[i];
  if (output !== undefined && Number.isFinite(output)) return output > NO_OUTPUT_PERCENT;
  const level = alignment && rampAt(alignment, trace.atSeconds[i]!)?.planned.endC;
  return level == null || trace.smoothC[i]! <= level + 1;
};

/** Runs of samples in which the kiln climbed though no heat was asked for. */
const unaskedClimbs = (trace: Trace, alignment: Alignment | null): Climb[] => {
  const climbs: Climb[] = [];
  let from = -1;
  for (let i = 0; i <= trace.atSeconds.length; i++) {
    const isUnasked =
      i < trace.atSeconds.length &&
      trace.slopeCPerHour[i]! - trace.slopeErrorCPerHour[i]! > CLIMBING_C_PER_HOUR &&
      !isAsked(trace, alignment, i);
    if (isUnasked && from < 0) from = i;
    if (isUnasked || from < 0) continue;
    climbs.push({ from, to: i - 1 });
    from = -1;
  }
  return climbs;
};

/** Did the kiln go on heating where no heat was asked of it? */
export const powerStuckOn = defineDetector({
  id: 'power-stuck-on',
  needs: ['options', 'samples'],
  wants: ['alignment'],
  detect: ({ options, samples, alignment }) => {
    if (options.kiln?.heat === 'fuel') return notApplicable('fuel-fired');
    const hasOutput = samples.outputPercent !== null;
    if (alignment === null && !hasOutput) return notApplicable('no-schedule');
    const confidencePercent = hasOutput ? 100 : 100 * (alignment?.confidence ?? 0);
    if (confidencePercent < USABLE_CONFIDENCE_PERCENT) return notApplicable('alignment-uncertain');
    const drafts = unaskedClimbs(samples, alignment).flatMap(({ from, to }): Draft[] => {
      const fromSeconds = samples.atSeconds[from]!;
      const toSeconds = samples.atSeconds[to]!;
      const stuckMinutes = (toSeconds - fromSeconds) / SECONDS_PER_MINUTE;
      const overDeltaC = samples.smoothC[to]! - samples.smoothC[from]!;
      if (stuckMinutes < STUCK_MINUTES || overDeltaC < LEAST_OVER_DELTA_C) return [];
      const figures = { stuckMinutes, overDeltaC };
      return [
        borne(
          {
            severity: hasOutput || isFullPower(alignment, figures, fromSeconds) ? 'act' : 'watch',
            evidence: [{ fromSeconds: seconds(fromSeconds), toSeconds: seconds(toSeconds) }],
            figures,
            thresholds: { stuckMinutes: STUCK_MINUTES, overDeltaC: LEAST_OVER_DELTA_C },
            instead: ['overshoot', 'schedule-suspect', 'segment-missing'],
          },
          confidencePercent,
        ),
      ];
    });
    return foundAny(drafts);
  },
});
