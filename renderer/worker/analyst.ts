import type { Options } from '../../core/model/options.ts';
import type { Schedule } from '../../core/model/schedule.ts';
import { createFitting, type ScheduleFit } from './fitting.ts';
import type {
  AnalysisRequest,
  Answered,
  LogFile,
  Refused,
  Stage,
  WorkerMessage,
  WorkerRequest,
} from './protocol.ts';

/** As much of a Worker as is used, so that tests can bring their own. */
export interface WorkerLike {
  postMessage(message: WorkerRequest, transfer: Transferable[]): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<WorkerMessage>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/** How an analysis ended. `superseded`: a later question made this one pointless. */
export type Outcome =
  | ({ readonly kind: 'answered' } & Answered)
  | ({ readonly kind: 'refused' } & Refused)
  | { readonly kind: 'superseded' };

/** What is asked beside the verdict. */
export type Asking = Pick<AnalysisRequest, 'wantsReading' | 'rules' | 'joined'>;

/** Puts questions to the worker, so that the window never waits for an analysis. */
export interface Analyst {
  /**
   * Reads a log, if it is not the one read last, and judges it. A question about another log drops
   * whatever is under way; of several about one log that pile up only the last is put.
   */
  ask(
    log: LogFile,
    options: Options,
    onStage?: (stage: Stage) => void,
    more?: Asking,
  ): Promise<Outcome>;
  /**
   * How well each schedule lies on a log that was read, the best first; null where that came to
   * nothing. It stands back behind every question.
   */
  fit(log: LogFile, schedules: readonly Schedule[]): Promise<readonly ScheduleFit[] | null>;
  /** Drops whatever is under way. */
  cancel(): void;
}

interface Question {
  readonly log: LogFile;
  readonly options: Options;
  readonly onStage: (stage: Stage) => void;
  readonly more: Asking;
  readonly settle: (outcome: Outcome) => void;
}

/** Work on a larger log is ended, not waited for, once it is to be read otherwise (chosen). */
const LARGE_BYTES = 4 * 1024 * 1024;

/** How a log is read, whichever firing in it is judged. */
const wayOfReading = ({ reading: { firing: _any, ...reading } = {} }: Options): string =>
  JSON.stringify(reading);

const CRASHED: Refused = {
  code: 'internal',
  message: 'the analysis came to a sudden end, perhaps for want of memory',
  line: null,
};

/** The worker came to its end with the bytes in its hands. */
const LOST: Refused = {
  code: 'file-unreadable',
  message: 'the log is no longer at hand; open it once more',
  line: null,
};

/** An analyst whose worker is started by `spawn`, when it is first needed and after a cancel. */
export const createAnalyst = (spawn: () => WorkerLike): Analyst => {
  let worker: WorkerLike | null = null;
  let current: { readonly id: number; readonly question: Question } | null = null;
  let waiting: Question | null = null;
  const keys = new WeakMap<LogFile, number>();
  let lastId = 0;
  let lastKey = 0;

  const fitting = createFitting((request) => {
    if (!worker || current) return false;
    worker.postMessage(request, []);
    return true;
  });

  const keyOf = (log: LogFile): number => {
    const key = keys.get(log) ?? ++lastKey;
    keys.set(log, key);
    return key;
  };

  const finish = (outcome: Outcome): void => {
    const settled = current;
    current = null;
    settled?.question.settle(outcome);
    const next = waiting;
    waiting = null;
    if (next) put(next);
    else fitting.goOn();
  };

  const receive = (message: WorkerMessage): void => {
    if (message.kind === 'fitted') {
      fitting.receive(message.id, message.confidence);
      return;
    }
    if (message.id !== current?.id) return;
    const { log, onStage } = current.question;
    if (message.kind === 'stage') onStage(message.stage);
    else if (message.kind === 'kept') log.content = { blob: message.blob };
    else finish(message);
  };

  const dismiss = (): void => {
    worker?.terminate();
    worker = null;
    fitting.stop();
  };

  const start = (): WorkerLike => {
    const started = spawn();
    started.onmessage = ({ data }) => receive(data);
    started.onerror = (event) => {
      event.preventDefault();
      dismiss();
      finish({ kind: 'refused', ...CRASHED });
    };
    return started;
  };

  const put = (question: Question): void => {
    const { log, options, more } = question;
    const { fileName, content } = log;
    current = { id: ++lastId, question };
    if (content === null) {
      finish({ kind: 'refused', ...LOST });
      return;
    }
    worker ??= start();
    const request: WorkerRequest = {
      kind: 'analyse',
      id: lastId,
      logKey: keyOf(log),
      log: { fileName, content },
      options,
      ...more,
    };
    const isHandedOver = 'bytes' in content;
    if (isHandedOver) log.content = null;
    worker.postMessage(request, isHandedOver ? [content.bytes.buffer] : []);
  };

  const cancel = (): void => {
    const dropped = [current?.question, waiting];
    // A worker in the middle of a log cannot be asked to stop; it can be ended.
    if (current) dismiss();
    current = null;
    waiting = null;
    for (const question of dropped) question?.settle({ kind: 'superseded' });
  };

  /** Whether the work under way is for nothing and long enough to be worth ending. */
  const isStale = (log: LogFile, options: Options): boolean => {
    if (!current) return false;
    const { question } = current;
    if (question.log !== log) return true;
    const isOtherwise = wayOfReading(question.options) !== wayOfReading(options);
    // While the bytes are in the worker's hands alone, they would be lost with it.
    return isOtherwise && log.byteLength > LARGE_BYTES && log.content !== null;
  };

  return {
    ask: (log, options, onStage = () => undefined, more = {}) => {
      if (isStale(log, options)) cancel();
      return new Promise((settle) => {
        const question = { log, options, onStage, more, settle };
        waiting?.settle({ kind: 'superseded' });
        waiting = current ? question : null;
        if (!current) put(question);
      });
    },
    fit: (log, schedules) => fitting.start(keyOf(log), schedules),
    cancel,
  };
};
