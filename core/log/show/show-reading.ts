import { Account } from '../account.ts';
import { assembleLog } from '../assemble/assemble-log.ts';
import type { TableRead } from '../assemble/table-read.ts';
import { afterLineEnd, lineEndFrom, type Text } from '../bytes/text.ts';
import { linesIn, type DelimitedRead } from '../delimited/read-delimited.ts';
import { REJECTED_TEXT_CHARS } from '../limits.ts';
import type { Log } from '../../model/log.ts';
import type { ReadingDecisions } from '../../model/options.ts';
import { Refusal } from '../../model/refusal.ts';
import { openLogText, readTable, type ReadingEnvironment } from '../read-log.ts';
import { fateByPlace, fatesByLine, fatesByRow } from './line-fates.ts';
import { outlineOf, type Outline } from './outline.ts';
import { pickLines } from './pick-lines.ts';
import { shownColumns } from './shown-columns.ts';
import type { ReadingShown, ShownLine } from './shown.ts';

/** A reading with all that a person needs to put it right. */
export interface LogShown {
  readonly shown: ReadingShown;
  /** The log, or why there is none. */
  readonly log: Log | Refusal;
}

/** A reading that can be shown without reading anew: it holds the table until it is let go. */
export interface ReadingToShow extends Pick<LogShown, 'log'> {
  readonly show: () => ReadingShown;
}

const NOTHING: ReadingShown = { lineCount: 0, lines: [], columns: [], decisions: [], warnings: [] };

const capped = (text: string): string =>
  text.length > REJECTED_TEXT_CHARS ? `${text.slice(0, REJECTED_TEXT_CHARS)}…` : text;

const countLines = ({ bytes }: Text): number => {
  let lines = 0;
  for (let at = 0; at < bytes.length; at = afterLineEnd(bytes, lineEndFrom(bytes, at))) lines += 1;
  return lines;
};

type Described = Pick<ReadingShown, 'lineCount' | 'lines'>;

const showLines = (
  text: Text,
  table: DelimitedRead | null,
  outline: Outline | null,
  log: Log | null,
): Described => {
  const lineCount = countLines(text);
  const numbers = pickLines(lineCount, log?.source.rejected.map(({ line }) => line) ?? []);
  const texts = linesIn(text)(numbers);
  const layout = table?.layout ?? outline?.layout ?? null;
  const fates = table === null ? null : fatesByLine(new Set(numbers), table, log);
  const lines = numbers.map((line, index): ShownLine => {
    const words = texts[index] ?? '';
    const byPlace = () =>
      layout === null
        ? ({ kind: 'unread' } as const)
        : fateByPlace(line, words, layout, table?.asideLines ?? null);
    return { place: line, line, text: capped(words), fate: fates?.get(line) ?? byPlace() };
  });
  return { lineCount, lines };
};

/** Rows of a table that is not made of lines: its records, each at the line where it begins. */
const showRecords = (table: TableRead, log: Log | null): Described => {
  const { columns, linesOf, lineOf } = table;
  const rejected: number[] = [];
  const fateOf = fatesByRow(columns, log);
  for (let row = 0; row < columns.length && rejected.length < 200; row += 1) {
    if (fateOf(row).kind === 'rejected') rejected.push(row + 1);
  }
  const rows = pickLines(columns.length, rejected).map((number) => number - 1);
  const places = rows.map((row) => columns.line[row]!);
  const texts = linesOf(places);
  const lines = rows.map((row, index) => ({
    place: row + 1,
    line: lineOf(places[index]!),
    text: capped(texts[index] ?? ''),
    fate: fateOf(row),
  }));
  return { lineCount: columns.length, lines };
};

const isDelimited = (table: TableRead): table is DelimitedRead => 'layout' in table;

const show = (
  text: Text,
  table: TableRead | DelimitedRead | null,
  log: Log | null,
  decisions: ReadingDecisions,
  account: Account,
): ReadingShown => {
  const outline = table === null ? outlineOf(text, decisions) : null;
  const described =
    table !== null && !isDelimited(table)
      ? showRecords(table, log)
      : showLines(text, table, outline, log);
  const sample = table?.sample ?? outline?.sample ?? null;
  const made = account.decisions();
  return {
    ...described,
    columns: sample === null ? [] : shownColumns(sample, table?.plan ?? null, log),
    decisions: made.length > 1 || outline === null ? made : outline.account.decisions(),
    warnings: account.warnings(),
  };
};

const orRefusal = <Value>(make: () => Value): Value | Refusal => {
  try {
    return make();
  } catch (cause) {
    if (cause instanceof Refusal) return cause;
    throw cause;
  }
};

/**
 * Reads a log as `readLog` does, by the same pieces, and can then show a bounded window of its lines
 * with what became of each; where it is refused, as far as it was understood. `fileName` is only
 * carried along. Never throws a Refusal: it is a part of what is shown.
 */
export const readToShow = (
  bytes: Uint8Array,
  fileName: string,
  decisions: ReadingDecisions = {},
  environment: ReadingEnvironment = {},
): ReadingToShow => {
  const account = new Account();
  const text = orRefusal(() => openLogText(bytes, decisions, environment, account));
  if (text instanceof Refusal) return { show: () => NOTHING, log: text };
  const file = { name: fileName, byteLength: bytes.length };
  const table = orRefusal(() => readTable(text, file, decisions, environment, account));
  if (table instanceof Refusal) {
    return { show: () => show(text, null, null, decisions, account), log: table };
  }
  const log = orRefusal(() => assembleLog(table));
  const made = log instanceof Refusal ? null : log;
  return { show: () => show(text, table, made, decisions, account), log };
};

/** Reads a log and shows its lines at once: {@link readToShow}. */
export const showReading = (...of: Parameters<typeof readToShow>): LogShown => {
  const { log, show: showIt } = readToShow(...of);
  return { shown: showIt(), log };
};
