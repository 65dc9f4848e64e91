import type { AnalysisDocument } from '../../core/model/document.ts';
import type { History } from '../../core/model/history.ts';
import type { Options } from '../../core/model/options.ts';
import type { ReadingRule } from '../../core/model/reading-rule.ts';
import type { Refused } from './protocol.ts';

/** A log of a history: a blob crosses to the worker as it is, and stays readable here. */
export interface HistoryLog {
  readonly fileName: string;
  readonly blob: Blob;
  /** What was told of it alone. */
  readonly own: Options;
}

/** Reads logs, in whatever order, as one kiln's history. */
export interface HistoryRequest {
  readonly logs: readonly HistoryLog[];
  readonly options: Options;
  readonly rules: readonly ReadingRule[];
}

/** One firing of a history: the place of its log among those given, and all that was made of it. */
export interface FiringTold {
  readonly place: number;
  readonly document: AnalysisDocument;
}

/** A log that could not be read, and why. */
export interface LogLeftOut extends Pick<Refused, 'code' | 'message' | 'line'> {
  readonly place: number;
}

export interface HistoryTold {
  readonly history: History;
  /** In the order of the history. */
  readonly firings: readonly FiringTold[];
  readonly leftOut: readonly LogLeftOut[];
}

export type HistoryMessage =
  | { readonly kind: 'progress'; readonly done: number }
  | { readonly kind: 'told'; readonly told: HistoryTold };
