import type { AlignedLeg, Alignment, Elements } from '../model/document.ts';
import type { Trace } from '../model/trace.ts';
import { courseBetween } from '../trace/course.ts';
import { lowerBound } from '../numeric/search.ts';
import type { CelsiusPerHour } from '../units.ts';

/** A kiln that climbs slower than this share of its plan is giving all it has (chosen). */
const BEHIND_SHARE = 0.9;
/** A kiln that hardly climbs, or falls, has lost its power or is at its ceiling's door (chosen). */
const CLIMBING_SHARE = 0.1;
/** The slope must lie below by this many of its standard errors. */
const BEHIND_ERRORS = 2;
/** A controller eases into and out of a ramp; slopes this near its ends say nothing (chosen). */
const EASING_SECONDS = 600;
/** Before a target that it nears at full power it eases off over its band and more (chosen). */
const EASING_DELTA_C = 60;
/** Shorter stretches are ripple (chosen). */
const SHORTEST_SECONDS = 1200;
/** With less certainty than this another programme may have run: a slow ramp may be meant (chosen). */
const TRUSTED_CONFIDENCE = 0.5;
/** Full power climbs ever slower as losses grow; a programme's ramp is level (chosen, by thirds). */
const BENDING_SHARE = 0.93;
/** A level climb this near to another leg's rate was programmed at that rate (chosen). */
const SAME_RATE_SHARE = 0.07;
/** An output this high is full power (chosen: time-proportioned outputs seldom log a round 100). */
const FULL_OUTPUT_PERCENT = 95;

type Limited = Elements['limited'][number];

const limitedBetween = (
  trace: Trace,
  fromSeconds: number,
  toSeconds: number,
  plannedCPerHour: CelsiusPerHour | null,
): Limited => {
  const course = courseBetween(trace, fromSeconds, toSeconds);
  return {
    fromSeconds: course.startSeconds,
    toSeconds: course.endSeconds,
    fromC: course.startC,
    toC: course.endC,
    plannedCPerHour,
    achievedCPerHour: course.rateCPerHour,
  };
};

/** Runs of samples that satisfy a condition, as spans of time long enough to mean something. */
const spansWhere = (
  trace: Trace,
  fromSeconds: number,
  toSeconds: number,
  holds: (sample: number) => boolean,
): [number, number][] => {
  const spans: [number, number][] = [];
  const end = Math.min(trace.atSeconds.length, lowerBound(trace.atSeconds, toSeconds));
  let began = -1;
  for (let i = lowerBound(trace.atSeconds, fromSeconds); i <= end; i++) {
    const isIn = i < end && holds(i);
    if (isIn && began < 0) began = i;
    if (isIn || began < 0) continue;
    const from = trace.atSeconds[began]!;
    const to = trace.atSeconds[i - 1]!;
    if (to - from >= SHORTEST_SECONDS) spans.push([from, to]);
    began = -1;
  }
  return spans;
};

/** Whether the logged output, where there is one, stood at full power over most of a span. */
const outputAgrees = (trace: Trace, [fromSeconds, toSeconds]: [number, number]): boolean => {
  const { outputPercent, atSeconds } = trace;
  if (outputPercent === null) return true;
  const logged = outputPercent
    .subarray(lowerBound(atSeconds, fromSeconds), lowerBound(atSeconds, toSeconds))
    .filter((value) => Number.isFinite(value));
  const full = logged.filter((value) => value >= FULL_OUTPUT_PERCENT).length;
  return logged.length === 0 || full > logged.length / 2;
};

/** A ramp programmed at full power, up to where its controller may ease off before the target. */
const limitedInFull = (trace: Trace, actual: NonNullable<AlignedLeg['actual']>): Limited[] => {
  const { smoothC, outputPercent } = trace;
  const easesC = actual.endC - EASING_DELTA_C;
  const isFull = (i: number) =>
    outputPercent === null ? smoothC[i]! < easesC : outputPercent[i]! >= FULL_OUTPUT_PERCENT;
  return spansWhere(trace, actual.startSeconds, actual.endSeconds, isFull).map(([start, end]) =>
    limitedBetween(trace, start, end, null),
  );
};

const limitedInRamp = (trace: Trace, leg: AlignedLeg): Limited[] => {
  const { actual, planned } = leg;
  if (leg.kind !== 'ramp' || actual === null) return [];
  const rate = planned.rateCPerHour;
  if (rate === null) return limitedInFull(trace, actual);
  const { outputPercent } = trace;
  const isLimited = (i: number) => {
    const slope = trace.slopeCPerHour[i]!;
    const error = BEHIND_ERRORS * trace.slopeErrorCPerHour[i]!;
    const isFull = outputPercent !== null && outputPercent[i]! >= FULL_OUTPUT_PERCENT;
    return (isFull || slope + error < BEHIND_SHARE * rate) && slope > CLIMBING_SHARE * rate;
  };
  const from = actual.startSeconds + EASING_SECONDS;
  const to = actual.endSeconds - EASING_SECONDS;
  return spansWhere(trace, from, to, isLimited)
    .filter((span) => outputAgrees(trace, span))
    .map(([start, end]) => limitedBetween(trace, start, end, rate));
};

/** Whether the climb grew slower from the first third of a stretch to its last. */
const isBending = (trace: Trace, { fromSeconds, toSeconds }: Limited): boolean => {
  const third = (toSeconds - fromSeconds) / 3;
  const first = courseBetween(trace, fromSeconds, fromSeconds + third).rateCPerHour;
  const last = courseBetween(trace, toSeconds - third, toSeconds).rateCPerHour;
  return last < BENDING_SHARE * first;
};

/** Whether a stretch that fell behind its own rate ran at another leg's. */
const isAtRateOfAnother = (
  { plannedCPerHour, achievedCPerHour }: Limited,
  legs: readonly AlignedLeg[],
): boolean =>
  plannedCPerHour !== null &&
  legs.some(({ kind, planned: { rateCPerHour } }) => {
    if (kind !== 'ramp' || rateCPerHour === null || rateCPerHour === plannedCPerHour) return false;
    return Math.abs(achievedCPerHour / rateCPerHour - 1) <= SAME_RATE_SHARE;
  });

/** Without legs to go by: where the logged output stood at full power while the kiln climbed. */
const limitedByOutput = (trace: Trace): Limited[] => {
  const { outputPercent, slopeCPerHour, summary } = trace;
  if (outputPercent === null) return [];
  const isFull = (i: number) => outputPercent[i]! >= FULL_OUTPUT_PERCENT && slopeCPerHour[i]! > 0;
  return spansWhere(trace, summary.startSeconds ?? 0, summary.durationSeconds, isFull).map(
    ([start, end]) => limitedBetween(trace, start, end, null),
  );
};

/**
 * The stretches in which the kiln climbed as fast as it could: ramps programmed at full power, and
 * those in which it fell behind its plan or, where the output was logged, was seen at full power. A
 * logged output that says otherwise overrules falling behind. Without legs only the output tells.
 * Where the legs are doubtful, only those that also bend as full power does; else those that do not
 * bend are left out only where they run at another leg's rate.
 */
export const findLimited = (trace: Trace, alignment: Alignment | null): Limited[] => {
  if (alignment === null || alignment.legs.length === 0) return limitedByOutput(trace);
  const { legs, confidence } = alignment;
  const limited = legs.flatMap((leg) => limitedInRamp(trace, leg));
  return limited.filter(
    (stretch) =>
      isBending(trace, stretch) ||
      (confidence >= TRUSTED_CONFIDENCE && !isAtRateOfAnother(stretch, legs)),
  );
};
