import { isVoltage, temperatureScale } from '../text/unit-text.ts';
import { isNoReadingCode } from '../text/no-reading-codes.ts';
import type { ReasonId } from '../ids.ts';
import { MAX_ZONES } from '../limits.ts';
import { NO_ROLES_GIVEN, type GivenRoles } from './given-roles.ts';
import { findColdJunction, isAtRest, isVoltageColumn } from './cold-junction.ts';
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
  readonly output: {
    readonly column: number;
    readonly isPercent: boolean;
    readonly why: ReasonId;
  } | null;
  readonly zones: readonly number[];
  /** Whether the person named the zones, or said that there are none. */
  readonly areZonesGiven: boolean;
  /** Where the temperature of the couple's cold end stands, if the readings can be voltages. */
  readonly coldJunction: { readonly column: number; readonly why: ReasonId } | null;
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

/** Degrees are better than the voltage they were made of: it has less than any name (chosen). */
const VOLTAGE = 15;
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
  const byScale = isVoltage(unit) ? -VOLTAGE : scale === null ? 0 : BY_SCALE;
  return Math.max(1, base + byScale - penalty - rare);
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
  given: number | null | undefined,
): Roles['setpoint'] => {
  if (given !== undefined) return given === null ? null : { column: given, why: 'given' };
  const named = sample.profiles.find((profile) => {
    const unit = sample.units[profile.column] ?? null;
    const isScale = unit === null || temperatureScale(unit) !== null;
    const isSetpoint = meanings[profile.column] === 'setpoint' && profile !== main;
    if (!isSetpoint || !isScale || !isNumeric(profile)) return false;
    if (!isVoltageColumn(sample, main)) {
      return !isVoltageColumn(sample, profile) && isInRange(profile, main);
    }
    // Degrees beside voltages have no range in common with them.
    return isVoltage(unit) ? isInRange(profile, main) : unit !== null;
  });
  if (named !== undefined) return { column: named.column, why: 'name' };
  const shaped = alike.find(
    (column) =>
      column !== main.column && isProgrammeBeside(sample.profiles[column]!.values, main.values),
  );
  return shaped === undefined ? null : { column: shaped, why: 'behaviour' };
};

const findOutput = (
  sample: TableSample,
  meanings: readonly NameMeaning[],
  given: number | null | undefined,
): Roles['output'] => {
  const isPercent = ({ numbers, column }: ColumnProfile): boolean => {
    const unit = sample.units[column] ?? null;
    const isBare = unit === 'percent' || unit === null || unit === 'mV';
    return isBare && numbers !== null && numbers.min >= 0 && numbers.max <= 100;
  };
  if (given === null) return null;
  if (given !== undefined) {
    return { column: given, isPercent: isPercent(sample.profiles[given]!), why: 'given' };
  }
  const named = sample.profiles.filter(
    (profile) => meanings[profile.column] === 'output' && isNumeric(profile),
  );
  const best = named.find(isPercent) ?? named[0];
  return best === undefined
    ? null
    : { column: best.column, isPercent: isPercent(best), why: 'name' };
};

/** Voltages beside degrees are what the degrees were made of, and degrees at rest beside voltages
 * the cold junction. Unnamed columns count as zones only in the range of an unnamed main one. */
