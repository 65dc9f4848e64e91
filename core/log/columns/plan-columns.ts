import type { Account } from '../account.ts';
import type { DecisionId, ReasonId } from '../ids.ts';
import { makeGivenMarks } from '../text/given-marks.ts';
import { Refusal } from '../../model/refusal.ts';
import type { ReadingDecisions } from '../../model/options.ts';
import { temperatureScale, unitOfText } from '../text/unit-text.ts';
import { quotedNames } from '../text/quoted-names.ts';
import { TimeReader } from '../time/time-reader.ts';
import type { ColumnPlan } from './column-plan.ts';
import { placeTime, planTime, type DatedPlan, type TimePlace } from './decide-time.ts';
import { givenRoles, refuseColumn } from './given-roles.ts';
import { findRoles, type Roles } from './find-roles.ts';
import { findQuality } from './find-quality.ts';
import { findSeries } from './find-series.ts';
import type { TableSample } from './sample.ts';
import { timeColumnsOf } from './time-plan.ts';

const CERTAINTY_BY: Readonly<Partial<Record<ReasonId, number>>> = {
  given: 1,
  name: 0.95,
  behaviour: 0.6,
};
/** A column filled at least so often is a part of every row (chosen). */
const ALWAYS_FILLED = 0.9;

export interface PlanContext {
  /** Habits that go with writing the day first: decimal comma, semicolons. */
  readonly isContinental: boolean;
  /** Set where the time of rows stands in the heads of sections instead of in a column. */
  readonly sectionTime: ((temperature: number) => DatedPlan) | null;
}

const refuseWithoutTemperature = (sample: TableSample): never => {
  const names = quotedNames(sample.names);
  const among = sample.isNamed ? ` among the columns ${names}` : '';
  throw new Refusal(
    'no-temperature',
    `no column of measured temperatures was found${among}; name the column that holds them`,
    sample.line,
  );
};

const accountForRoles = (sample: TableSample, roles: Roles, account: Account): void => {
  const nameOf = (column: number): string => sample.names[column] ?? '';
  account.decide('temperature-column', nameOf(roles.temperature), roles.why, roles.certainty);
  if (roles.rivals.length > 0 && roles.why !== 'given') account.warn('several-temperatures');
  if (roles.why === 'behaviour' || roles.why === 'order-only') account.warn('temperature-guessed');
  if (roles.setpoint !== null) {
    const { column, why } = roles.setpoint;
    account.decide('setpoint-column', nameOf(column), why, CERTAINTY_BY[why] ?? 0.6);
    if (why === 'behaviour') account.warn('setpoint-by-behaviour');
  }
  if (roles.output !== null) {
    const { column, why, isPercent } = roles.output;
    account.decide('output-column', nameOf(column), why, isPercent ? CERTAINTY_BY[why]! : 0.5);
    if (!isPercent) account.warn('output-not-percent');
  }
  if (roles.zones.length > 0) {
    const why = roles.areZonesGiven ? 'given' : 'name';
    const certainty = roles.areZonesGiven ? 1 : 0.8;
    account.decide('zone-columns', roles.zones.map(nameOf).join(', '), why, certainty);
  }
};

/** Accounts for the roles that the person says no column has. */
const accountForNone = (decisions: ReadingDecisions, account: Account): void => {
  const none = (what: DecisionId, isNone: boolean): void => {
    if (isNone) account.decide(what, 'none', 'given', 1);
  };
  none('setpoint-column', decisions.setpointColumn === null);
  none('output-column', decisions.outputColumn === null);
  none('cold-junction-column', decisions.coldJunctionColumn === null);
  none('zone-columns', decisions.zoneColumns?.length === 0);
};

const refuseOutput = (sample: TableSample, { output }: Roles): void => {
  if (output === null || output.isPercent || output.why !== 'given') return;
  const name = sample.names[output.column]!;
  throw new Refusal(
    'bad-option',
    `the column “${name}” goes beyond 0 to 100, so it is no output in percent of full power`,
  );
};

/** A column that holds nothing but units of temperature. */
const findUnitColumn = (sample: TableSample): number | null => {
  const found = sample.profiles.find(
    ({ column, kind, distinct }) =>
      (kind === 'text' || kind === 'mark') &&
      distinct <= 3 &&
      sample.rows.every((row) => {
        const cell = row[column] ?? '';
        return cell === '' || temperatureScale(unitOfText(cell)) !== null;
      }),
  );
  return found?.column ?? null;
};

const sampledTimes = (sample: TableSample, dated: DatedPlan): number[] => {
  const reader = new TimeReader(dated.time, dated.originDays, sample.decimalMark);
  return sample.rows.map((row, index) => reader.read(row, index));
};

const requiredCells = (sample: TableSample, least: readonly number[]): number => {
  const filled = sample.profiles
    .filter((profile) => profile.filled >= ALWAYS_FILLED)
    .map(({ column }) => column);
  return Math.max(...filled, ...least, 0) + 1;
};

const wantedColumns = (roles: Roles): number[] => {
  const { setpoint, output, coldJunction } = roles;
  return [
    roles.temperature,
    ...(setpoint === null ? [] : [setpoint.column]),
    ...(!output?.isPercent ? [] : [output.column]),
    ...roles.zones,
    ...(coldJunction === null ? [] : [coldJunction.column]),
  ];
};

const placedTime = (
  sample: TableSample,
  decisions: ReadingDecisions,
  context: PlanContext,
  account: Account,
): TimePlace | null =>
  context.sectionTime === null || decisions.timeColumns !== undefined
    ? placeTime(sample, decisions, account)
    : null;

/**
 * Decides which columns of a table hold the time, the temperature and what else is kept.
 *
 * @throws Refusal `no-time`, `no-temperature`, or `bad-option` for columns that are not there.
 */
export const planColumns = (
  sample: TableSample,
  decisions: ReadingDecisions,
  context: PlanContext,
  account: Account,
): ColumnPlan => {
  const place = placedTime(sample, decisions, context, account);
  const timeColumns = place?.columns ?? [];
  const given = givenRoles(sample, decisions, timeColumns);
  const roles = findRoles(sample, timeColumns, given) ?? refuseWithoutTemperature(sample);
  refuseOutput(sample, roles);
  accountForRoles(sample, roles, account);
  accountForNone(decisions, account);
  const isFahrenheit = sample.units[roles.temperature] === 'F' || decisions.unit === 'F';
  const dated =
    place === null
      ? context.sectionTime!(roles.temperature)
      : planTime(sample, place, { ...context, isFahrenheit }, decisions, account);
  const taken = [...timeColumns, roles.setpoint?.column ?? -1, roles.output?.column ?? -1];
  const times = sampledTimes(sample, dated);
  const seriesColumn = findSeries(sample, roles.temperature, taken, times);
  const [channel] = given.channels;
  if (seriesColumn === null && channel !== undefined) refuseColumn(sample, channel);
  return {
    ...dated,
    roles,
    wanted: wantedColumns(roles),
    decimalMark: sample.decimalMark,
    width: sample.names.length,
    requiredCells: requiredCells(sample, [...timeColumnsOf(dated.time), roles.temperature]),
    seriesColumn,
    unitColumn: findUnitColumn(sample),
    qualityColumn: findQuality(sample, roles.temperature),
    noReading: makeGivenMarks(decisions.noReadingMarks, sample.decimalMark),
    wordColumns: sample.profiles
      .filter(({ kind, filled }) => kind === 'text' && filled >= 0.5)
      .map(({ column }) => column),
  };
};
