import { z } from 'zod';
import { zReadingDecisions } from './options.ts';

/** A person's corrections that hold for every file of one shape. */
export const zReadingRule = z.strictObject({
  /** What the person calls it. */
  name: z.string().min(1),
  /** The fingerprint of the shape, as `shapeOfFile` (core/log/rules.ts) gives it. */
  shape: z.string().min(1),
  decisions: zReadingDecisions,
});
export type ReadingRule = z.infer<typeof zReadingRule>;
