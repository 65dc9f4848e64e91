import type { AnalysisDocument } from '../../core/model/document.ts';
import type { ReadingShown } from '../../core/log/show/shown.ts';
import type { ReadingRule } from '../../core/model/reading-rule.ts';
import type { Words } from '../../core/wording/wording.ts';
import type { LogFile, Refused, SecondRun, ShownTrace, Stage } from '../worker/protocol.ts';

/** A firing on the sheet. */
export interface OpenFiring {
  readonly kind: 'open';
  readonly log: LogFile;
  readonly document: AnalysisDocument;
  /** Every sentence about it, in the reader's unit. */
  readonly words: Words;
  readonly trace: ShownTrace;
  /** Whether a change of what was told is still being worked into the answer. */
  readonly isWorking: boolean;
  /** How it was read, line by line, where that was asked for. */
  readonly reading: ReadingShown | null;
  /** Why the log cannot be read as was told last; the rest is still as it was read before. */
  readonly misread: Refused | null;
  /** The shape of its file, where it is known. */
  readonly shape: string | null;
  /** The log of a second run of the same load that is taken with it, or is about to be. */
  readonly joined: SecondRun | null;
  /** The rule by which it was read by itself; null where none was, or something else was told. */
  readonly rule: ReadingRule | null;
}

/** A log that is being read, with what stood on the sheet before. */
export interface ReadingFiring {
  readonly kind: 'reading';
  readonly log: LogFile;
  readonly stage: Stage;
  readonly before: SettledFiring;
}

/** A log that could not be used. */
export interface RefusedFiring extends Refused {
  readonly kind: 'refused';
  readonly log: LogFile;
  /** Whether another way of reading it is being tried. */
  readonly isWorking: boolean;
}

export interface NothingOpen {
  readonly kind: 'empty';
}

export type SettledFiring = NothingOpen | OpenFiring | RefusedFiring;

/** What the sheet shows. */
export type Firing = SettledFiring | ReadingFiring;

/** Files whose bytes are waited for. */
export interface Arriving {
  readonly fileNames: readonly string[];
  /** Waits for them no longer. */
  readonly stop: () => void;
}

/** Words across the top of the window, until they are dismissed or something else happens. */
export interface Notice {
  readonly tone: 'said' | 'problem';
  readonly text: string;
}
