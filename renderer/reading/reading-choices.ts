import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Options, ReadingDecisions } from '../../core/model/options.ts';
import { delimiterName, unitName } from '../../core/wording/reading-ids.ts';
import { sentence } from '../../core/wording/topic.ts';
import type { ChoiceOf } from '../controls/choice.tsx';
import { retold } from '../state/told.ts';

/** What the person says of how the file is to be read, with one thing changed or taken back. */
export const toldReading = (
  options: Options,
  change: { readonly [Key in keyof ReadingDecisions]?: ReadingDecisions[Key] | undefined },
): Options => {
  const said = Object.entries({ ...options.reading, ...change }).filter(
    ([, value]) => value !== undefined,
  );
  const reading: ReadingDecisions = Object.fromEntries(said);
  return retold(options, { reading: said.length === 0 ? undefined : reading });
};

export const UNIT_CHOICES: readonly ChoiceOf<NonNullable<ReadingDecisions['unit']>>[] = (
  ['C', 'F', 'K', 'mV'] as const
).map((value) => ({ value, label: sentence(unitName(value)) }));

export const DAY_ORDER_CHOICES: readonly ChoiceOf<NonNullable<ReadingDecisions['dayOrder']>>[] = [
  { value: 'day-first', label: 'day, month, year' },
  { value: 'month-first', label: 'month, day, year' },
  { value: 'year-first', label: 'year, month, day' },
];

export const DECIMAL_MARK_CHOICES: readonly ChoiceOf<'.' | ','>[] = [
  { value: '.', label: 'a point' },
  { value: ',', label: 'a comma' },
];

export const DELIMITER_CHOICES: readonly ChoiceOf<string>[] = [',', ';', '\t', '|', ' '].map(
  (value) => ({ value, label: sentence(delimiterName(value)) }),
);

const choicesOf = (names: readonly string[]): readonly ChoiceOf<string>[] =>
  [...new Set(names)].filter((name) => name !== '').map((value) => ({ value, label: value }));

/** The columns that could hold the kiln's temperature: all that were met, by name. */
export const temperatureChoices = ({
  source,
}: Pick<AnalysisDocument, 'source'>): readonly ChoiceOf<string>[] =>
  choicesOf(source.channels.map(({ name }) => name));

/** The columns that could hold the time: the one in use first, and all others. */
export const timeChoices = ({
  source,
}: Pick<AnalysisDocument, 'source'>): readonly ChoiceOf<string>[] =>
  choicesOf([...source.time.columns, ...source.channels.map(({ name }) => name)]);

/** What was decided on one matter, in the reader's own words; null where it never came up. */
export const decided = (
  { source }: Pick<AnalysisDocument, 'source'>,
  what: string,
): string | null => source.decisions.find((decision) => decision.what === what)?.choice ?? null;

/** The longest interval between two readings taken as meant: a day (chosen). */
const LONGEST_INTERVAL_SECONDS = 86_400;

/** One plain sentence against an interval that cannot be meant; null where it can. */
export const judgeInterval = (seconds: number): string | null =>
  seconds > 0 && seconds <= LONGEST_INTERVAL_SECONDS
    ? null
    : 'Give the seconds from one row to the next.';
