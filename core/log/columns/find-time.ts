import { scanStamp } from '../time/stamp.ts';
import { timeScale } from '../text/unit-text.ts';
import { classOfStamp } from '../text/cell-class.ts';
import { fold } from '../text/fold.ts';
import { isDottedClock } from '../time/dotted-clock.ts';
import { clockSeconds } from '../time/time-reader.ts';
import { looksLikeEpoch, looksLikeSerial } from '../time/numeric-time.ts';
import { meaningOf, speaksOfTime } from './name-meaning.ts';
import { agrees, holdsTimes, type ColumnProfile } from './profile.ts';
import type { TableSample } from './sample.ts';

/** A place where the time could be, before the order of day and month is decided. */
export interface TimeCandidate {
  readonly form: 'stamp' | 'date-and-clock' | 'parts' | 'clock' | 'clock-parts' | 'number';
  readonly columns: readonly number[];
  readonly score: number;
}

/** A column of times must not fall back in more than this share of its steps (chosen). */
const MOSTLY_RISING = 0.9;
/** Below this share of distinct stamps a finer column of numbers is better (chosen). */
const COARSE_STAMPS = 0.5;

const distinctShare = (profile: ColumnProfile, rows: number): number =>
  profile.distinct / Math.max(1, Math.min(rows, 1000));

const isStuck = (profile: ColumnProfile, rows: number): boolean =>
  rows > 2 && profile.distinct <= 1;

/** Numbers of twelve or fourteen digits that are a date and a clock: `20240131140500`. */
const isCompactStamp = ({ numbers }: ColumnProfile): boolean =>
  numbers !== null &&
  numbers.isInteger &&
  [numbers.min, numbers.median, numbers.max].every(
    (value) => /^(?:\d{12}|\d{14})$/.test(String(value)) && isDated(String(value)),
  );

const isDated = (digits: string): boolean => {
  const stamp = scanStamp(digits);
  return stamp !== null && classOfStamp(stamp) === 'stamp' && Number(digits.slice(0, 4)) > 1990;
};

const stampCandidates = ({ profiles, rows, names }: TableSample): TimeCandidate[] =>
  profiles
    .filter((profile) => (profile.kind === 'stamp' || isCompactStamp(profile)) && agrees(profile))
    .filter((profile) => !isStuck(profile, rows.length))
    .map((profile) => {
      const share = distinctShare(profile, rows.length);
      const named = speaksOfTime(names[profile.column] ?? '') ? 2 : 0;
      const coarse = share < COARSE_STAMPS ? 30 : 0;
      return {
        form: 'stamp',
        columns: [profile.column],
        score: 100 + named + (profile.filled > 0.9 ? 2 : 0) - coarse,
      };
    });

/** Eight digits under a name that speaks of a date are one: `20240131`. */
const isCompactDate = ({ numbers }: ColumnProfile): boolean =>
  numbers !== null && numbers.isInteger && numbers.min >= 19_700_101 && numbers.max <= 21_001_231;

const isCompactClock = ({ numbers }: ColumnProfile): boolean =>
  numbers !== null && numbers.isInteger && numbers.min >= 0 && numbers.max <= 235_959;

/** Whole days of a spreadsheet, from 1982 to 2119. */
const isSerialDate = ({ numbers }: ColumnProfile): boolean =>
  numbers !== null && numbers.isInteger && numbers.min >= 30_000 && numbers.max < 80_000;

/** The time of day as a spreadsheet counts it. */
const isDayShare = ({ numbers }: ColumnProfile): boolean =>
  numbers !== null && !numbers.isInteger && numbers.min >= 0 && numbers.max <= 1;

const isDottedOrEmpty = (cell: string): boolean => cell === '' || isDottedClock(cell);

