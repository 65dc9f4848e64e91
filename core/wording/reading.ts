import type { AnalysisDocument } from '../model/document.ts';
import type { Channel, Decision, RejectedRow, Source } from '../model/source.ts';
import type { Repair, TraceSummary } from '../model/trace.ts';
import type { TemperatureUnit } from '../units.ts';
import {
  decisionClause,
  decisionReason,
  delimiterName,
  rejectionReason,
  timeAssumption,
  unitName,
  warningSentence,
} from './reading-ids.ts';
import { counted, duration, interval, type Speech } from './speech.ts';
import { sentence } from './topic.ts';

/** One decision of the reader. */
export interface DecisionWords {
  readonly said: string;
  /** `certain`, `fairly sure`, `likely`, `a guess`. */
  readonly certainty: string;
  readonly isGuess: boolean;
}

export interface RejectedWords {
  readonly line: number;
  readonly reason: string;
  readonly text: string;
}

/** One of several firings in a log. */
export interface FiringChoiceWords {
  /** From 1, as the decision counts them. */
  readonly number: number;
  /** When it began, how long it took and how hot it was. */
  readonly said: string;
  readonly isChosen: boolean;
}

/** How the log was read: the short account, and everything behind it. */
export interface ReadingWords {
  /** Three to six sentences that hold the account. */
  readonly account: readonly string[];
  readonly decisions: readonly DecisionWords[];
  readonly warnings: readonly string[];
  readonly assumptions: readonly string[];
  readonly repairs: readonly string[];
  /** A sentence for each of several firings in the log; none where it holds one. */
  readonly firings: readonly string[];
  /** The same, in a few words each, to choose from. */
  readonly firingChoices: readonly FiringChoiceWords[];
  readonly rejected: readonly RejectedWords[];
  /** How many rejected rows the document counts but does not list. */
  readonly rejectedUnlisted: number;
}

/** From which certainty on a decision is called what. */
const CERTAINTIES: readonly [from: number, word: string][] = [
  [0.95, 'certain'],
  [0.8, 'fairly sure'],
  [0.6, 'likely'],
  [0, 'a guess'],
];
const GUESS_BELOW = 0.6;

const certaintyWord = (certainty: number): string =>
  CERTAINTIES.find(([from]) => certainty >= from)?.[1] ?? 'a guess';

const FORMATS: Readonly<Record<Source['format'], string>> = {
  delimited: 'delimited text',
  json: 'JSON',
  'json-lines': 'JSON, one row a line',
  'typed-in': 'readings typed in by hand',
};

const shapeSentence = (source: Source): string => {
  const parts = source.delimiter === null ? '' : `, parted by ${delimiterName(source.delimiter)}`;
  const comma = source.decimalMark === ',' ? ', with decimal commas' : '';
  const header =
    source.headerLine === null ? '' : `; the columns are named on line ${source.headerLine}`;
  return `Read as ${FORMATS[source.format]} (${source.encoding})${parts}${comma}${header}.`;
};

/** The channel of the kiln's temperature; other places in it are chosen channels too. */
const mainChannel = ({ channels, decisions }: Source): Channel | undefined => {
  const measured = channels.filter(({ chosen, role }) => chosen && role === 'temperature');
  const decided = decisions.find(({ what }) => what === 'temperature-column')?.choice;
  return measured.find(({ name }) => name === decided) ?? measured[0];
};

const columnsSentence = (source: Source): string => {
  const { time } = source;
  const main = mainChannel(source);
  const stamp = time.columns.map((name) => `“${name}”`).join(' and ');
  const when = stamp === '' ? `Time: ${time.pattern}` : `Time from ${stamp} (${time.pattern})`;
  if (!main) return `${when}.`;
  const unit = main.unit === null ? '' : ` in ${unitName(main.unit)}`;
  return `${when}; the kiln’s temperature from “${main.name}”${unit}.`;
};

const rowsSentence = ({ rowsRead, rowsKept, rowsRejected }: Source): string =>
  rowsRejected === 0
    ? `${sentence(counted(rowsRead, 'row'))} read, all kept.`
    : `${sentence(counted(rowsRead, 'row'))} read: ${counted(rowsKept, 'row')} kept, ${counted(rowsRejected, 'row')} rejected.`;

const traceSentence = (trace: TraceSummary, say: Speech): string => {
  const step = trace.resolutionC > 0 ? `, in steps of ${say.difference(trace.resolutionC)}` : '';
  return `A reading every ${interval(trace.medianIntervalSeconds)} over ${duration(trace.durationSeconds)}${step}; the noise is about ${say.difference(trace.noiseC)}.`;
};

