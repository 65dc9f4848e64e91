import type { ReadingRule } from '../../core/model/reading-rule.ts';
import type { ReadingShown } from '../../core/log/show/shown.ts';
import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Options } from '../../core/model/options.ts';
import type { RefusalCode } from '../../core/model/refusal.ts';
import type { Schedule } from '../../core/model/schedule.ts';
import type { Trace } from '../../core/model/trace.ts';

/**
 * A log's content: its bytes, or a blob that the worker has made of them. Bytes are handed over and
 * a blob crosses as it is, so that nothing large is ever copied on the page's own thread.
 */
export type LogContent = { readonly bytes: Uint8Array<ArrayBuffer> } | { readonly blob: Blob };

/** A log to be analysed. */
export interface LogFile {
  readonly fileName: string;
  readonly byteLength: number;
  /** Null while the bytes are on their way to the worker. */
  content: LogContent | null;
}

/** The log of a second run of the same load, to be taken with the first. */
export interface SecondRun {
  /** Tells one from the next, so that it is read once for many questions. */
  readonly key: number;
  readonly fileName: string;
  readonly blob: Blob;
}

/** The columns that the window draws; the rest of the trace stays with the worker. */
export type ShownTrace = Omit<Trace, 'smoothC' | 'slopeErrorCPerHour'>;

/** What the worker is at, in order. */
export const STAGES = ['fetching', 'reading', 'repairing', 'judging'] as const;
export type Stage = (typeof STAGES)[number];

export interface AnalysisRequest {
  readonly kind: 'analyse';
  readonly id: number;
  /** Tells one opened log from the next, so that it is read once for many questions. */
  readonly logKey: number;
  readonly log: Pick<LogFile, 'fileName'> & { readonly content: LogContent };
  readonly options: Options;
  /** Whether to show line by line how the log was read, though nothing about it is in doubt. */
  readonly wantsReading?: boolean;
  /** The reading rules by which a log is read that nothing is told of, where one is for its shape. */
  readonly rules?: readonly ReadingRule[];
  readonly joined?: SecondRun;
}

/** How well does this schedule lie on the log that was read last? */
export interface FitRequest {
  readonly kind: 'fit';
  readonly id: number;
  readonly logKey: number;
  readonly schedule: Schedule;
}

export type WorkerRequest = AnalysisRequest | FitRequest;

/** Why there is no answer: the log's or an option's fault, or a fault of the program. */
export interface Refused {
  readonly code: RefusalCode | 'internal';
  readonly message: string;
  readonly line: number | null;
  /** The lines of the log as far as they were understood, where it is the log that was refused. */
  readonly reading?: ReadingShown;
}

export interface Answered {
  readonly document: AnalysisDocument;
  /** Null where the log was not read again: the trace is still the one sent before. */
  readonly trace: ShownTrace | null;
  /** How the log was read, line by line, where that was wanted or something about it is a guess. */
  readonly reading?: ReadingShown;
  /** The shape of the file, where there are rules or something of its reading was told. */
  readonly shape?: string;
  /** The rule by which it was read. */
  readonly rule?: ReadingRule;
}

export type WorkerMessage =
  /** Null: the worker has read another log meanwhile, or none. */
  | { readonly kind: 'fitted'; readonly id: number; readonly confidence: number | null }
  | { readonly kind: 'kept'; readonly id: number; readonly blob: Blob }
  | { readonly kind: 'stage'; readonly id: number; readonly stage: Stage }
  | ({ readonly kind: 'answered'; readonly id: number } & Answered)
  | ({ readonly kind: 'refused'; readonly id: number } & Refused);
