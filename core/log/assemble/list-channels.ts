import { meaningOf, type NameMeaning } from '../columns/name-meaning.ts';
import type { TableSample } from '../columns/sample.ts';
import { timeColumnsOf } from '../columns/time-plan.ts';
import type { ChannelRole, ChannelUnit } from '../../model/options.ts';
import type { Channel } from '../../model/source.ts';
import { temperatureScale, unitInName } from '../text/unit-text.ts';
import type { Parted } from './part-series.ts';
import type { TableRead } from './table-read.ts';

const ROLE_OF: Readonly<Record<NameMeaning, ChannelRole>> = {
  measured: 'temperature',
  temperature: 'temperature',
  probe: 'other',
  unknown: 'other',
  elsewhere: 'other',
  derived: 'other',
  setpoint: 'setpoint',
  output: 'output',
  'cold-junction': 'cold-junction',
  'other-quantity': 'other',
  index: 'other',
};

/** Channels of a long table share one column; each is listed by its own name. */
const listSeries = (parted: Parted, column: number, unit: ChannelUnit): Channel[] => {
  const names = [parted.name, ...parted.others.map(({ name }) => name)];
  return names.map((name) => ({
    name,
    column,
    unit: name === parted.name ? unit : temperatureScale(unitInName(name)),
    role: name === parted.name ? 'temperature' : ROLE_OF[meaningOf(name)],
    chosen: name === parted.name,
  }));
};

const unitIn = (sample: TableSample, column: number): ChannelUnit | null =>
  temperatureScale(sample.units[column] ?? null);

/** The columns of numbers beside the time, with their roles; `chosen` are those that are used. */
export const listChannels = (
  table: TableRead,
  parted: Parted | null,
  unit: ChannelUnit,
): Channel[] => {
  const { plan, sample } = table;
  if (parted !== null) return listSeries(parted, plan.roles.temperature, unit);
  const { temperature, zones, setpoint, output, coldJunction, meanings } = plan.roles;
  const times = timeColumnsOf(plan.time);
  return sample.profiles
    .filter(({ column, numbers }) => !times.includes(column) && numbers !== null)
    .map(({ column }): Channel => {
      const isMeasured = column === temperature || zones.includes(column);
      const isSetpoint = column === setpoint?.column;
      const isOutput = column === output?.column;
      const role = isMeasured
        ? 'temperature'
        : isSetpoint
          ? 'setpoint'
          : isOutput
            ? 'output'
            : column === coldJunction?.column
              ? 'cold-junction'
              : ROLE_OF[meanings[column]!];
      const isUsed = plan.wanted.includes(column);
      const isDegrees = isMeasured || isSetpoint;
      return {
        name: sample.names[column]!,
        column,
        unit: unitIn(sample, column) ?? (isDegrees ? unit : null),
        role,
        chosen: isUsed,
      };
    });
};
