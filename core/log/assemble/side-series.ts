import { meaningOf } from '../columns/name-meaning.ts';
import { MAX_ZONES } from '../limits.ts';
import type { Account } from '../account.ts';
import type { ReadingDecisions } from '../../model/options.ts';
import { Refusal } from '../../model/refusal.ts';
import { quotedNames } from '../text/quoted-names.ts';
import { isVoltage, temperatureScale, unitInName } from '../text/unit-text.ts';
import { alignSeries, type Parted, type Series } from './part-series.ts';
import type { ResolvedTime } from './resolve-time.ts';
import type { Scale } from './scale.ts';
import { gather } from './gather.ts';
import type { TableRead } from './table-read.ts';
import { asPercent, scaleBeside, sideCelsius, type Side } from './side-columns.ts';
import { unwrapClock } from './unwrap-clock.ts';

const medianStep = (times: Float64Array): number => {
  const steps = times
    .slice(1)
    .map((time, index) => time - times[index]!)
    .filter((step) => step > 0)
    .sort();
  return steps[steps.length >> 1] ?? 0;
};

/** The channels that have a role beside the main one; null where there is none. */
interface RolesBeside {
  readonly setpoint: Series | undefined;
  readonly output: Series | undefined;
  readonly zones: readonly Series[];
}

/** The channel for a role: as the person says, else the first whose name says so. */
const channelFor = (
  others: readonly Series[],
  meaning: 'setpoint' | 'output',
  given: string | null | undefined,
): Series | undefined => {
  if (given === null) return undefined;
  return others.find(({ name }) =>
    given === undefined ? meaningOf(name) === meaning : name === given,
  );
};

const isPlace = ({ name, value }: Series, isMainVoltage: boolean): boolean => {
  const meaning = meaningOf(name);
  const isOpen = meaning === 'probe' || meaning === 'unknown';
  const isTemperature = meaning === 'measured' || meaning === 'temperature';
  const isWrongKind = isVoltage(unitInName(name)) && !isMainVoltage;
  const isLive = value.some((reading) => !Number.isNaN(reading));
  return (isOpen || isTemperature) && !isWrongKind && isLive;
};

const rolesBeside = (
  others: readonly Series[],
  decisions: ReadingDecisions,
  isMainVoltage: boolean,
): RolesBeside => {
  const { zoneColumns, setpointColumn, outputColumn, coldJunctionColumn } = decisions;
  const setpoint = channelFor(others, 'setpoint', setpointColumn);
  const output = channelFor(others, 'output', outputColumn);
  const isFree = (series: Series): boolean =>
    series !== setpoint && series !== output && series.name !== coldJunctionColumn;
  const zones =
    zoneColumns === undefined
      ? others.filter((series) => isFree(series) && isPlace(series, isMainVoltage))
      : others.filter(({ name }) => zoneColumns.includes(name));
  return { setpoint, output, zones };
};

/**
 * Accounts for the channels that the person names.
 *
 * @throws Refusal `bad-option` for one that is not there
 */
export const accountForChannels = (
  parted: Parted,
  decisions: ReadingDecisions,
  account: Account,
): void => {
  const names = [parted.name, ...parted.others.map(({ name }) => name)];
  const { setpointColumn, outputColumn, coldJunctionColumn, zoneColumns } = decisions;
  const checked = (name: string): string => {
    if (parted.others.some((series) => series.name === name)) return name;
    const why = name === parted.name ? 'is the main one' : 'is not there';
    throw new Refusal(
      'bad-option',
      `the channel “${name}” ${why}; the channels are ${quotedNames(names)}`,
    );
  };
  if (setpointColumn != null)
    account.decide('setpoint-column', checked(setpointColumn), 'given', 1);
  if (outputColumn != null) account.decide('output-column', checked(outputColumn), 'given', 1);
  if (coldJunctionColumn != null) checked(coldJunctionColumn);
  if (zoneColumns === undefined || zoneColumns.length === 0) return;
  account.decide('zone-columns', zoneColumns.map(checked).join(', '), 'given', 1);
};

/** The other channels of a long table, brought to the times of the main one's kept rows. */
export const sideSeries = (
  parted: Parted,
  isClock: boolean,
  rows: Uint32Array,
  time: ResolvedTime,
  scale: Scale,
  { decisions, plan, sample }: Pick<TableRead, 'decisions' | 'plan' | 'sample'>,
): Side => {
  const { main, others } = parted;
  const at = gather(isClock ? time.seconds : main.time, rows).slice();
  const within = medianStep(at) / 2;
  const aligned = (series: Series): Float64Array => {
    const seconds = isClock ? unwrapClock(series.time, false).seconds : series.time;
    return alignSeries({ ...series, time: seconds }, at, within);
  };
  const { setpoint, output, zones } = rolesBeside(others, decisions, isVoltage(scale.unit));
  const celsiusOfSeries = (series: Series): Float64Array => {
    const unit = temperatureScale(unitInName(series.name));
    const own = scaleBeside(series.name, unit, scale, sample.preamble);
    return sideCelsius(aligned(series), own, rows, plan.noReading.numbers);
  };
  const percent = output === undefined ? null : aligned(output);
  const isPercent = percent?.every((value) => !(value < 0 || value > 100)) === true;
  return {
    setpointC: setpoint === undefined ? null : celsiusOfSeries(setpoint),
    outputPercent:
      percent === null || !isPercent
        ? null
        : asPercent(percent, unitInName(output!.name) === 'percent'),
    zones: zones.slice(0, MAX_ZONES).map((series) => ({
      channel: series.name,
      celsius: celsiusOfSeries(series),
    })),
  };
};
