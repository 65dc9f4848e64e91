import type { AsideLines } from '../delimited/aside-lines.ts';
import type { Layout } from '../delimited/layout.ts';
import { READ, STATES, type RawColumns } from '../columns/raw-columns.ts';
import type { TableRead } from '../assemble/table-read.ts';
import type { RejectionId } from '../ids.ts';
import type { Log } from '../../model/log.ts';
import type { LineFate } from './shown.ts';

type Fates = Map<number, LineFate>;

const rejected = (reason: string): LineFate => ({
  kind: 'rejected',
  reason: reason as RejectionId,
});

const ofState = (state: number): LineFate =>
  state === READ ? { kind: 'row' } : rejected(STATES[state]!);

/** What is known of single rows of a log that was made: those kept, and those listed as rejected. */
const noteLog = (fates: Fates, wanted: ReadonlySet<number>, log: Log): void => {
  log.line.forEach((line, index) => {
    if (!wanted.has(line)) return;
    fates.set(line, {
      kind: 'kept',
      atSeconds: log.atSeconds[index]!,
      celsius: log.celsius[index]!,
    });
  });
  for (const { line, reason } of log.source.rejected) {
    if (wanted.has(line)) fates.set(line, rejected(reason));
  }
};

/** What became of lines that stand in no row, by where the table stands. */
export const fateByPlace = (
  line: number,
  text: string,
  layout: Layout,
  asideLines: AsideLines | null,
): LineFate => {
  const { headerLine, startLine } = layout;
  if (text.trim() === '') return { kind: 'aside', what: 'blank' };
  const what = asideLines?.kindOf(line) ?? null;
  if (what !== null) return { kind: 'aside', what };
  if (headerLine !== null && line >= headerLine && line < startLine) return { kind: 'names' };
  if (line < startLine) return { kind: 'above' };
  return asideLines === null ? { kind: 'unread' } : { kind: 'aside', what: null };
};

/** What became of each wanted line of delimited text that was a row. */
export const fatesByLine = (
  wanted: ReadonlySet<number>,
  { columns }: Pick<TableRead, 'columns'>,
  log: Log | null,
): Fates => {
  const fates: Fates = new Map();
  for (let row = 0; row < columns.length; row += 1) {
    const line = columns.line[row]!;
    if (wanted.has(line)) fates.set(line, ofState(columns.state[row]!));
  }
  if (log !== null) noteLog(fates, wanted, log);
  return fates;
};

/**
 * What became of each row, in order, where lines do not tell rows apart, as in JSON written on one
 * line: the rows that were read are those of the log in the same order, if they are as many.
 */
export const fatesByRow = (columns: RawColumns, log: Log | null): ((row: number) => LineFate) => {
  const places = new Uint32Array(columns.length);
  let kept = 0;
  for (let row = 0; row < columns.length; row += 1) {
    if (columns.state[row] === READ) kept += 1;
    places[row] = kept;
  }
  return (row) => {
    const state = columns.state[row]!;
    if (state !== READ || log === null || kept !== log.atSeconds.length) return ofState(state);
    const place = places[row]! - 1;
    return { kind: 'kept', atSeconds: log.atSeconds[place]!, celsius: log.celsius[place]! };
  };
};
