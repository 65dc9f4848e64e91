import { endedEarly, legsThatRan, measure, type Analysis, type AnalysisHost } from './analyze.ts';
import { judgeBoth } from './findings/both-runs.ts';
import type { Facts } from './findings/facts.ts';
import { loadOf } from './heatwork/load.ts';
import { measureHeatWork, type HeatWorkQuestion } from './heatwork/measure-heat-work.ts';
import { measureZones } from './heatwork/zones.ts';
import { readLog } from './log/read-log.ts';
import { SCHEMA_VERSION, type Band, type HeatWork, type Joined } from './model/document.ts';
import type { Log } from './model/log.ts';
import { movedBy } from './model/moved.ts';
import type { Options } from './model/options.ts';
import type { Trace } from './model/trace.ts';
import { seconds } from './units.ts';
import { chooseFiring } from './trace/choose-firing.ts';
import { thinnedCurve } from './trace/curve.ts';
import { joinOrder } from './trace/join-order.ts';
import { joinTraces } from './trace/join-traces.ts';
import { makeTrace } from './trace/make-trace.ts';

/** A log that has been read, and its file's SHA-256. */
export interface LogRead {
  readonly log: Log;
  readonly trace: Trace;
  readonly sha256?: string | undefined;
}

/** A log file as it lies on the disk. */
export interface LogFile {
  readonly bytes: Uint8Array;
  readonly fileName: string;
  readonly host?: AnalysisHost;
}

/** Both records on one clock, and the hole between them. */
interface Both {
  readonly trace: Trace;
  readonly gap: Joined['gap'];
}

/** What each record is asked alone: the cones that were seen have been through both. */
const alone = ({ observedCones: _, ...options }: Options): Options => options;

/** The earlier record was cut short: it is asked for the cone, and held against no schedule. */
const unplanned = ({ schedule, ...options }: Options): Options => {
  const cone = options.cone ?? schedule?.cone;
  return cone === undefined || cone === null ? options : { ...options, cone };
};

const questionOf = ({ options, schedule }: Facts, legs: HeatWorkQuestion['legs']) => ({
  target: options.cone ?? schedule?.cone ?? null,
  coneType: options.coneType,
  couple: options.couple,
  observedCones: options.observedCones,
  legs,
});

/** What each record gave: the whole heat-work divided between the two, and each alone. */
const partsOf = (
  { trace, gap }: Both,
  [earlier, later]: readonly [Facts, Facts],
): Joined['parts'] => {
  const spans = [
    { startSeconds: seconds(0), endSeconds: gap.fromSeconds },
    { startSeconds: gap.toSeconds, endSeconds: trace.summary.durationSeconds },
  ];
  const legs = spans.map((span) => ({ kind: 'ramp' as const, ...span }));
  const shares = measureHeatWork(trace, questionOf(later, legs))?.parts ?? [];
  const part = (index: 0 | 1, { trace: { peakC }, heatWork }: Facts) => ({
    fromSeconds: spans[index]!.startSeconds,
    toSeconds: spans[index]!.endSeconds,
    peakC,
    doseShare: shares[index]?.doseShare ?? 0,
    position: heatWork?.cone.position ?? null,
  });
  return [part(0, earlier), part(1, later)];
};

const movedStart = ({ summary }: Trace, bySeconds: number): Joined['startSeconds'] =>
  summary.startSeconds === null ? null : seconds(summary.startSeconds + bySeconds);

/** The phases of the ware: the later log's, and those that only the earlier one went through. */
const bandsOf = (earlier: readonly Band[], later: readonly Band[]): Band[] => {
  const isLater = (band: Band): boolean =>
    later.some(({ name, direction }) => name === band.name && direction === band.direction);
  return [...earlier.filter((band) => !isLater(band)), ...later];
};

/**
 * Analyses two logs of one load as one firing, where the first broke off and the load was fired
 * again: doses are added, the hole between them is shown and not counted, the schedule is laid on
 * the later log alone, and each log is judged by itself.
 *
 * @throws Refusal `cannot-join` where the logs cannot be two runs of one load
 */
export const analyzeJoinedTraces = (
  first: LogRead,
  second: LogRead,
  options: Options = {},
): Analysis => {
  const recorded = (one: LogRead) => ({ ...one, source: one.log.source });
  const order = joinOrder(recorded(first), recorded(second));
  const { earlier, later, laterBeginsSeconds } = order;
  const trace = joinTraces(earlier.trace, later.trace, laterBeginsSeconds);
  const gap = {
    fromSeconds: earlier.trace.summary.durationSeconds,
    toSeconds: seconds(laterBeginsSeconds),
  };
  const before = measure(earlier.log, earlier.trace, unplanned(alone(options)));
  const after = { ...measure(later.log, later.trace, alone(options)), options };
  const coneType = options.coneType ?? 'self-supporting';
  const ran = movedBy(legsThatRan(later.trace, after.alignment), laterBeginsSeconds);
  const heatWork: HeatWork | null = measureHeatWork(
    trace,
    questionOf(after, [...before.trace.legs, ...ran]),
  );
  const load = loadOf(heatWork, { coneType, endedEarly: endedEarly(after.alignment) });
  const judged = { ...after, heatWork: movedBy(heatWork, -laterBeginsSeconds), load };
  const onOneClock = movedBy(
    { alignment: after.alignment, overshoots: after.overshoots, elements: after.elements },
    laterBeginsSeconds,
  );
  const document = {
    schemaVersion: SCHEMA_VERSION,
    options,
    source: { ...earlier.source, sha256: earlier.sha256 ?? null },
    joined: {
      source: { ...later.source, sha256: later.sha256 ?? null },
      gap,
      startSeconds: movedStart(later.trace, laterBeginsSeconds),
      isGapKnown: order.isGapKnown,
      parts: partsOf({ trace, gap }, [before, after]),
    },
    trace: trace.summary,
    curve: thinnedCurve(trace, onOneClock.alignment?.planned ?? null),
    zones: measureZones(trace, coneType),
    schedule: after.schedule,
    ...onOneClock,
    heatWork,
    bands: bandsOf(before.bands, after.bands),
    load,
    ...judgeBoth(before, judged, laterBeginsSeconds),
  } as const;
  return { document, trace };
};

/**
 * {@link analyzeJoinedTraces} of two files; what `options.reading` says holds for both.
 *
 * @throws Refusal where a log cannot be read, or the two cannot be joined
 */
export const analyzeJoined = (first: LogFile, second: LogFile, options: Options = {}): Analysis => {
  const read = ({ bytes, fileName, host = {} }: LogFile): LogRead => {
    const log = chooseFiring(
      readLog(bytes, fileName, options.reading, { ...host, knownCouple: options.couple?.type }),
      options.reading?.firing,
    );
    return { log, trace: makeTrace(log), sha256: host.sha256 };
  };
  return analyzeJoinedTraces(read(first), read(second), options);
};
