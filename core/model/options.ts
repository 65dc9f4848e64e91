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

export const zChannelUnit = z.enum(['C', 'F', 'K', 'mV']);
export type ChannelUnit = z.infer<typeof zChannelUnit>;

/** Decisions of the reader that the person overrides; each left out is decided from the file. */
export const zReadingDecisions = z.strictObject({
  delimiter: z.string().min(1).optional(),
  decimalMark: z.enum(['.', ',']).optional(),
  headerLine: z.number().int().positive().nullable().optional(),
  timeColumns: z.array(z.string()).optional(),
  dayOrder: z.enum(['day-first', 'month-first', 'year-first']).optional(),
  temperatureColumn: z.string().optional(),
  unit: zChannelUnit.optional(),
  intervalSeconds: z.number().positive().optional(),
});
export type ReadingDecisions = z.infer<typeof zReadingDecisions>;

export const COUPLE_TYPES = ['K', 'S', 'R', 'B', 'N', 'J', 'T', 'E'] as const;
export const zCoupleType = z.enum(COUPLE_TYPES);
export type CoupleType = z.infer<typeof zCoupleType>;

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
