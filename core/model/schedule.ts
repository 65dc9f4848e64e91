import { z } from 'zod';
import { zCone } from './cone.ts';
import { zCelsius, zCelsiusPerHour } from './scalars.ts';

/**
 * One segment of a firing schedule: a climb (or a controlled fall) to a target, then a hold.
 * Exactly one of `rateCPerHour` and `minutes` says how it gets there. `"full"` is full power on the
 * way up and heat off on the way down; a rate is a magnitude and its direction follows the targets.
 */
export const zSegment = z
  .strictObject({
    rateCPerHour: z.union([zCelsiusPerHour, z.literal('full')]).nullable(),
    minutes: z.number().positive().nullable(),
    targetC: zCelsius,
    holdMinutes: z.number().nonnegative(),
  })
  .refine((segment) => (segment.rateCPerHour === null) !== (segment.minutes === null), {
    message: 'a segment has either a rate or a time',
  });
export type Segment = z.infer<typeof zSegment>;

export const zSchedule = z.strictObject({
  name: z.string(),
  cone: zCone.nullable(),
  segments: z.array(zSegment).min(1),
});
export type Schedule = z.infer<typeof zSchedule>;
