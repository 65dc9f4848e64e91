import type { History, HistoryFiring, PowerTrend } from '../model/history.ts';
import { median } from '../numeric/statistics.ts';
import { compareCooling } from './cooling.ts';
import { coupleSteps } from './couple-steps.ts';
import { findCycles } from './cycles.ts';
import type { FiringEntry } from './entry.ts';
import { historyFindings } from './findings.ts';
import { forecastOf } from './forecast.ts';
import { powerSeries, type PowerSeries } from './power-series.ts';
import { worldMs } from './stamp.ts';
import { powerByTrend, trendOf } from './trend.ts';
import { usualTime } from './usual-time.ts';

/** The order of a history: at each place, which of the firings as given stands there. */
export interface FiringOrder extends Pick<History, 'order'> {
  readonly places: readonly number[];
}

/** Oldest first where every firing has a date; else as they came. */
export const firingOrder = (given: readonly Pick<FiringEntry, 'startInstant'>[]): FiringOrder => {
  const places = given.map((_, i) => i);
  const times = given.map(({ startInstant }) =>
    startInstant === null ? NaN : worldMs(startInstant),
  );
  if (times.some(Number.isNaN)) return { order: 'as-given', places };
  return { order: 'by-date', places: places.sort((a, b) => times[a]! - times[b]! || a - b) };
};

const firingOf = (
  entries: readonly FiringEntry[],
  index: number,
  { relative, references }: PowerSeries,
): HistoryFiring => {
  const entry = entries[index]!;
  const power = relative[index] ?? null;
  const { usualSeconds, tookLonger } = usualTime(entry, entries.slice(0, index));
  return {
    fileName: entry.fileName,
    startInstant: entry.startInstant,
    durationSeconds: entry.durationSeconds,
    heatingSeconds: entry.heatingSeconds,
    peakC: entry.peakC,
    conePosition: entry.conePosition,
    relativePower: power?.value ?? null,
    low: power?.low ?? null,
    high: power?.high ?? null,
    powerReason: power === null ? (entry.powerReason ?? 'not-measured') : null,
    isReference: references.includes(index),
    usualHeatingSeconds: usualSeconds,
    tookLonger,
  };
};

/** What the last ramp needs, on the scale of the series: the middle of what firings show. */
const lastRampPower = (entries: readonly FiringEntry[], unit: number): number | null => {
  const shown = entries.flatMap(({ lastRampPower: power }) =>
    power === null ? [] : [power / unit],
  );
  return shown.length === 0 ? null : median(shown);
};

/** What is left of power once wear and steps are out, of the firings that have a clock. */
const cyclesOf = (
  entries: readonly FiringEntry[],
  { current }: PowerSeries,
  trend: PowerTrend | null,
) => {
  const last = current.at(-1);
  if (trend === null || last === undefined) return [];
  return findCycles(
    current.flatMap(({ firing, power }) => {
      const { startInstant, peakAtSeconds } = entries[firing]!;
      if (startInstant === null || peakAtSeconds === null) return [];
      const rest = power - powerByTrend(trend, last.firing, firing);
      return [{ instant: startInstant, peakAtSeconds, rest }];
    }),
  );
};

const whyNoTrend = (entries: readonly FiringEntry[], series: PowerSeries): string => {
  if (entries.length > 0 && entries.every(({ powerReason }) => powerReason === 'fuel-fired')) {
    return 'fuel-fired';
  }
  if (series.relative.every((power) => power === null)) return 'no-relative-power';
  return series.steps.some(({ kind }) => kind === 'restored')
    ? 'too-few-since-restored'
    : 'too-few-firings';
};

/** One kiln's firings as a history: order, relative power, trend, steps, supply, cooling, forecast. */
export const historyOf = (given: readonly FiringEntry[]): History => {
  const { order, places } = firingOrder(given);
  const entries = places.map((i) => given[i]!);
  const series = powerSeries(entries, coupleSteps(entries));
  const trend = trendOf(series.current);
  const trendReason = trend === null ? whyNoTrend(entries, series) : null;
  const forecast = forecastOf(series.current, trend, lastRampPower(entries, series.unit));
  const history = {
    schemaVersion: 1 as const,
    order,
    firings: entries.map((_, index) => firingOf(entries, index, series)),
    trend,
    trendReason,
    steps: [...series.steps],
    supply: cyclesOf(entries, series, trend),
    cooling: compareCooling(entries),
    forecast: trendReason === 'fuel-fired' ? { ...forecast, reason: trendReason } : forecast,
  };
  return { ...history, findings: historyFindings(history) };
};
