import { align } from '../../core/align/align.ts';
import { analyzeJoinedTraces, type LogRead } from '../../core/analyze-joined.ts';
import { analyzeTrace } from '../../core/analyze.ts';
import { readLog, type ReadingEnvironment } from '../../core/log/read-log.ts';
import { apartFromOthers } from '../../core/log/show/other-firings.ts';
import { readToShow } from '../../core/log/show/show-reading.ts';
import type { ReadingShown } from '../../core/log/show/shown.ts';
import { shapedBy, type Shaped } from './by-rule.ts';
import type { Log } from '../../core/model/log.ts';
import { Refusal } from '../../core/model/refusal.ts';
import type { Trace } from '../../core/model/trace.ts';
import type { CoupleType, Options, ReadingDecisions } from '../../core/model/options.ts';
import { chooseFiring } from '../../core/trace/choose-firing.ts';
import { makeTrace } from '../../core/trace/make-trace.ts';
import { isGuess } from '../../core/wording/reading.ts';
import type {
  AnalysisRequest,
  Answered,
  FitRequest,
  Refused,
  SecondRun,
  ShownTrace,
  Stage,
} from './protocol.ts';

/** What the worker's surroundings supply. */
export interface Surroundings extends ReadingEnvironment {
  /** Hexadecimal SHA-256, or null where the page may not use the system's own. */
  readonly sha256: (bytes: Uint8Array<ArrayBuffer>) => Promise<string | null>;
}

interface LogShown {
  /** All that the file holds, and the number that was told of the firing in it. */
  readonly whole: Log;
  readonly firing: number | undefined;
  /** The firing that is judged. */
  readonly log: Log;
  readonly trace: Trace;
  /** Null where nothing about the reading is in doubt and nobody has asked. */
  readonly lines: ReadingShown | null;
}

interface KeptReading extends LogShown {
  /** The kiln's couple as it was told then: bare millivolts are read by it. */
  readonly couple: CoupleType | undefined;
  readonly key: string;
  readonly logKey: number;
  readonly sha256: string | null;
  readonly shaped: Shaped;
}

/** A log that was refused, with its lines as far as they were understood. */
class LogRefused extends Refusal {
  readonly reading: ReadingShown;

  constructor({ code, message, line }: Refusal, reading: ReadingShown) {
    super(code, message, line);
    this.reading = reading;
  }
}

/** One log read in one way, whichever firing in it is judged. */
const keyOf = (logKey: number, { firing: _any, ...reading }: ReadingDecisions = {}): string =>
  JSON.stringify([logKey, reading]);

const isBareVoltage = ({ source }: Log): boolean =>
  source.channels.some(({ unit }) => unit === 'mV' || unit === 'uV');

/** Nothing of the lines, where they were not asked for. */
const NOT_SHOWN: ReadingShown = {
  ...{ lineCount: 0, lines: [], columns: [], decisions: [], warnings: [] },
};

/** One firing of a log that was read. */
const chosenFrom = (
  whole: Log,
  firing: number | undefined,
  lines: ReadingShown | null,
  show: () => ReadingShown,
): LogShown => {
  try {
    const log = chooseFiring(whole, firing);
    return { whole, firing, log, trace: makeTrace(log), lines };
  } catch (cause) {
    throw cause instanceof Refusal ? new LogRefused(cause, lines ?? show()) : cause;
  }
};

/** Reads a log, and shows its lines where that is wanted, something is a guess, or it is refused. */
const readAndShow = (
  bytes: Uint8Array,
  { log: { fileName }, wantsReading }: AnalysisRequest,
  decisions: ReadingDecisions | undefined,
  environment: ReadingEnvironment,
  tell: Telling,
): LogShown => {
  const { log: whole, show } = readToShow(bytes, fileName, decisions, environment);
  if (whole instanceof Refusal) throw new LogRefused(whole, show());
  const isShown = wantsReading === true || whole.source.decisions.some(isGuess);
  tell.stage('repairing');
  return chosenFrom(whole, decisions?.firing, isShown ? show() : null, show);
};

/** Reads a log as is told, else by the rule for its shape, else, where that fails it, by itself. */
const readByRule = (
  bytes: Uint8Array,
  request: AnalysisRequest,
  environment: ReadingEnvironment,
  tell: Telling,
): LogShown & { readonly shaped: Shaped } => {
  const { reading } = request.options;
  const shaped = shapedBy(bytes, request, environment);
  const { rule } = shaped;
  if (rule !== null) {
    try {
      return { ...readAndShow(bytes, request, rule.decisions, environment, tell), shaped };
    } catch (cause) {
      if (!(cause instanceof Refusal)) throw cause;
    }
  }
  const read = readAndShow(bytes, request, reading, environment, tell);
  return { ...read, shaped: { ...shaped, rule: null } };
};

