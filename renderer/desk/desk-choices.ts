import type { ReadingShown } from '../../core/log/show/shown.ts';
import type { Decision } from '../../core/model/source.ts';
import {
  COUPLE_TYPES,
  TIME_UNITS,
  type CoupleType,
  type ReadingDecisions,
  type TimeOrigin,
  type TimeUnit,
} from '../../core/model/options.ts';
import { decisionReason, delimiterName, unitName } from '../../core/wording/reading-ids.ts';
import { decisionWords } from '../../core/wording/reading.ts';
import type { ChoiceOf } from '../controls/choice.tsx';
import {
  DAY_ORDER_CHOICES,
  DECIMAL_MARK_CHOICES,
  DELIMITER_CHOICES,
} from '../reading/reading-choices.ts';

const TIME_UNIT_NAMES: Readonly<Record<TimeUnit, string>> = {
  ns: 'nanoseconds',
  us: 'microseconds',
  ms: 'milliseconds',
  s: 'seconds',
  min: 'minutes',
  h: 'hours',
  d: 'days',
};

export const TIME_UNIT_CHOICES: readonly ChoiceOf<TimeUnit>[] = TIME_UNITS.map((value) => ({
  value,
  label: TIME_UNIT_NAMES[value],
}));

export const TIME_ORIGIN_CHOICES: readonly ChoiceOf<TimeOrigin>[] = [
  { value: 'elapsed', label: 'the log’s beginning' },
  { value: 'epoch', label: '1970' },
  { value: 'serial', label: 'day 0 of spreadsheets' },
];

export const COUPLE_CHOICES: readonly ChoiceOf<CoupleType>[] = COUPLE_TYPES.map((value) => ({
  value,
  label: `type ${value}`,
}));

/** Encodings of old that loggers still write, beside those that a file can prove (chosen). */
export const ENCODING_CHOICES: readonly ChoiceOf<string>[] = [
  ...['utf-8', 'utf-16le', 'utf-16be', 'windows-1252', 'windows-1250', 'windows-1251'],
  ...['iso-8859-2', 'iso-8859-15', 'macintosh', 'ibm866', 'shift_jis', 'gb18030'],
].map((value) => ({ value, label: value }));

export const ALL_DELIMITER_CHOICES: readonly ChoiceOf<string>[] = [
  ...DELIMITER_CHOICES,
  { value: 'fixed', label: 'Columns of fixed width' },
];

const labelIn = (choices: readonly ChoiceOf<string>[], value: string): string =>
  choices.find((choice) => choice.value === value)?.label ?? value;

const CHOICE_WORDS: Readonly<Record<string, (choice: string) => string>> = {
  delimiter: delimiterName,
  'decimal-mark': (choice) => labelIn(DECIMAL_MARK_CHOICES, choice),
  'header-line': (choice) => (/^\d+$/.test(choice) ? `line ${choice}` : 'no line'),
  'time-unit': (choice) => labelIn(TIME_UNIT_CHOICES, choice),
  'day-order': (choice) => labelIn(DAY_ORDER_CHOICES, choice),
  interval: (choice) => (/^[\d.]+$/.test(choice) ? `${choice} s` : choice),
  unit: unitName,
};

/** What the reader decided by itself on one matter. */
export interface OwnChoice {
  /** Its choice in a few words, for the box; null where it made none or the person made it. */
  readonly choice: string | null;
  /** Why, and how surely. */
  readonly why: string | undefined;
  readonly isGuess: boolean;
}

/** The id of the reader's own decision on a matter: `day-order` of `dayOrder`. */
export const decisionOf = (matter: keyof ReadingDecisions): string =>
  matter.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** The reader's own choice on a matter, for the control by which it is changed. */
export const ownChoice = (decisions: readonly Decision[], what: string): OwnChoice => {
  const decision = decisions.find((one) => one.what === what);
  if (decision === undefined) return { choice: null, why: undefined, isGuess: false };
  if (decision.why === 'given') return { choice: null, why: 'as you said', isGuess: false };
  const { certainty, isGuess } = decisionWords(decision);
  return {
    choice: CHOICE_WORDS[what]?.(decision.choice) ?? decision.choice,
    why: `${isGuess ? '◇ ' : ''}${certainty}: ${decisionReason(decision.why)}`,
    isGuess,
  };
};

/** The words in a box in which the person has chosen nothing. */
export const asTheFileSays = ({ choice }: OwnChoice): string =>
  choice === null ? 'as the file says' : `${choice} (as read)`;

/** Below this the letters of a file are worth a look (chosen). */
const CERTAIN_OF_LETTERS = 0.9;

const DATE = /^\d{4}-\d{2}-\d{2}$/;

export const judgeDate = (text: string): string | null =>
  DATE.test(text) && !Number.isNaN(Date.parse(text))
    ? null
    : 'Write the day as year-month-day: 2026-03-14.';

export const judgeZone = (text: string): string | null => {
  try {
    new Intl.DateTimeFormat('en', { timeZone: text });
    return null;
  } catch {
    return 'Give the zone by its place: Europe/Berlin, America/Denver.';
  }
};

/** Marks as they are typed, parted by blanks or semicolons; a comma may stand within a number. */
export const marksFrom = (text: string): string[] =>
  [...new Set(text.split(/[\s;]+/))].filter((mark) => mark !== '');

/** Lines that may hold the names of the columns: the first with something on them. */
export const headerChoices = (
  lines: readonly { readonly line: number; readonly text: string }[],
): readonly ChoiceOf<string>[] => [
  { value: 'none', label: 'no line: the columns have no names' },
  ...lines
    .filter(({ text }) => text.trim() !== '')
    .slice(0, 30)
    .map(({ line, text }) => ({
      value: String(line),
      label: `line ${line}: ${text.slice(0, 60)}`,
    })),
];

/** What is told by a choice of {@link headerChoices}. */
export const headerFrom = (choice: string | null): number | null | undefined =>
  choice === null ? undefined : choice === 'none' ? null : Number(choice);

export const headerTold = ({ headerLine }: ReadingDecisions): string | null =>
  headerLine === undefined ? null : headerLine === null ? 'none' : String(headerLine);

/** The matters about which a log raises a question; the others are out of sight until wanted. */
export const mattersOf = (
  { decisions, warnings }: Pick<ReadingShown, 'decisions' | 'warnings'>,
  told: ReadingDecisions,
): ReadonlySet<keyof ReadingDecisions> => {
  const made = new Map(decisions.map((decision) => [decision.what, decision]));
  const isBare = made.has('time-unit');
  const isDated = made.has('day-order') || made.has('time-pattern');
  const isVolts = /^[mu]V$/.test(told.unit ?? made.get('unit')?.choice ?? '');
  const isRefused = !made.has('time-column') && !made.has('interval');
  const asked: readonly (readonly [keyof ReadingDecisions, boolean])[] = [
    ['unit', true],
    ['coupleType', isVolts],
    ['coldJunctionC', isVolts],
    ['dayOrder', isRefused || made.has('day-order')],
    ['timeUnit', isRefused || isBare],
    ['timeFrom', isRefused || isBare],
    ['intervalSeconds', isRefused || made.has('interval')],
    ['firstDate', warnings.includes('no-date')],
    ['timeZone', isDated && !isBare],
    ['delimiter', true],
    ['headerLine', true],
    ['decimalMark', true],
    ['encoding', (made.get('encoding')?.certainty ?? 0) < CERTAIN_OF_LETTERS],
    ['noReadingMarks', true],
  ];
  const raised = asked.filter(([key, isRaised]) => isRaised || told[key] !== undefined);
  return new Set(raised.map(([key]) => key));
};