const dateAndClock = (sample: TableSample): TimeCandidate[] => {
  const { profiles, rows, names } = sample;
  const timed = (profile: ColumnProfile): boolean => speaksOfTime(names[profile.column] ?? '');
  const dates = profiles.filter(
    (profile) =>
      (profile.kind === 'date' && agrees(profile)) ||
      ((isCompactDate(profile) || isSerialDate(profile)) && timed(profile)),
  );
  return dates.flatMap((date) => {
    const clocks = profiles.filter((profile) => {
      if (profile === date || isStuck(profile, rows.length)) return false;
      if (profile.kind === 'clock' && agrees(profile)) return true;
      const isDotted = rows.every((row) => isDottedOrEmpty(row[profile.column] ?? ''));
      const isCompact = isCompactDate(date) && isCompactClock(profile);
      const isShare = isSerialDate(date) && isDayShare(profile);
      return timed(profile) && (isDotted || isCompact || isShare);
    });
    const nearest = clocks.sort(
      (one, other) => Math.abs(one.column - date.column) - Math.abs(other.column - date.column),
    )[0];
    if (nearest === undefined) return [];
    return [{ form: 'date-and-clock', columns: [date.column, nearest.column], score: 95 }];
  });
};

const risingShare = (values: readonly number[]): number => {
  const present = values.filter((value) => !Number.isNaN(value));
  const rises = present.filter((value, index) => index > 0 && value >= present[index - 1]!).length;
  return rises / Math.max(1, present.length - 1);
};

const clockCandidates = ({ profiles, rows, names }: TableSample): TimeCandidate[] =>
  profiles
    .filter((profile) => profile.kind !== 'stamp' && profile.kind !== 'date')
    .filter((profile) => holdsTimes(profile) && !isStuck(profile, rows.length))
    .map((profile) => {
      const seconds = rows.map((row) => clockSeconds(row[profile.column] ?? ''));
      const rising = risingShare(seconds);
      const named = speaksOfTime(names[profile.column] ?? '') ? 2 : 0;
      const total = /total|elapsed|gesamt/i.test(names[profile.column] ?? '') ? 2 : 0;
      const steady = rising > 0.98 ? 4 : 0;
      return {
        form: 'clock',
        columns: [profile.column],
        score: (runsOneWay(rising) ? 80 : 40) + named + total + steady,
      };
    });

/** Names of the parts of a date and a clock, from the year to the second. */
const PART_NAMES: readonly (readonly string[])[] = [
  ['year', 'yyyy', 'yr', 'jahr', 'annee', 'ano', 'anno', 'jaar'],
  ['month', 'mon', 'mm', 'monat', 'mois', 'mes', 'mese', 'maand'],
  ['day', 'dd', 'tag', 'jour', 'dia', 'giorno', 'dag'],
  ['hour', 'hours', 'hh', 'hr', 'stunde', 'heure', 'hora', 'ora', 'uur'],
  ['minute', 'minutes', 'min', 'mi', 'minuto', 'minuut'],
  ['second', 'seconds', 'sec', 'ss', 'sekunde', 'seconde', 'segundo', 'secondo'],
];

/** A column each for the year, the month and so on. */
const partCandidates = ({ names, profiles, isNamed }: TableSample): TimeCandidate[] => {
  if (!isNamed) return [];
  const folded = names.map((name) => fold(name).trim());
  const columns = PART_NAMES.map((words) =>
    folded.findIndex((name, column) => words.includes(name) && profiles[column]?.kind === 'number'),
  );
  const isWhole = columns.slice(0, 4).every((column) => column >= 0);
  return isWhole ? [{ form: 'parts', columns, score: 99 }] : [];
};

/** Words for the parts of a time elapsed, beside those of a clock. */
const ELAPSED_PARTS: readonly (readonly string[])[] = [
  [...PART_NAMES[3]!, 'h', 'std', 'stunden', 'heures', 'horas', 'ore', 'uren'],
  [...PART_NAMES[4]!, 'm', 'minuten', 'minutos', 'minuti'],
  [...PART_NAMES[5]!, 's', 'sekunden', 'secondes', 'segundos', 'secondi', 'seconden'],
];

