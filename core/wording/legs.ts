import { heatSourceOf, type HeatSource } from '../model/heat-source.ts';
import type { AlignedLeg, AnalysisDocument } from '../model/document.ts';
import type { Segment } from '../model/schedule.ts';
import type { TraceLeg } from '../model/trace.ts';
import { isCutByRecord, planRecord, unseenLeg, type Unseen } from '../model/unseen-legs.ts';
import { celsiusDelta, type CelsiusPerHour } from '../units.ts';
import { clockTime, duration, type Speech } from './speech.ts';
import { sentence } from './topic.ts';

/** One leg as a row: what was planned and what the kiln did, each cell said. */
export interface LegWords {
  /** 1-based, in order of time. */
  readonly number: number;
  readonly name: string;
  readonly verdict: string;
  /** Whether the leg was seen to go otherwise than planned. */
  readonly departs: boolean;
  readonly planned: LegCells | null;
  readonly actual: LegCells | null;
}

export interface LegCells {
  readonly rate: string;
  readonly from: string;
  readonly to: string;
  readonly lasted: string;
  readonly ended: string;
}

/** The table of legs with what stands above it. */
export interface LegsWords {
  readonly heading: string;
  readonly note: string | null;
  readonly rows: readonly LegWords[];
}

const VERDICT_WORDS: Readonly<Record<AlignedLeg['verdict'], string>> = {
  'as-planned': 'as planned',
  slow: 'slow',
  fast: 'fast',
  short: 'short',
  long: 'long',
  'off-level': 'off its level',
  'not-reached': 'target not reached',
  missing: 'never ran',
};

/** A climb that was late only because the reading fell on its way was not slow. */
const wasHeldUp = ({ segment, kind }: AlignedLeg, { findings }: AnalysisDocument): boolean =>
  kind === 'ramp' &&
  findings.some(
    ({ id, figures, instead }) =>
      id === 'ramp-slow' &&
      figures['segment'] === segment &&
      figures['fallenMinutes'] !== undefined &&
      !instead.includes('heavy-load'),
  );

const verdictWord = (leg: AlignedLeg, document: AnalysisDocument): string =>
  leg.verdict === 'slow' && wasHeldUp(leg, document)
    ? 'held up by a fall'
    : VERDICT_WORDS[leg.verdict];

/** What is said of a leg that the record could not show. */
const UNSEEN_WORDS: Readonly<Record<Unseen, string>> = {
  'begins-hot': 'cannot be told: the log begins hot',
  'record-ends': 'cannot be told: the log ends before',
};

/** What is said of the leg in which the record stops: how it went on is not known. */
const CUT_WORDS = 'the record stops before its end';

/** What a cell says where there is nothing to say. */
const NOTHING = '–';

type Course = Pick<TraceLeg, 'startSeconds' | 'endSeconds' | 'startC' | 'endC' | 'kind'> & {
  readonly rateCPerHour: CelsiusPerHour | null;
};

const rateCell = ({ kind, rateCPerHour }: Course, say: Speech): string => {
  if (kind === 'hold') return NOTHING;
  return rateCPerHour === null ? 'as it went' : say.rate(rateCPerHour);
};

const cellsOf = (course: Course, startInstant: string | null, say: Speech): LegCells => {
  const clock = clockTime(startInstant, course.endSeconds);
  return {
    rate: rateCell(course, say),
    from: say.temperature(course.startC),
    to: say.temperature(course.endC),
    lasted: duration(course.endSeconds - course.startSeconds),
    ended: clock ?? duration(course.endSeconds),
  };
};

/** What a schedule's `full` rate is called, by what the kiln is heated by. */
const FULL_WORDS: Readonly<Record<HeatSource, string>> = {
  electric: 'at full power',
  fuel: 'as fast as it goes',
};

const rampName = (
  segment: Segment | undefined,
  planned: AlignedLeg['planned'],
  heat: HeatSource,
  say: Speech,
) => {
  const target = say.temperature(planned.endC);
  if (segment?.rateCPerHour === 'full') return `climb to ${target} ${FULL_WORDS[heat]}`;
  if (segment?.minutes != null) return `climb to ${target} in ${duration(segment.minutes * 60)}`;
  return `climb to ${target}`;
};