const isZone = (
  sample: TableSample,
  meaning: NameMeaning,
  profile: ColumnProfile,
  main: ColumnProfile,
  mainMeaning: NameMeaning,
): boolean => {
  const isMainVoltage = isVoltageColumn(sample, main);
  if (isVoltageColumn(sample, profile) !== isMainVoltage && (!isMainVoltage || isAtRest(profile)))
    return false;
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
const passOver = (sample: TableSample, ranked: readonly Ranked[]): Ranked | undefined => {
  const [first] = ranked;
  if (first === undefined) return undefined;
  const alike = ranked.filter(({ score }) => score === first.score);
  if ((first.profile.numbers?.max ?? 0) < AT_REST) {
    const fired = alike.find(({ profile }) => (profile.numbers?.max ?? 0) >= FIRED);
    if (fired !== undefined) return fired;
  }
  if (isAtRest(first.profile) && !isVoltageColumn(sample, first.profile)) {
    const live = ranked.find(
      ({ profile }) => isVoltageColumn(sample, profile) && !isAtRest(profile),
    );
    if (live !== undefined) return live;
  }
  const follower = alike.find(
    ({ profile }) =>
      profile !== first.profile && isProgrammeBeside(first.profile.values, profile.values),
  );
  return follower ?? first;
};

const findZones = (
  sample: TableSample,
  meanings: readonly NameMeaning[],
  main: ColumnProfile,
  ranked: readonly Ranked[],
  taken: readonly number[],
): number[] =>
  ranked
    .map(({ profile }) => profile)
    .filter(({ column }) => !taken.includes(column))
    .filter((profile) =>
      isZone(sample, meanings[profile.column]!, profile, main, meanings[main.column]!),
    )
    .map(({ column }) => column)
    .sort((one, other) => one - other)
    .slice(0, MAX_ZONES);

const rankedColumns = (
  sample: TableSample,
  meanings: readonly NameMeaning[],
  without: readonly number[],
): Ranked[] =>
  sample.profiles
    .filter(({ column }) => !without.includes(column))
    .map((profile) => ({ profile, score: suits(sample, profile, meanings[profile.column]!) }))
    .filter(({ score }) => score > 0)
    .sort((one, other) => other.score - one.score || one.profile.column - other.profile.column);

/**
 * Finds the main temperature, the setpoint, the output, the zones and the cold junction among the
 * columns that are not times. Null if no column can be a measured temperature.
 */
export const findRoles = (
  sample: TableSample,
  timeColumns: readonly number[],
  given: GivenRoles = NO_ROLES_GIVEN,
): Roles | null => {
  const meanings = sample.names.map((name, column) =>
    sample.isNamed ? meaningOf(name, sample.units[column] ?? null) : 'unknown',
  );
  const { setpoint: asked, output: driven, coldJunction: cold, zones: places } = given;
  const elsewhere = [asked, driven, cold, ...(places ?? [])].filter((column) => column != null);
  const ranked = rankedColumns(sample, meanings, [...timeColumns, ...elsewhere]);
  const chosen =
    given.temperature === undefined
      ? passOver(sample, ranked)?.profile
      : sample.profiles[given.temperature];
  if (chosen === undefined) return null;
  const score = ranked.find(({ profile }) => profile === chosen)?.score;
  const alike = ranked
    .filter((other) => other.score === score || other.score >= BY_MEANING.probe)
    .map(({ profile }) => profile.column);
  const setpoint = findSetpoint(sample, meanings, chosen, alike, asked);
  const output = findOutput(sample, meanings, driven);
  const used = [chosen.column, setpoint?.column, output?.column].filter(
    (column) => column !== undefined,
  );
  const coldJunction = findColdJunction(sample, meanings, chosen, [...timeColumns, ...used], cold);
  const taken = [...used, coldJunction?.column ?? -1];
  const zones = places ?? findZones(sample, meanings, chosen, ranked, taken);
  const rivals = ranked
    .filter((other) => other.score === score && zones.includes(other.profile.column))
    .map(({ profile }) => profile.column);
  const hasScale = temperatureScale(sample.units[chosen.column] ?? null) !== null;
  const reason =
    given.temperature === undefined
      ? whyMain(meanings[chosen.column]!, hasScale, rivals.length)
      : { why: 'given' as const, certainty: 1 };
  return {
    temperature: chosen.column,
    ...reason,
    rivals,
    setpoint,
    output,
    zones,
    areZonesGiven: places !== undefined,
    coldJunction,
    meanings,
  };
};
