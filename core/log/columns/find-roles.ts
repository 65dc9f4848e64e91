import { temperatureScale } from '../text/unit-text.ts';
import { isNoReadingCode } from '../text/no-reading-codes.ts';
import type { ReasonId } from '../ids.ts';
import { MAX_ZONES } from '../limits.ts';
import { meaningOf, type NameMeaning } from './name-meaning.ts';
import { agrees, type ColumnProfile } from './profile.ts';
import { isProgrammeBeside } from './programme-like.ts';
import type { TableSample } from './sample.ts';

/** Which column is what, beside the time. */
export interface Roles {
  readonly temperature: number;
  readonly why: ReasonId;
  readonly certainty: number;
  /** Columns that would have suited as the main temperature just as well. */
  readonly rivals: readonly number[];
  readonly setpoint: { readonly column: number; readonly why: ReasonId } | null;
  readonly output: { readonly column: number; readonly isPercent: boolean } | null;
  readonly zones: readonly number[];
  /** What each column's name says, for the account. */
  readonly meanings: readonly NameMeaning[];
}

const BY_MEANING: Readonly<Record<NameMeaning, number>> = {
  measured: 100,
  temperature: 90,
  probe: 60,
  unknown: 30,
  elsewhere: 12,
  derived: 10,
  'cold-junction': 0,
  setpoint: 0,
  output: 0,
  'other-quantity': 0,
  index: 0,
};

/** A scale in the header adds this much: more than order, less than a better name. */
const BY_SCALE = 8;
/** Readings of a kiln that never get above this are something else (chosen). */
const COOLEST_PEAK = 10;

/** How well a column suits as the main temperature; 0 if it cannot be. */
const suits = (sample: TableSample, profile: ColumnProfile, meaning: NameMeaning): number => {
  const { numbers, column } = profile;
  const base = BY_MEANING[meaning];
  const unit = sample.units[column] ?? null;
  const scale = temperatureScale(unit);
  if (numbers === null || base === 0 || !agrees(profile)) return 0;
  if (unit !== null && unit !== 'degrees' && scale === null) return 0;
  const isOpen = meaning === 'probe' || meaning === 'unknown';
  // Numbers that rise by one each row count something, unless there is nothing else.
  if (isOpen && numbers.countsUp) return 1;
  const isSmall = isOpen && scale === null && numbers.max < COOLEST_PEAK;
  const isStill = isOpen && numbers.isConstant;
  const isDead = numbers.isConstant && isNoReadingCode(numbers.max);
  const penalty = (isSmall ? 20 : 0) + (isStill ? 4 : 0) + (isDead ? 55 : 0);
  const rare = profile.filled < 0.05 ? 30 : 0;
  return Math.max(1, base + (scale === null ? 0 : BY_SCALE) - penalty - rare);
};

const isNumeric = (profile: ColumnProfile): boolean => profile.numbers !== null && agrees(profile);

/** A setpoint stands in the range of the readings; a programme's number does not. */
const isInRange = (profile: ColumnProfile, main: ColumnProfile): boolean => {
  const asked = profile.numbers;
  const read = main.numbers;
  if (asked === null || read === null) return false;
  return asked.max >= 0.25 * read.max && asked.max <= 4 * Math.max(read.max, 100);
};

const findSetpoint = (
  sample: TableSample,
  meanings: readonly NameMeaning[],
  main: ColumnProfile,
  alike: readonly number[],
): Roles['setpoint'] => {
  const named = sample.profiles.find((profile) => {
    const unit = sample.units[profile.column] ?? null;
    const isScale = unit === null || temperatureScale(unit) !== null;
    const isSetpoint = meanings[profile.column] === 'setpoint' && profile !== main;
    return isSetpoint && isScale && isNumeric(profile) && isInRange(profile, main);
  });
  if (named !== undefined) return { column: named.column, why: 'name' };
  const shaped = alike.find(
    (column) =>
      column !== main.column && isProgrammeBeside(sample.profiles[column]!.values, main.values),
  );
  return shaped === undefined ? null : { column: shaped, why: 'behaviour' };
};

const findOutput = (sample: TableSample, meanings: readonly NameMeaning[]): Roles['output'] => {
  const named = sample.profiles.filter(
    (profile) => meanings[profile.column] === 'output' && isNumeric(profile),
  );
  const isPercent = ({ numbers, column }: ColumnProfile): boolean => {
    const unit = sample.units[column] ?? null;
    const isBare = unit === 'percent' || unit === null || unit === 'mV';
    return isBare && numbers !== null && numbers.min >= 0 && numbers.max <= 100;
  };
  const best = named.find(isPercent) ?? named[0];
  return best === undefined ? null : { column: best.column, isPercent: isPercent(best) };
};

