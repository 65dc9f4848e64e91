import { z } from 'zod';
import { zFindingId, zSeverity } from './finding.ts';
import { zCelsius, zCelsiusDelta, zCelsiusPerHour, zCount, zId, zSeconds } from './scalars.ts';

/** One firing in a kiln's history. */
export const zHistoryFiring = z.strictObject({
  fileName: z.string(),
  startInstant: z.string().nullable(),
  durationSeconds: zSeconds,
  /** From the beginning of heating to the peak; null where heating began before the log. Of two
   * logs of one load, in the one that shows the peak. */
  heatingSeconds: zSeconds.nullable(),
  peakC: zCelsius,
  conePosition: z.number().nullable(),
  /** Power over that of the reference firings, with an 80 % interval; null where it cannot be told. */
  relativePower: z.number().nullable(),
  low: z.number().nullable(),
  high: z.number().nullable(),
  /** Why `relativePower` is null; null where it is not. */
  powerReason: zId.nullable(),
  isReference: z.boolean(),
  /** What like firings before this one usually took; null before there are enough. */
  usualHeatingSeconds: zSeconds.nullable(),
  tookLonger: z.boolean(),
});
export type HistoryFiring = z.infer<typeof zHistoryFiring>;

/** A sudden change between one firing and the next. */
export const zHistoryStep = z.strictObject({
  /** `restored`: power came back, as after new elements; `lost`: part of it went; `couple`: the
   * couple reads otherwise, and the readings before are re-based. */
  kind: z.enum(['restored', 'lost', 'couple']),
  /** Index of the first firing after it. */
  firing: zCount,
  /** Change of relative power; null where a couple's step shows in the cones alone. */
  powerPercent: z.number().nullable(),
  /** Change of the couple's error by witness cones. */
  coupleDeltaC: zCelsiusDelta.nullable(),
});
export type HistoryStep = z.infer<typeof zHistoryStep>;

export const zPowerTrend = z.strictObject({
  /** Change of relative power a firing, in percent of the reference; negative as elements wear. */
  perFiringPercent: z.number(),
  /** 80 % interval (Sen). */
  low: z.number(),
  high: z.number(),
  /** Probability that power which does not fall would show as much by chance (Mann–Kendall). */
  chance: z.number(),
  /** Relative power by the trend at the last firing. */
  nowPower: z.number(),
  /** Firings from which it was drawn, and index of the first. */
  firings: zCount,
  since: zCount,
});
export type PowerTrend = z.infer<typeof zPowerTrend>;

/** Power that comes and goes with the hour or the season. */
export const zSupplyCycle = z.strictObject({
  cycle: z.enum(['day', 'year']),
  /** From mean to lowest, in percent of full power. */
  amplitudePercent: z.number(),
  /** Hour of the day (0…24) or month (1…12) of the peaks at which power is least, among those that
   * there were. */
  lowestAt: z.number(),
  chance: z.number(),
});
export type SupplyCycle = z.infer<typeof zSupplyCycle>;

export const zForecast = z.strictObject({
  /** Firings left until `limitPower` is passed, with an 80 % range; null where not yet to be told. */
  firings: z.strictObject({ estimate: z.number(), low: z.number(), high: z.number() }).nullable(),
  /** What is missing where `firings` is null. */
  reason: zId.nullable(),
  /** `last-ramp`: below this power the schedule's last ramp cannot be held; `usual-replacement`:
   * where elements are usually replaced, as no firing shows what the last ramp needs. */
  limitKind: z.enum(['last-ramp', 'usual-replacement']),
  limitPower: z.number(),
});
export type Forecast = z.infer<typeof zForecast>;

/** A stretch of the last firing's cooling beside the last good firing's. */
export const zCoolingComparison = z.strictObject({
  name: zId,
  fromC: zCelsius,
  toC: zCelsius,
  lastCPerHour: zCelsiusPerHour,
  goodCPerHour: zCelsiusPerHour,
  /** Positive: the last firing cooled faster. */
  fasterPercent: z.number(),
});
export type CoolingComparison = z.infer<typeof zCoolingComparison>;

/** What several firings can show together, of all the findings there are. */
export const HISTORY_FINDING_IDS = [
  'elements-weak',
  'element-lost',
  'supply-varies',
  'sensor-drift',
  'cooling-differs',
] as const;

/** A finding over several firings: its evidence is firings, not moments of one. */
export const zHistoryFinding = z.strictObject({
  id: z.enum(HISTORY_FINDING_IDS),
  severity: zSeverity,
  /** Indices of the firings that show it. */
  firings: z.array(zCount),
  figures: z.record(z.string(), z.number()),
  thresholds: z.record(z.string(), z.number()),
  instead: z.array(zFindingId),
});
export type HistoryFinding = z.infer<typeof zHistoryFinding>;

/** One kiln's firings, oldest first, and what they say together. */
export const zHistory = z.strictObject({
  schemaVersion: z.literal(1),
  /** `as-given`: at least one log has no date, so the order is the one in which they came. */
  order: z.enum(['by-date', 'as-given']),
  firings: z.array(zHistoryFiring),
  trend: zPowerTrend.nullable(),
  /** Why there is no trend; null where there is one. */
  trendReason: zId.nullable(),
  steps: z.array(zHistoryStep),
  supply: z.array(zSupplyCycle),
  cooling: z.strictObject({ goodFiring: zCount, bands: z.array(zCoolingComparison) }).nullable(),
  forecast: zForecast,
  findings: z.array(zHistoryFinding),
});
export type History = z.infer<typeof zHistory>;
