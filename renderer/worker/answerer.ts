import { analyzeTrace } from '../../core/analyze.ts';
import { readLog, type ReadingEnvironment } from '../../core/log/read-log.ts';
import type { Log } from '../../core/model/log.ts';
import { Refusal } from '../../core/model/refusal.ts';
import type { Trace } from '../../core/model/trace.ts';
import { makeTrace } from '../../core/trace/make-trace.ts';
import type { AnalysisRequest, Answered, Refused, ShownTrace, Stage } from './protocol.ts';

/** What the worker's surroundings supply. */
export interface Surroundings extends ReadingEnvironment {
  /** Hexadecimal SHA-256, or null where the page may not use the system's own. */
  readonly sha256: (bytes: Uint8Array<ArrayBuffer>) => Promise<string | null>;
}

interface KeptReading {
  readonly key: string;
  readonly log: Log;
  readonly trace: Trace;
  readonly sha256: string | null;
}

const bytesOf = async ({ log }: AnalysisRequest): Promise<Uint8Array<ArrayBuffer>> => {
  try {
    return new Uint8Array(await log.blob.arrayBuffer());
  } catch {
    const why = 'the file could not be read again; it may have been moved or changed';
    throw new Refusal('file-unreadable', why);
  }
};

/** A copy that can be handed over whole, while the worker keeps its own. */
const shown = ({ smoothC: _smooth, slopeErrorCPerHour: _error, ...trace }: Trace): ShownTrace => ({
  ...trace,
  atSeconds: trace.atSeconds.slice(),
  celsius: trace.celsius.slice(),
  slopeCPerHour: trace.slopeCPerHour.slice(),
  setpointC: trace.setpointC?.slice() ?? null,
  outputPercent: trace.outputPercent?.slice() ?? null,
  zones: trace.zones.map(({ channel, celsius }) => ({ channel, celsius: celsius.slice() })),
});

/** The buffers of a shown trace, to be transferred and not copied. */
export const buffersOf = (trace: ShownTrace): ArrayBuffer[] =>
  [
    ...[trace.atSeconds, trace.celsius, trace.slopeCPerHour],
    ...[trace.setpointC, trace.outputPercent].filter((column) => column !== null),
    ...trace.zones.map(({ celsius }) => celsius),
  ].map(({ buffer }) => buffer as ArrayBuffer);

/** What is told to the person when an analysis ends without an answer. */
export const refusedBy = (cause: unknown): Refused => {
  if (cause instanceof Refusal) {
    const { code, message, line } = cause;
    return { code, message, line };
  }
  const message =
    'this log brought the program to a fault of its own; please report it with the log';
  return { code: 'internal', message, line: null };
};

/**
 * Answers requests one at a time and keeps the last log it has read, so that what is told of the
 * firing changes the answer without the log being read again.
 */
export const createAnswerer = ({ sha256, ...environment }: Surroundings) => {
  let kept: KeptReading | null = null;

  const read = async (
    request: AnalysisRequest,
    key: string,
    onStage: (stage: Stage) => void,
  ): Promise<KeptReading> => {
    // The old log goes before the new one comes: two large ones need not fit.
    kept = null;
    onStage('fetching');
    const bytes = await bytesOf(request);
    const { fileName, sha256: known } = request.log;
    const hash = known === null ? sha256(bytes) : Promise.resolve(known);
    onStage('reading');
    const log = readLog(bytes, fileName, request.options.reading, environment);
    onStage('repairing');
    return { key, log, trace: makeTrace(log), sha256: await hash };
  };

  /** @throws Refusal where the log or an option cannot be used */
  return async (request: AnalysisRequest, onStage: (stage: Stage) => void): Promise<Answered> => {
    const key = JSON.stringify([request.logKey, request.options.reading ?? {}]);
    const isKept = kept?.key === key;
    const reading = isKept && kept ? kept : await read(request, key, onStage);
    kept = reading;
    onStage('judging');
    const host = reading.sha256 === null ? {} : { sha256: reading.sha256 };
    const document = analyzeTrace(reading.log, reading.trace, request.options, host);
    return { document, trace: isKept ? null : shown(reading.trace) };
  };
};