/** Unnamed columns count as zones only if they run in the same range as an unnamed main one. */
const isZone = (
  meaning: NameMeaning,
  profile: ColumnProfile,
  main: ColumnProfile,
  mainMeaning: NameMeaning,
): boolean => {
  if (meaning === 'measured' || meaning === 'temperature') return true;
  const isOpen = meaning === 'probe' || (meaning === 'unknown' && mainMeaning === 'unknown');
  if (!isOpen || profile.numbers === null || main.numbers === null) return false;
  if (profile.numbers.isConstant && !main.numbers.isConstant) return false;
  const { median } = profile.numbers;
  const reach = Math.max(main.numbers.max, 40);
  return median <= 1.5 * reach && profile.numbers.max >= 0.2 * main.numbers.max;
};

interface Ranked {
  readonly profile: ColumnProfile;
  readonly score: number;
}

const whyMain = (
  meaning: NameMeaning,
  hasScale: boolean,
  rivals: number,
): { why: ReasonId; certainty: number } => {
  const isNamed = meaning === 'measured' || meaning === 'temperature';
  if (isNamed) {
    return rivals === 0
      ? { why: 'name', certainty: 0.97 }
      : { why: 'name-and-order', certainty: 0.7 };
  }
  if (rivals > 0) return { why: 'order-only', certainty: 0.5 };
  if (meaning === 'probe') return { why: 'name', certainty: hasScale ? 0.9 : 0.75 };
  return { why: meaning === 'unknown' ? 'behaviour' : 'name', certainty: 0.5 };
};

/** A column that stays below the first is at rest while one beyond the second is a kiln (chosen). */
const AT_REST = 100;
const FIRED = 300;

/**
 * Of columns that suit alike, the first; unless it is a programme that another follows, or stays at
 * room temperature while another is fired.
 */
const passOver = (ranked: readonly Ranked[]): Ranked | undefined => {
  const [first] = ranked;
  const alike = ranked.filter(({ score }) => score === first?.score);
  if (first !== undefined && (first.profile.numbers?.max ?? 0) < AT_REST) {
    const fired = alike.find(({ profile }) => (profile.numbers?.max ?? 0) >= FIRED);
    if (fired !== undefined) return fired;
  }
  const follower = alike.find(
    ({ profile }) =>
      first !== undefined &&
      profile !== first.profile &&
      isProgrammeBeside(first.profile.values, profile.values),
  );
  return follower ?? first;
};

/**
 * Finds the main temperature, the setpoint, the output and the zones among the columns that are
 * not times. Null if no column can be a measured temperature.
 */
export const findRoles = (
  sample: TableSample,
  timeColumns: readonly number[],
  given: number | null,
): Roles | null => {
  const meanings = sample.names.map((name, column) =>
    sample.isNamed ? meaningOf(name, sample.units[column] ?? null) : 'unknown',
  );
  const ranked = sample.profiles
    .filter(({ column }) => !timeColumns.includes(column))
    .map((profile) => ({ profile, score: suits(sample, profile, meanings[profile.column]!) }))
    .filter(({ score }) => score > 0)
    .sort((one, other) => other.score - one.score || one.profile.column - other.profile.column);
  const chosen = given === null ? passOver(ranked)?.profile : sample.profiles[given];
  if (chosen === undefined) return null;
  const meaning = meanings[chosen.column]!;
  const score = ranked.find(({ profile }) => profile === chosen)?.score;
  const alike = ranked
    .filter((other) => other.score === score || other.score >= BY_MEANING.probe)
    .map(({ profile }) => profile.column);
  const setpoint = findSetpoint(sample, meanings, chosen, alike);
  const output = findOutput(sample, meanings);
  const taken = [chosen.column, setpoint?.column, output?.column];
  const zones = ranked
    .map(({ profile }) => profile)
    .filter(({ column }) => !taken.includes(column))
    .filter((profile) => isZone(meanings[profile.column]!, profile, chosen, meaning))
    .map(({ column }) => column)
    .sort((one, other) => one - other)
    .slice(0, MAX_ZONES);
  const rivals = ranked
    .filter((other) => other.score === score && zones.includes(other.profile.column))
    .map(({ profile }) => profile.column);
  const hasScale = temperatureScale(sample.units[chosen.column] ?? null) !== null;
  const reason =
    given === null
      ? whyMain(meaning, hasScale, rivals.length)
      : { why: 'given' as const, certainty: 1 };
  return { temperature: chosen.column, ...reason, rivals, setpoint, output, zones, meanings };
};
