import type { ReadingShown, ShownLine } from '../../core/log/show/shown.ts';
import { showReading } from '../../core/log/show/show-reading.ts';
import { typedLines, type TypedEntry } from '../../core/log/typed/entries.ts';
import type { Log } from '../../core/model/log.ts';
import { Refusal } from '../../core/model/refusal.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { decisionWords } from '../../core/wording/reading.ts';
import { count, counted } from '../../core/wording/speech.ts';
import { sentence } from '../../core/wording/topic.ts';
import { fateWords } from '../desk/line-words.ts';
import { typedLog, type TypedDraft } from './typed-draft.ts';

/** A curve wants a beginning, an end and something between them. */
export const LEAST_READINGS = 3;

/** A line of what was typed, and how it is understood. */
export interface TypedLine {
  readonly line: number;
  readonly text: string;
  readonly said: string;
  readonly kind: 'kept' | 'rejected' | 'aside';
}

/** How what was typed is understood so far. */
export interface TypedAccount {
  readonly lines: readonly TypedLine[];
  /** The count of readings, and what is still missing. */
  readonly said: string;
  /** The unit and why, where that is the reader's own guess. */
  readonly unitSaid: string | null;
  readonly canOpen: boolean;
  readonly log: Pick<Log, 'atSeconds' | 'celsius'> | null;
}

const NOTHING: TypedAccount = {
  lines: [],
  said: `No reading yet; at least ${LEAST_READINGS} are needed.`,
  unitSaid: null,
  canOpen: false,
  log: null,
};

const KINDS: Partial<Record<ShownLine['fate']['kind'], TypedLine['kind']>> = {
  kept: 'kept',
  rejected: 'rejected',
  unread: 'rejected',
};

const shownLine = ({ line, text, fate }: ShownLine, unit: TemperatureUnit): TypedLine => ({
  ...{ line, text },
  said: fateWords(fate, unit),
  kind: KINDS[fate.kind] ?? 'aside',
});

const pairSaid = ({ time, temperature }: TypedEntry): string =>
  temperature === '' ? `${time}, no temperature` : `${time}, ${temperature}`;

const isPair = ({ time, temperature }: TypedEntry): boolean => time !== '' && temperature !== '';

/** A line by itself, as long as the whole is no log. */
const lineAlone = (line: number, text: string, entries: TypedEntry[] | null): TypedLine => {
  if (entries === null && !/\d/.test(text)) {
    return { line, text, said: 'names of columns, as over a table', kind: 'aside' };
  }
  if (entries === null || entries.some(({ time }) => time === '')) {
    return { line, text, said: 'rejected: no time with a temperature here', kind: 'rejected' };
  }
  const said = entries.length === 0 ? 'a remark' : entries.map(pairSaid).join('; ');
  return { line, text, said, kind: entries.length === 0 ? 'aside' : 'kept' };
};

/** Every line that has something on it, each by itself. */
const linesAlone = (text: string): TypedLine[] => {
  const entries = typedLines(text);
  return text
    .split(/\r\n|[\r\n]/)
    .map((words, index) => lineAlone(index + 1, words, entries[index] ?? null))
    .filter(({ text: words }) => words.trim() !== '');
};

/** Lines that hold no reading stand between the readings where they were typed. */
const withRemarks = (shown: readonly TypedLine[], text: string): TypedLine[] => {
  const taken = new Set(shown.map(({ line }) => line));
  const remarks = linesAlone(text).filter(({ line }) => !taken.has(line));
  return [...shown, ...remarks].sort((a, b) => a.line - b.line);
};

const countSaid = (kept: number, rejected: number): string => {
  const missing = LEAST_READINGS - kept;
  const parts = [
    counted(kept, 'reading'),
    ...(rejected > 0 ? [`${count(rejected)} rejected`] : []),
    ...(missing > 0 ? [`${counted(missing, 'more reading')} needed`] : []),
  ];
  return `${sentence(parts.join('; '))}.`;
};

const unitSaid = ({ decisions }: ReadingShown): string | null => {
  const decision = decisions.find(({ what }) => what === 'unit');
  if (decision?.why !== 'plausible') return null;
  const { said, certainty } = decisionWords(decision);
  return `${sentence(certainty)}: ${said.charAt(0).toLowerCase()}${said.slice(1)}`;
};

/** How what was typed is understood, line by line, by the reader that reads every log. */
export const typedAccount = (draft: TypedDraft, unit: TemperatureUnit): TypedAccount => {
  if (draft.text.trim() === '') return NOTHING;
  const { text, decisions } = typedLog(draft);
  const { shown, log } = showReading(new TextEncoder().encode(text), '', decisions);
  if (log instanceof Refusal) {
    const lines = linesAlone(draft.text);
    const readings = typedLines(draft.text)
      .flatMap((entries) => entries ?? [])
      .filter(isPair).length;
    const why = readings > 0 && readings < LEAST_READINGS ? '' : ` ${sentence(log.message)}.`;
    const rejected = lines.filter(({ kind }) => kind === 'rejected').length;
    const said = `${countSaid(readings, rejected)}${why}`;
    return { lines, said, unitSaid: null, canOpen: false, log: null };
  }
  const read = shown.lines
    .map((line) => shownLine(line, unit))
    .filter(({ text: words }) => words.trim() !== '');
  const lines = log.source.format === 'typed-in' ? withRemarks(read, text) : read;
  const { rowsKept, rowsRejected } = log.source;
  return {
    lines,
    said: countSaid(rowsKept, rowsRejected),
    unitSaid: unitSaid(shown),
    canOpen: rowsKept >= LEAST_READINGS,
    log,
  };
};
