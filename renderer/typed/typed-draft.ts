import type { ReadingDecisions } from '../../core/model/options.ts';
import { typedEntries, withUnit } from '../../core/log/typed/entries.ts';
import type { LogFile } from '../worker/protocol.ts';

/** Readings that are being typed in, or were. */
export interface TypedDraft {
  readonly text: string;
  /** The unit of temperatures that have none beside them; null where it is left to the reader. */
  readonly unit: 'C' | 'F' | null;
  /** The name of the firing, once it has one. */
  readonly name: string | null;
  /** The log that was opened of it last: put right, it is the same firing. */
  readonly log: LogFile | null;
}

export const NOTHING_TYPED: TypedDraft = { text: '', unit: null, name: null, log: null };

/** Longer texts are files; they are opened, not pasted (chosen). */
export const MOST_TYPED_CHARS = 100_000;

/** A firing that was typed in is called by when that was, fit for a file's name on every system. */
export const typedName = (now: Date): string =>
  `Typed in at ${now.getHours()}h${String(now.getMinutes()).padStart(2, '0')}`;

/** A draft as a log: a text that says all there is to say, and how to read it beyond that. */
export interface TypedLog {
  readonly text: string;
  readonly decisions: ReadingDecisions;
}

/** Typed readings say their unit themselves; of a table it is told, as its head may say another. */
export const typedLog = ({ text, unit }: Pick<TypedDraft, 'text' | 'unit'>): TypedLog => {
  if (unit === null) return { text, decisions: {} };
  if (typedEntries(text) === null) return { text, decisions: { unit } };
  return { text: withUnit(text, unit), decisions: {} };
};