const REPAIRS: Readonly<Record<Repair['kind'], [one: string, many: string]>> = {
  spike: ['spike taken out', 'spikes taken out'],
  dropout: ['dropout taken out', 'dropouts taken out'],
  'out-of-range': ['impossible reading taken out', 'impossible readings taken out'],
  duplicate: ['doubled row dropped', 'doubled rows dropped'],
  'out-of-order': ['row put back in order', 'rows put back in order'],
  'clock-jump': ['jump of the clock put straight', 'jumps of the clock put straight'],
};

/** What was repaired, a clause for each kind. */
const repairClauses = (repairs: readonly Repair[]): string[] =>
  Object.entries(REPAIRS).flatMap(([kind, [one, many]]) => {
    const mine = repairs.filter((repair) => repair.kind === kind);
    if (mine.length === 0) return [];
    const times = mine.slice(0, 3).map(({ fromSeconds }) => duration(fromSeconds));
    const where = `at ${times.join(', ')}${mine.length > 3 ? ' …' : ''}`;
    return `${counted(mine.length, one, many)} (${where})`;
  });

type FiringInLog = NonNullable<Source['firings']>[number];

const beginsAt = ({ startInstant, startSeconds }: FiringInLog): string =>
  startInstant === null
    ? `${duration(startSeconds)} into the log`
    : startInstant.slice(0, 16).replace('T', ' ');

const firingChoices = ({ firings = [] }: Source, say: Speech): FiringChoiceWords[] =>
  firings.map((firing, index) => ({
    number: index + 1,
    said: `${beginsAt(firing)}, ${duration(firing.endSeconds - firing.startSeconds)}, to ${say.temperature(firing.peakC)}`,
    isChosen: firing.chosen,
  }));

/** Each of several firings in a log: when it began, how long and how hot it was. */
const firingSentences = ({ firings = [] }: Source, say: Speech): string[] =>
  firings.map((firing, index) => {
    const { startSeconds, endSeconds, peakC, chosen } = firing;
    const begins = beginsAt(firing);
    const lasts = duration(endSeconds - startSeconds);
    const mark = chosen ? ': the one analysed here' : '';
    return `Firing ${index + 1} of ${firings.length} begins ${begins}, lasts ${lasts} and peaks at ${say.temperature(peakC)}${mark}.`;
  });

const holesSentence = ({ gaps, noReadings }: TraceSummary): string | null => {
  if (gaps.length + noReadings.length === 0) return null;
  const total = [...gaps, ...noReadings].reduce(
    (sum, { fromSeconds, toSeconds }) => sum + toSeconds - fromSeconds,
    0,
  );
  const parts = [
    gaps.length > 0 ? counted(gaps.length, 'gap') : null,
    noReadings.length > 0
      ? counted(noReadings.length, 'stretch without a reading', 'stretches without a reading')
      : null,
  ].filter((part) => part !== null);
  return `${sentence(parts.join(' and '))}, ${duration(total)} in all, stay holes.`;
};

/** Whether a decision is so uncertain that the person should look at it. */
export const isGuess = ({ certainty }: Pick<Decision, 'certainty'>): boolean =>
  certainty < GUESS_BELOW;

/** One decision in words. */
export const decisionWords = (decision: Decision, unit: TemperatureUnit = 'C'): DecisionWords => ({
  said: `${sentence(decisionClause(decision.what, decision.choice, unit))}: ${decisionReason(decision.why)}.`,
  certainty: certaintyWord(decision.certainty),
  isGuess: isGuess(decision),
});

const rejectedWords = ({ line, reason, text }: RejectedRow): RejectedWords => ({
  line,
  reason: rejectionReason(reason),
  text,
});

const accountOf = (source: Source): string[] => [
  shapeSentence(source),
  columnsSentence(source),
  rowsSentence(source),
];

/** How the log was read, in the reader's words; of two joined logs both, the earlier one first. */
export const readingWords = (
  { source, joined, trace }: Pick<AnalysisDocument, 'source' | 'trace' | 'joined'>,
  say: Speech,
): ReadingWords => {
  const repairs = repairClauses(trace.repairs);
  const both = joined ? [source, joined.source] : [source];
  return {
    account: [
      ...accountOf(source),
      ...(joined
        ? [`The second log, ${joined.source.fileName}:`, ...accountOf(joined.source)]
        : []),
      traceSentence(trace, say),
      holesSentence(trace),
      repairs.length === 0 ? null : `${sentence(repairs.join('; '))}.`,
    ].filter((said) => said !== null),
    decisions: both.flatMap(({ decisions }) =>
      decisions.map((one) => decisionWords(one, say.unit)),
    ),
    // Two logs of one logger are warned of alike: once is enough.
    warnings: [...new Set(both.flatMap(({ warnings }) => warnings.map(warningSentence)))],
    assumptions: source.time.assumptions.map(timeAssumption),
    repairs,
    firings: firingSentences(source, say),
    firingChoices: firingChoices(source, say),
    rejected: source.rejected.map(rejectedWords),
    rejectedUnlisted: source.rowsRejected - source.rejected.length,
  };
};
