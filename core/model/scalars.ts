import { z } from 'zod';
import type { Celsius, CelsiusDelta, CelsiusPerHour, Seconds } from '../units.ts';

/**
 * Schemas of the branded scalars. A brand exists in types only, so the schema of each is that of a
 * finite number; the cast is the single place where the two meet.
 */
const branded = <Scalar extends number>() =>
  z.number() as unknown as z.ZodType<Scalar> & z.ZodNumber;

export const zCelsius = branded<Celsius>();
export const zCelsiusDelta = branded<CelsiusDelta>();
export const zCelsiusPerHour = branded<CelsiusPerHour>();
export const zSeconds = branded<Seconds>();

export const zCount = z.number().int().nonnegative();
export const zShare = z.number().min(0).max(1);
/** A word from a closed list kept elsewhere, or a reason's name: never a sentence. */
export const zId = z.string().regex(/^[a-z0-9][a-z0-9-]*$/);

export const zSpan = z.strictObject({ fromSeconds: zSeconds, toSeconds: zSeconds });
export type Span = z.infer<typeof zSpan>;
