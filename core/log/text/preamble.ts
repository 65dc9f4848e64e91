import { unitOfText, temperatureScale } from './unit-text.ts';
import { fold } from './fold.ts';
import { parseNumber } from './number.ts';
import { parseQuantity } from './quantity.ts';
import { timeScale, secondsIn } from './unit-text.ts';
import { scanStamp, type Stamp } from '../time/stamp.ts';
import type { ChannelUnit } from '../../model/options.ts';
import type { DayOrder } from '../time/date-order.ts';
import { parseDuration } from '../time/duration.ts';

/** A line above the table that says something by name: `Log Interval = 00:30:00`. */
export interface PreambleEntry {
  readonly key: string;
  readonly value: string;
}

/** What stands above a table, or beside the columns of a JSON file. */
export interface Preamble {
  readonly entries: readonly PreambleEntry[];
  readonly lines: readonly string[];
}

export const EMPTY_PREAMBLE: Preamble = { entries: [], lines: [] };

const COMMENT_SIGNS = /^[#;!%*'"\s/]+/;
const SEPARATOR = /[:=,;\t|]/;

/** The name and the value of a line; null if it has not both. */
const entryOf = (line: string): PreambleEntry | null => {
  const bare = line.replace(COMMENT_SIGNS, '').replace(/[,;\t|\s]+$/, '');
  const at = bare.search(SEPARATOR);
  if (at <= 0) return null;
  const value = bare
    .slice(at + 1)
    .replace(/^[:=,;\t|\s"]+/, '')
    .replace(/"$/, '')
    .trim();
  return { key: bare.slice(0, at).trim(), value };
};

export const makePreamble = (lines: readonly string[]): Preamble => ({
  lines,
  entries: lines.map(entryOf).filter((entry) => entry !== null),
});

const isUnitKey = (key: string): boolean =>
  /unit|einheit|unite|unidad|eenheid|temp|scale|skala/.test(fold(key));

/** The temperature unit that the preamble declares: `Unit: °F`, `Temperature = °C`. */
export const declaredUnit = ({ entries, lines }: Preamble): ChannelUnit | null => {
  for (const { key, value } of entries) {
    const unit = isUnitKey(key) ? temperatureScale(unitOfText(value)) : null;
    if (unit !== null) return unit;
  }
  return scaleMentioned(lines);
};

/** A number with its degrees in running text: `Heat to 800.00 °C`. */
const WITH_DEGREES = /\d\s?[°º˚]\s?([CFK])(?![a-z])/g;

/** The one scale in which the preamble gives degrees, or null if it gives none or several. */
const scaleMentioned = (lines: readonly string[]): ChannelUnit | null => {
  const scales = new Set(
    lines.flatMap((line) => [...line.matchAll(WITH_DEGREES)].map(([, scale]) => scale)),
  );
  const [only] = scales;
  return scales.size === 1 && only !== undefined ? (only as ChannelUnit) : null;
};

const isIntervalKey = (key: string): boolean =>
  /interval|sample rate|sampling|sample period|log rate|logging|abtast|intervall|periode|intervalo|intervallo|takt|cadence|frequence/.test(
    fold(key),
  );

const spanSeconds = (key: string, value: string): number => {
  const stamp = scanStamp(value);
  if (stamp?.clockSeconds != null && stamp.date.length === 0) return stamp.clockSeconds;
  const duration = parseDuration(value);
  if (!Number.isNaN(duration)) return duration;
  const quantity = parseQuantity(value, '.');
  if (quantity !== null) {
    const unit = timeScale(quantity.unit);
    return unit === null ? Number.NaN : quantity.value * secondsIn(unit);
  }
  const inKey = timeScale(unitOfText(/[[(]([^\])]+)[\])]/.exec(key)?.[1] ?? ''));
  return parseNumber(value, '.') * (inKey === null ? 1 : secondsIn(inKey));
};

/** The seconds between rows that the preamble declares, or null. */
export const declaredInterval = ({ entries }: Preamble): number | null => {
  for (const { key, value } of entries) {
    const span = isIntervalKey(key) ? spanSeconds(key, value) : Number.NaN;
    if (span > 0) return span;
  }
  return null;
};

const PATTERNS: readonly (readonly [RegExp, DayOrder])[] = [
  [/\b(?:dd?|tt|jj|gg)[./-]mm?[./-](?:yy|jj|aa)/, 'day-first'],
  [/\bmm?[./-](?:dd?|tt|jj|gg)[./-](?:yy|jj|aa)/, 'month-first'],
  [/\b(?:yy(?:yy)?|jjjj|aaaa)[./-]mm?[./-](?:dd?|tt|jj|gg)/, 'year-first'],
];

/** The order of day and month that a text spells out as a pattern, such as `DD/MM/YYYY`. */
export const declaredDayOrder = (texts: readonly string[]): DayOrder | null => {
  for (const text of texts) {
    const found = PATTERNS.find(([pattern]) => pattern.test(text.toLowerCase()));
    if (found !== undefined) return found[1];
  }
  return null;
};

/** Dates that stand as values above the table. */
export const preambleDates = ({ entries }: Preamble): readonly Stamp[] =>
  entries
    .map(({ value }) => scanStamp(value))
    .filter((stamp) => stamp !== null)
    .filter((stamp) => stamp.date.length === 3);

/** The decimal mark that the preamble declares, or null. */
export const declaredDecimalMark = ({ entries }: Preamble): '.' | ',' | null => {
  for (const { key, value } of entries) {
    if (!/decimal|dezimal|decimale/.test(fold(key))) continue;
    if (value === '.' || /^(point|dot|period|punkt|punto|punt)$/i.test(value)) return '.';
    if (value === ',' || /^(comma|komma|virgule|coma|virgola)$/i.test(value)) return ',';
  }
  return null;
};

const NAMED_DELIMITERS: ReadonlyMap<string, string> = new Map([
  ...(['comma', 'komma', 'virgule', 'coma', 'virgola'] as const).map(
    (name) => [name, ','] as const,
  ),
  ...(['semicolon', 'semikolon', 'strichpunkt'] as const).map((name) => [name, ';'] as const),
  ...(['tab', 'tabulator', 'tabulation'] as const).map((name) => [name, '\t'] as const),
]);

/** The delimiter that the preamble declares (`sep=;`, `#SEPARATOR:SEMICOLON`), or null. */
export const declaredDelimiter = ({ lines, entries }: Preamble): string | null => {
  const first = /^sep=(.)$/.exec(lines[0]?.trim() ?? '')?.[1];
  if (first !== undefined) return first;
  for (const { key, value } of entries) {
    if (!/^(field |list |column )?(separator|delimiter|trennzeichen)$/.test(fold(key))) continue;
    const named = NAMED_DELIMITERS.get(fold(value));
    if (named !== undefined) return named;
  }
  return null;
};
