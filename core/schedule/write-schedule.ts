import type { Schedule, Segment } from '../model/schedule.ts';
import { celsiusDelta, differenceIn, temperatureIn, type TemperatureUnit } from '../units.ts';

/** A hundredth of a degree is finer than any controller takes. */
const rounded = (value: number): number => Math.round(value * 100) / 100;

const rateIn = (segment: Segment, unit: TemperatureUnit): number | 'full' | null =>
  typeof segment.rateCPerHour === 'number'
    ? rounded(differenceIn(celsiusDelta(segment.rateCPerHour), unit))
    : segment.rateCPerHour;

const targetIn = (segment: Segment, unit: TemperatureUnit): number =>
  rounded(temperatureIn(segment.targetC, unit));

/** The schedule as a JSON file's text, in the unit asked for. */
export const writeJsonSchedule = (schedule: Schedule, unit: TemperatureUnit): string => {
  const segments = schedule.segments.map((segment) => {
    const rate = rateIn(segment, unit);
    return {
      ...(rate === null ? { minutes: segment.minutes } : { ratePerHour: rate }),
      target: targetIn(segment, unit),
      ...(segment.holdMinutes > 0 ? { holdMinutes: segment.holdMinutes } : {}),
    };
  });
  const cone = schedule.cone === null ? {} : { cone: schedule.cone };
  return `${JSON.stringify({ name: schedule.name, ...cone, unit, segments }, null, 2)}\n`;
};

/** The schedule as a CSV file's text, in the unit asked for. */
export const writeCsvSchedule = (schedule: Schedule, unit: TemperatureUnit): string => {
  const isTimed = schedule.segments.some((segment) => segment.minutes !== null);
  const heading = [
    `# name: ${schedule.name.replace(/[\r\n]+/g, ' ')}`,
    `# unit: ${unit}`,
    ...(schedule.cone === null ? [] : [`# cone: ${schedule.cone}`]),
    `rate_per_hour,${isTimed ? 'minutes,' : ''}target,hold_minutes`,
  ];
  const rows = schedule.segments.map((segment) =>
    [
      rateIn(segment, unit) ?? '',
      ...(isTimed ? [segment.minutes ?? ''] : []),
      targetIn(segment, unit),
      segment.holdMinutes,
    ].join(','),
  );
  return `${[...heading, ...rows].join('\n')}\n`;
};
