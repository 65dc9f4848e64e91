import type { ChannelRole, ChannelUnit } from '../../model/options.ts';
import type { Decision } from '../../model/source.ts';
import type { RejectionId, WarningId } from '../ids.ts';
import type { Aside } from '../delimited/aside-lines.ts';

/** What became of a line. */
export type LineFate =
  | { readonly kind: 'kept'; readonly atSeconds: number; readonly celsius: number }
  | { readonly kind: 'rejected'; readonly reason: RejectionId }
  /** It holds the names of the columns, or the units under them. */
  | { readonly kind: 'names' }
  /** It stands above the table. */
  | { readonly kind: 'above' }
  /** It is no row; `what` is null where only that is known. */
  | { readonly kind: 'aside'; readonly what: keyof Aside | null }
  /** A row of another firing than the one that is judged. */
  | { readonly kind: 'other-firing' }
  /** A row that belongs to another channel, or to no firing where the log was refused. */
  | { readonly kind: 'row' }
  /** No table was found in which it could be one. */
  | { readonly kind: 'unread' };

/** A line of the file, or a record where the file is JSON. */
export interface ShownLine {
  /** Its place among the lines or records, from 1. */
  readonly place: number;
  /** The line of the file on which it begins, from 1; records may share one. */
  readonly line: number;
  /** Cut where it is long, and then ends in `…`. */
  readonly text: string;
  readonly fate: LineFate;
}

export type ShownRole = ChannelRole | 'time' | 'zone';

/** A column as it was split off, whatever came of it. */
export interface ShownColumn {
  /** As the file heads it; `column 3` where it does not. */
  readonly name: string;
  /** The name by which a decision means this column and no other. */
  readonly called: string;
  /** Its first cells that are not empty. */
  readonly cells: readonly string[];
  /** Null where it was not used or nothing was decided. */
  readonly role: ShownRole | null;
  readonly unit: ChannelUnit | null;
}

/** How a log is being read, line by line, for whoever has to put it right. */
export interface ReadingShown {
  /** How many lines, or records, there are in all. */
  readonly lineCount: number;
  /** Rising: the first lines, those around rejected rows, the last ones. */
  readonly lines: readonly ShownLine[];
  readonly columns: readonly ShownColumn[];
  readonly decisions: readonly Decision[];
  readonly warnings: readonly WarningId[];
}
