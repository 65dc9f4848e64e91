import { align } from './align/align.ts';
import { findOvershoots } from './align/overshoots.ts';
import type { Facts } from './findings/facts.ts';
import { runDetectors } from './findings/run-detectors.ts';
import { loadOf } from './heatwork/load.ts';
import { measureHeatWork, type HeatWorkQuestion } from './heatwork/measure-heat-work.ts';
import { measureZones } from './heatwork/zones.ts';
import { readLog, type ReadingEnvironment } from './log/read-log.ts';
import { SCHEMA_VERSION, type AnalysisDocument, type Alignment } from './model/document.ts';
import type { Log } from './model/log.ts';
import type { Options } from './model/options.ts';
import type { Trace } from './model/trace.ts';
import { measureBands } from './thermal/bands.ts';
import { measureElements } from './thermal/measure-elements.ts';
import { readReference } from './thermal/reference.ts';
import { thinnedCurve } from './trace/curve.ts';
import { chooseFiring } from './trace/choose-firing.ts';
import { makeTrace } from './trace/make-trace.ts';

/** What the caller's machine knows and core may not ask for. */
export interface AnalysisHost extends ReadingEnvironment {
  /** Hexadecimal SHA-256 of the bytes, for the account of reading. */
  readonly sha256?: string;
}

export interface Analysis {
  /** Everything that is shown, stored or reported of the firing. */
  readonly document: AnalysisDocument;
  /** The full columns behind the document's thinned curve. */
  readonly trace: Trace;
}

/** The legs that happened, for what divides the firing by legs: the alignment's, or the trace's. */
export const legsThatRan = (trace: Trace, alignment: Alignment | null): HeatWorkQuestion['legs'] =>
  alignment === null
    ? trace.summary.legs
    : alignment.legs.flatMap(({ kind, actual }) => (actual === null ? [] : [{ kind, ...actual }]));

/** The facts of a firing that findings are drawn from. */
export const measure = (log: Log, trace: Trace, options: Options): Facts => {
  const schedule = options.schedule ?? null;
  const coneType = options.coneType ?? 'self-supporting';
  const alignment = schedule === null ? null : align(trace, schedule);
  const heatWork = measureHeatWork(trace, {
    target: options.cone ?? schedule?.cone ?? null,
    coneType,
    couple: options.couple,
    observedCones: options.observedCones,
    legs: legsThatRan(trace, alignment),
  });
  const isElectric = options.kiln?.heat !== 'fuel';
  return {
    options,
    source: log.source,
    trace: trace.summary,
    samples: trace,
    zones: measureZones(trace, coneType),
    schedule,
    alignment,
    heatWork,
    bands: measureBands(trace),
    load: loadOf(heatWork, { coneType, endedEarly: endedEarly(alignment) }),
    overshoots: alignment === null ? [] : findOvershoots(trace, alignment.legs),
    elements: isElectric
      ? measureElements(trace, alignment, coneType, readReference(options.reference))
      : null,
  };
};

/** Whether the firing was over before the schedule's hottest target was reached. */
export const endedEarly = (alignment: Alignment | null): boolean => {
  if (alignment === null || !alignment.legs.some((leg) => leg.segment === null)) return false;
  const climbs = alignment.legs.filter((leg) => leg.segment !== null && leg.kind === 'ramp');
  const topC = Math.max(...climbs.map((leg) => leg.planned.endC));
  return climbs.some((leg) => leg.planned.endC === topC && leg.actual === null);
};

/**
 * Analyses a log that has been read already: what is told of the firing changes, the log does not.
 * Where `options.reading` changes, the log is read again first.
 */
export const analyzeTrace = (
  log: Log,
  trace: Trace,
  options: Options = {},
  host: Pick<AnalysisHost, 'sha256'> = {},
): AnalysisDocument => {
  const { samples, ...facts } = measure(log, trace, options);
  const { findings, checks } = runDetectors({ samples, ...facts });
  return {
    schemaVersion: SCHEMA_VERSION,
    ...facts,
    source: { ...facts.source, sha256: host.sha256 ?? null },
    curve: thinnedCurve(trace, facts.alignment?.planned ?? null),
    findings,
    checks,
  };
};

/**
 * Analyses one firing: bytes → log → trace → alignment → measures → findings → document. Of
 * several firings in one log it is the one that `options.reading.firing` names, else the hottest.
 *
 * @param bytes the log file as it lies on the disk
 * @param fileName names the log in the account of reading; nothing is concluded from it
 * @param options what the person told about the firing
 * @throws Refusal where the log cannot be read or holds no firing at all
 */
export const analyze = (
  bytes: Uint8Array,
  fileName: string,
  options: Options = {},
  host: AnalysisHost = {},
): Analysis => {
  const log = chooseFiring(
    readLog(bytes, fileName, options.reading, { ...host, knownCouple: options.couple?.type }),
    options.reading?.firing,
  );
  const trace = makeTrace(log);
  return { document: analyzeTrace(log, trace, options, host), trace };
};
