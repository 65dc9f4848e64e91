import { meaningOf } from '../columns/name-meaning.ts';
import { MAX_ZONES } from '../limits.ts';
import type { ChannelUnit } from '../../model/options.ts';
import { temperatureScale, unitInName } from '../text/unit-text.ts';
import { alignSeries, type Parted, type Series } from './part-series.ts';
import type { ResolvedTime } from './resolve-time.ts';
import { asPercent, sideCelsius, type Side } from './side-columns.ts';
import { unwrapClock } from './unwrap-clock.ts';

const medianStep = (times: Float64Array): number => {
  const steps = times
    .slice(1)
    .map((time, index) => time - times[index]!)
    .filter((step) => step > 0)
    .sort();
  return steps[steps.length >> 1] ?? 0;
};

const unitOf = ({ name }: Series, main: ChannelUnit): ChannelUnit => {
  const scale = temperatureScale(unitInName(name));
  return scale === null || scale === 'mV' ? main : scale;
};

/** The other channels of a long table, brought to the times of the main one's kept rows. */
export const sideSeries = (
  parted: Parted,
  isClock: boolean,
  rows: Uint32Array,
  time: ResolvedTime,
  unit: ChannelUnit,
): Side => {
  const { main, others } = parted;
  const at = Float64Array.from(rows, (row) => (isClock ? time.seconds[row]! : main.time[row]!));
  const within = medianStep(at) / 2;
  const aligned = (series: Series): Float64Array => {
    const seconds = isClock ? unwrapClock(series.time, false).seconds : series.time;
    return alignSeries({ ...series, time: seconds }, at, within);
  };
  const meanings = others.map(({ name }) => meaningOf(name));
  const setpoint = others[meanings.indexOf('setpoint')];
  const output = others[meanings.indexOf('output')];
  const zones = others.filter((series, index) => {
    const meaning = meanings[index]!;
    const isOpen = meaning === 'probe' || meaning === 'unknown';
    const isTemperature = meaning === 'measured' || meaning === 'temperature';
    return (isOpen || isTemperature) && series.value.some((value) => !Number.isNaN(value));
  });
  const percent = output === undefined ? null : aligned(output);
  const isPercent = percent?.every((value) => !(value < 0 || value > 100)) === true;
  return {
    setpointC:
      setpoint === undefined ? null : sideCelsius(aligned(setpoint), unitOf(setpoint, unit)),
    outputPercent:
      percent === null || !isPercent
        ? null
        : asPercent(percent, unitInName(output!.name) === 'percent'),
    zones: zones.slice(0, MAX_ZONES).map((series) => ({
      channel: series.name,
      celsius: sideCelsius(aligned(series), unitOf(series, unit)),
    })),
  };
};