/** What is told on the way to an answer. */
export interface Telling {
  readonly stage: (stage: Stage) => void;
  /** The bytes that were handed over, in a form in which the page can ask about them again. */
  readonly kept: (blob: Blob) => void;
}

const bytesOf = async (
  { log: { content } }: AnalysisRequest,
  kept: Telling['kept'],
): Promise<Uint8Array<ArrayBuffer>> => {
  if ('bytes' in content) {
    kept(new Blob([content.bytes]));
    return content.bytes;
  }
  try {
    return new Uint8Array(await content.blob.arrayBuffer());
  } catch {
    throw new Refusal('file-unreadable', 'the log could not be read again; open it once more');
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
    const shownLines = cause instanceof LogRefused ? { reading: cause.reading } : {};
    return { code, message, line, ...shownLines };
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
  let second: (LogRead & { readonly key: string }) | null = null;
  /** Which record the page was sent last. */
  let sent = '';

  const read = async (request: AnalysisRequest, tell: Telling): Promise<KeptReading> => {
    // The old log goes before the new one comes: two large ones need not fit.
    kept = null;
    tell.stage('fetching');
    const bytes = await bytesOf(request, tell.kept);
    const hash = sha256(bytes);
    tell.stage('reading');
    const { logKey, options } = request;
    const couple = options.couple?.type;
    const read = readByRule(bytes, request, { ...environment, knownCouple: couple }, tell);
    const key = keyOf(logKey, options.reading ?? read.shaped.rule?.decisions);
    return { key, logKey, couple, ...read, sha256: await hash };
  };

  /** @throws Refusal under the second log's own name, where it cannot be read */
  const readSecond = async (run: SecondRun, { reading: decisions, couple }: Options) => {
    const key = JSON.stringify([run.key, decisions, couple?.type]);
    if (second?.key === key) return second;
    second = null;
    try {
      const bytes = new Uint8Array(await run.blob.arrayBuffer());
      const log = chooseFiring(
        readLog(bytes, run.fileName, decisions, { ...environment, knownCouple: couple?.type }),
        decisions?.firing,
      );
      second = { key, log, trace: makeTrace(log), sha256: (await sha256(bytes)) ?? undefined };
    } catch (cause) {
      if (!(cause instanceof Refusal)) throw cause;
      throw new Refusal(cause.code, `${run.fileName}: ${cause.message}`, cause.line);
    }
    return second;
  };

  /** One log judged, or two of one load together. */
  const judge = async (now: KeptReading, options: Options, run: SecondRun | undefined) => {
    const host = now.sha256 === null ? {} : { sha256: now.sha256 };
    if (run === undefined) {
      const { log, trace } = now;
      return { document: analyzeTrace(log, trace, options, host), trace };
    }
    const other = await readSecond(run, options);
    return analyzeJoinedTraces({ log: now.log, trace: now.trace, ...host }, other, options);
  };

  /** What was read last, where it is what is asked for, or another firing of the same log. */
  const readBefore = ({ logKey, options, wantsReading }: AnalysisRequest): KeptReading | null => {
    if (kept?.key !== keyOf(logKey, options.reading)) return null;
    const { whole, lines, couple } = kept;
    if (couple !== options.couple?.type && isBareVoltage(whole)) return null;
    if (wantsReading === true && lines === null) return null;
    const firing = options.reading?.firing;
    if (firing === kept.firing) return kept;
    return { ...kept, ...chosenFrom(whole, firing, lines, () => NOT_SHOWN) };
  };

  /** @throws Refusal where the log or an option cannot be used */
  const answer = async (request: AnalysisRequest, tell: Telling): Promise<Answered> => {
    const before = kept;
    const now = readBefore(request) ?? (await read(request, tell));
    const isSame = now === before;
    kept = now;
    tell.stage('judging');
    const { shape, rule } = now.shaped;
    const options =
      rule === null ? request.options : { ...request.options, reading: rule.decisions };
    const { document, trace } = await judge(now, options, request.joined);
    const record = `${now.key} ${now.firing ?? ''} ${request.joined?.key ?? ''}`;
    if (isSame && sent === record) return { document, trace: null };
    sent = record;
    return {
      document,
      trace: shown(trace),
      ...(isSame || now.lines === null ? {} : { reading: apartFromOthers(now.lines, now.log) }),
      ...(shape === null ? {} : { shape }),
      ...(rule === null ? {} : { rule }),
    };
  };

  /** The confidence of the alignment with a schedule; null where another log was read last. */
  const fit = ({ logKey, schedule }: FitRequest): number | null =>
    kept?.logKey === logKey ? align(kept.trace, schedule).confidence : null;

  return { answer, fit };
};
