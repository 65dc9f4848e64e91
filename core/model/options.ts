import { z } from 'zod';
import { zCone, zConeType } from './cone.ts';
import { zCelsiusDelta } from './scalars.ts';
import { zSchedule } from './schedule.ts';

export const CHANNEL_ROLES = [
  'temperature',
  'setpoint',
  'output',
  'cold-junction',
  'other',
] as const;
export const zChannelRole = z.enum(CHANNEL_ROLES);
export type ChannelRole = z.infer<typeof zChannelRole>;

/** `mV` and `uV` are a bare couple's voltage, which a couple type turns into a temperature. */
export const zChannelUnit = z.enum(['C', 'F', 'K', 'mV', 'uV']);
export type ChannelUnit = z.infer<typeof zChannelUnit>;

export const COUPLE_TYPES = ['K', 'S', 'R', 'B', 'N', 'J', 'T', 'E'] as const;
export const zCoupleType = z.enum(COUPLE_TYPES);
export type CoupleType = z.infer<typeof zCoupleType>;

/** What bare numbers of a time column count. */
export const TIME_UNITS = ['ns', 'us', 'ms', 's', 'min', 'h', 'd'] as const;
export const zTimeUnit = z.enum(TIME_UNITS);
export type TimeUnit = z.infer<typeof zTimeUnit>;

/** Where they count from: the log's beginning, 1970, or the day 0 of spreadsheets. */
export const TIME_ORIGINS = ['elapsed', 'epoch', 'serial'] as const;
export const zTimeOrigin = z.enum(TIME_ORIGINS);
export type TimeOrigin = z.infer<typeof zTimeOrigin>;

/** No couple's cold end stands beyond these, °C (chosen: colder and hotter than any logger works). */
const COLD_JUNCTION_RANGE_C = [-60, 120] as const;

/**
 * Decisions of the reader that the person overrides; each left out is decided from the file.
 *
 * A column is named as the file heads it, as `source.channels` lists it (`column 3` where it has no
 * name), or by its number counted from 1; null and `[]` say that there is none.
 */
export const zReadingDecisions = z.strictObject({
  /** A label of TextDecoder: `utf-8`, `utf-16le`, `windows-1252` … */
  encoding: z.string().min(1).optional(),
  delimiter: z.string().min(1).optional(),
  decimalMark: z.enum(['.', ',']).optional(),
  headerLine: z.number().int().positive().nullable().optional(),
  timeColumns: z.array(z.string()).optional(),
  /** What bare numbers in the time column count … */
  timeUnit: zTimeUnit.optional(),
  /** … and from where. */
  timeFrom: zTimeOrigin.optional(),
  dayOrder: z.enum(['day-first', 'month-first', 'year-first']).optional(),
  /** The zone of stamps without an offset, by its IANA name. */
  timeZone: z.string().min(1).optional(),
  /** The day of the first row, where the log has a clock and no date. */
  firstDate: z.iso.date().optional(),
  intervalSeconds: z.number().positive().optional(),
  /** Which of several firings in one log, counted from 1. */
  firing: z.number().int().positive().optional(),
  temperatureColumn: z.string().optional(),
  unit: zChannelUnit.optional(),
  setpointColumn: z.string().nullable().optional(),
  outputColumn: z.string().nullable().optional(),
  coldJunctionColumn: z.string().nullable().optional(),
  zoneColumns: z.array(z.string()).optional(),
  /** The couple that gave millivolts; degrees do not need it. */
  coupleType: zCoupleType.optional(),
  /** Where the couple's cold end stood while the logger wrote uncompensated millivolts, °C. */
  coldJunctionC: z.number().min(COLD_JUNCTION_RANGE_C[0]).max(COLD_JUNCTION_RANGE_C[1]).optional(),
  /** Words or numbers, as the cells have them, that mean no reading; beside those found. */
  noReadingMarks: z.array(z.string().min(1)).optional(),
});
export type ReadingDecisions = z.infer<typeof zReadingDecisions>;

/** Tolerance classes of new wire: IEC 60584-1 classes 1 and 2, and the standard grade of ASTM E230. */
export const zCoupleClass = z.enum(['class-1', 'class-2', 'standard']);
export type CoupleClass = z.infer<typeof zCoupleClass>;

export const zObservedCone = z.strictObject({
  cone: zCone,
  place: z.string(),
  /** 0 is upright, 90 is the end point: the tip level with the base. */
  bendDegrees: z.number().min(0).max(180),
});
export type ObservedCone = z.infer<typeof zObservedCone>;

/** What the person told about the firing: all optional, all changing the answer. */
export const zOptions = z.strictObject({
  schedule: zSchedule.optional(),
  cone: zCone.optional(),
  coneType: zConeType.optional(),
  purpose: z.enum(['bisque', 'glaze', 'other']).optional(),
  reading: zReadingDecisions.optional(),
  couple: z
    .strictObject({
      type: zCoupleType,
      class: zCoupleClass.optional(),
      /** The correction that the logger has already added to its readings. */
      offsetC: zCelsiusDelta.optional(),
    })
    .optional(),
  kiln: z
    .strictObject({
      heat: z.enum(['electric', 'fuel']).optional(),
      ratedWatts: z.number().positive().optional(),
      circuits: z.number().int().positive().optional(),
    })
    .optional(),
  ware: z.strictObject({ thicknessMm: z.number().positive() }).optional(),
  observedCones: z.array(zObservedCone).optional(),
  /** An earlier good firing's document, checked when it is used. */
  reference: z.unknown().optional(),
});
export type Options = z.infer<typeof zOptions>;