/** A planned leg's name: `climb to 1188 °C`, `hold at 120 °C`, `free cooling`. */
export const legName = (leg: AlignedLeg, document: AnalysisDocument, say: Speech): string => {
  const { segment, kind, planned } = leg;
  if (segment === null) return 'free cooling';
  if (kind === 'hold') return `hold at ${say.temperature(planned.endC)}`;
  if (kind === 'cooling') return `fall to ${say.temperature(planned.endC)}`;
  const heat = heatSourceOf(document.options);
  return rampName(document.schedule?.segments[segment], planned, heat, say);
};

/** The name of a leg that the trace itself shows. */
export const traceLegName = ({ kind, startC, endC }: TraceLeg, say: Speech): string => {
  if (kind === 'hold') return `hold near ${say.temperature(startC)}`;
  return `${kind === 'ramp' ? 'climb' : 'cooling'} to ${say.temperature(endC)}`;
};

const alignedRows = (document: AnalysisDocument, say: Speech): LegWords[] => {
  const { startInstant } = document.trace;
  const legs = document.alignment?.legs ?? [];
  return legs.map((leg, index) => {
    const isFree = leg.segment === null;
    const { kind, planned, actual } = leg;
    const unseen = unseenLeg(legs, index, planRecord(document));
    const isCut = isCutByRecord(legs, index, planRecord(document));
    const seen = isFree && leg.verdict === 'as-planned' ? NOTHING : verdictWord(leg, document);
    const verdict = isCut ? CUT_WORDS : seen;
    return {
      number: index + 1,
      name: sentence(legName(leg, document, say)),
      verdict: unseen === null ? verdict : UNSEEN_WORDS[unseen],
      departs: unseen === null && !isCut && leg.verdict !== 'as-planned',
      planned: isFree ? null : cellsOf({ ...planned, kind }, startInstant, say),
      actual: actual && cellsOf({ ...actual, kind }, startInstant, say),
    };
  });
};

const traceRows = ({ trace }: AnalysisDocument, say: Speech): LegWords[] =>
  trace.legs.map((leg, index) => ({
    number: index + 1,
    name: sentence(traceLegName(leg, say)),
    verdict: NOTHING,
    departs: false,
    planned: null,
    actual: cellsOf(leg, trace.startInstant, say),
  }));

/** How the setpoint that the logger wrote agrees with the legs, where it wrote one. */
const setpointNote = ({ alignment }: AnalysisDocument): string => {
  const disagreement = alignment?.setpointDisagreementSeconds ?? null;
  if (disagreement === null) return '';
  return ` The setpoint in the log agrees with these legs within ${duration(disagreement)}.`;
};

/**
 * From here on a schedule lies as well on a log as one that was run does (chosen by the bench of leg
 * boundaries: of schedules that were run nearly all reach it, of others hardly any).
 */
export const WELL_LAID_PERCENT = 65;

const confidenceNote = (document: AnalysisDocument): string | null => {
  const { alignment } = document;
  if (alignment === null) return null;
  const certainty = Math.round(alignment.confidence * 100);
  const trust =
    certainty >= WELL_LAID_PERCENT
      ? `The schedule lies on this log with a certainty of ${certainty} %.`
      : `The schedule could be laid on this log with a certainty of ${certainty} % only: treat the legs with care.`;
  return trust + setpointNote(document);
};

/** The legs planned and driven, or without a schedule those that the trace shows. */
export const legsWords = (document: AnalysisDocument, say: Speech): LegsWords =>
  document.alignment === null
    ? {
        heading: 'What the kiln did, leg by leg',
        note: document.schedule
          ? 'The schedule could not be laid on this log, so these are the legs that the curve itself shows.'
          : 'No schedule was given, so these are the legs that the curve itself shows.',
        rows: traceRows(document, say),
      }
    : {
        heading: 'Planned and driven, leg by leg',
        note: confidenceNote(document),
        rows: alignedRows(document, say),
      };

/** How far off the plan an overshoot went, for a list beside the legs. */
export const overshootWords = (document: AnalysisDocument, say: Speech): string[] =>
  document.overshoots.map(({ segment, overC, atSeconds, aboveForSeconds }) => {
    const target = document.schedule?.segments[segment]?.targetC;
    const name = target === undefined ? 'A target' : `The target of ${say.temperature(target)}`;
    const over = say.difference(celsiusDelta(overC));
    return `${name} was passed by ${over} at ${duration(atSeconds)}, for ${duration(aboveForSeconds)}.`;
  });
