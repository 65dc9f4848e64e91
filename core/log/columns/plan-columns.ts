import type { Account } from '../account.ts';
import { Refusal } from '../../model/refusal.ts';
import type { ReadingDecisions } from '../../model/options.ts';
import { temperatureScale, unitOfText } from '../text/unit-text.ts';
import { quotedNames } from '../text/quoted-names.ts';
import { TimeReader } from '../time/time-reader.ts';
import type { ColumnPlan } from './column-plan.ts';
import { placeTime, planTime, type DatedPlan, type TimePlace } from './decide-time.ts';
import { findRoles, type Roles } from './find-roles.ts';
import { findSeries } from './find-series.ts';
import { columnNamed, type TableSample } from './sample.ts';
import { timeColumnsOf } from './time-plan.ts';

/** A column filled at least so often is a part of every row (chosen). */
const ALWAYS_FILLED = 0.9;

export interface PlanContext {
  /** Habits that go with writing the day first: decimal comma, semicolons. */
  readonly isContinental: boolean;
  /** Set where the time of rows stands in the heads of sections instead of in a column. */
  readonly sectionTime: ((temperature: number) => DatedPlan) | null;
}

const givenTemperature = (sample: TableSample, decisions: ReadingDecisions): number | null => {
  const wanted = decisions.temperatureColumn;
  if (wanted === undefined) return null;
  const column = columnNamed(sample, wanted);
  const isUsable = column !== null && sample.profiles[column]?.numbers != null;
  if (isUsable) return column;
  const names = quotedNames(sample.names);
  throw new Refusal(
    'bad-option',
    column === null
      ? `there is no column “${wanted}”; the columns are ${names}`
      : `the column “${wanted}” holds no numbers`,
  );
};

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
  if (roles.rivals.length > 0) account.warn('several-temperatures');
  if (roles.why === 'behaviour' || roles.why === 'order-only') account.warn('temperature-guessed');
  if (roles.setpoint !== null) {
    const { column, why } = roles.setpoint;
    account.decide('setpoint-column', nameOf(column), why, why === 'name' ? 0.95 : 0.6);
    if (why === 'behaviour') account.warn('setpoint-by-behaviour');
  }
  if (roles.output !== null) {
    const certainty = roles.output.isPercent ? 0.9 : 0.5;
    account.decide('output-column', nameOf(roles.output.column), 'name', certainty);
    if (!roles.output.isPercent) account.warn('output-not-percent');
  }
  if (roles.zones.length > 0) {
    account.decide('zone-columns', roles.zones.map(nameOf).join(', '), 'name', 0.8);
  }
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
  const { setpoint, output } = roles;
  return [
    roles.temperature,
    ...(setpoint === null ? [] : [setpoint.column]),
    ...(!output?.isPercent ? [] : [output.column]),
    ...roles.zones,
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
  const given = givenTemperature(sample, decisions);
  const place = placedTime(sample, decisions, context, account);
  const timeColumns = place?.columns ?? [];
  const roles = findRoles(sample, timeColumns, given) ?? refuseWithoutTemperature(sample);
  accountForRoles(sample, roles, account);
  const isFahrenheit = sample.units[roles.temperature] === 'F' || decisions.unit === 'F';
  const dated =
    place === null
      ? context.sectionTime!(roles.temperature)
      : planTime(sample, place, { ...context, isFahrenheit }, decisions, account);
  const taken = [...timeColumns, roles.setpoint?.column ?? -1, roles.output?.column ?? -1];
  const times = sampledTimes(sample, dated);
  const seriesColumn = findSeries(sample, roles.temperature, taken, times);
  return {
    ...dated,
    roles,
    wanted: wantedColumns(roles),
    decimalMark: sample.decimalMark,
    width: sample.names.length,
    requiredCells: requiredCells(sample, [...timeColumnsOf(dated.time), roles.temperature]),
    seriesColumn,
    unitColumn: findUnitColumn(sample),
    wordColumns: sample.profiles
      .filter(({ kind, filled }) => kind === 'text' && filled >= 0.5)
      .map(({ column }) => column),
  };
};