/** Whole numbers from 0 up to so many, as minutes and seconds are beside hours. */
const isCounted = (profile: ColumnProfile | undefined, most: number): boolean => {
  const numbers = profile?.numbers ?? null;
  return numbers !== null && numbers.isInteger && numbers.min >= 0 && numbers.max <= most;
};

/** Hours and minutes, and perhaps seconds, in a column each, and no date. */
const clockPartCandidates = ({ names, profiles, isNamed }: TableSample): TimeCandidate[] => {
  if (!isNamed) return [];
  const folded = names.map((name) =>
    fold(name)
      .replace(/[()[\]:.]/g, '')
      .trim(),
  );
  const [hours = -1, minutes = -1, seconds = -1] = ELAPSED_PARTS.map((words, part) =>
    folded.findIndex(
      (name, column) =>
        words.includes(name) && isCounted(profiles[column], part === 0 ? Infinity : 59),
    ),
  );
  if (hours < 0 || minutes < 0) return [];
  return [{ form: 'clock-parts', columns: [hours, minutes, seconds], score: 79 }];
};

/** Newest first: a time that falls in nearly every step rises the other way round. */
const runsOneWay = (rising: number): boolean =>
  rising >= MOSTLY_RISING || rising <= 1 - MOSTLY_RISING;

const numberScore = (sample: TableSample, profile: ColumnProfile): number => {
  const { numbers, column } = profile;
  const name = sample.names[column] ?? '';
  const unit = sample.units[column] ?? null;
  if (numbers === null || numbers.isConstant || !runsOneWay(numbers.rising)) return 0;
  if (looksLikeEpoch(numbers)) return 90;
  const isTimeUnit = timeScale(unit) !== null;
  const named = sample.isNamed && speaksOfTime(name);
  if (looksLikeSerial(profile)) return named || !sample.isNamed ? 88 : 45;
  if (unit !== null && !isTimeUnit) return 0;
  const meaning = meaningOf(name, unit);
  if (sample.isNamed && meaning === 'index') return 0;
  const strict = profile.distinct >= 0.9 * Math.min(1000, numbers.count) ? 2 : 0;
  if (named || isTimeUnit) return 74 + (named && isTimeUnit ? 2 : 0) + strict;
  const isOpen = meaning === 'unknown' || meaning === 'probe';
  if (!isOpen || numbers.min < 0) return 0;
  // Unnamed numbers that only ever rise, ahead of everything else, are a time more often than not.
  return column === 0 && numbers.rising === 1 ? 50 + strict : 0;
};

const numberCandidates = (sample: TableSample): TimeCandidate[] =>
  sample.profiles
    .filter((profile) => profile.kind === 'number' && agrees(profile))
    .map((profile) => ({
      form: 'number' as const,
      columns: [profile.column],
      score: numberScore(sample, profile),
    }))
    .filter(({ score }) => score > 0);

/** Every place where the time could be, the likeliest first; of equals, the leftmost. */
export const findTime = (sample: TableSample): readonly TimeCandidate[] =>
  [
    ...stampCandidates(sample),
    ...dateAndClock(sample),
    ...partCandidates(sample),
    ...clockPartCandidates(sample),
    ...clockCandidates(sample),
    ...numberCandidates(sample),
  ].sort((one, other) => other.score - one.score || one.columns[0]! - other.columns[0]!);

/** The candidate that the person's own columns make, or null if they hold no times. */
export const givenTime = (
  sample: TableSample,
  columns: readonly number[],
): TimeCandidate | null => {
  const profiles = columns.map((column) => sample.profiles[column]!);
  const [first, second] = profiles;
  if (first === undefined) return null;
  if (second !== undefined) {
    const [date, clock] = first.kind === 'clock' ? [second, first] : [first, second];
    return { form: 'date-and-clock', columns: [date.column, clock.column], score: 100 };
  }
  if (first.kind === 'number') return { form: 'number', columns, score: 100 };
  if (first.kind === 'stamp' || first.kind === 'date')
    return { form: 'stamp', columns, score: 100 };
  return holdsTimes(first) ? { form: 'clock', columns, score: 100 } : null;
};
