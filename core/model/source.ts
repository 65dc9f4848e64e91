import { z } from 'zod';
import { zChannelRole, zChannelUnit } from './options.ts';
import { zCelsius, zCount, zId, zSeconds, zShare } from './scalars.ts';

/** At most this many rejected rows are listed; all are counted. */
export const REJECTED_ROWS_LISTED = 200;

export const zRejectedRow = z.strictObject({
  line: z.number().int().positive(),
  reason: zId,
  text: z.string(),
});
export type RejectedRow = z.infer<typeof zRejectedRow>;

export const zChannel = z.strictObject({
  name: z.string(),
  /** 0-based position among the file's columns; for JSON, the order in which keys were met. */
  column: zCount,
  unit: zChannelUnit.nullable(),
  role: zChannelRole,
  chosen: z.boolean(),
});
export type Channel = z.infer<typeof zChannel>;

export const zDecision = z.strictObject({
  what: zId,
  choice: z.string(),
  why: zId,
  certainty: zShare,
});
export type Decision = z.infer<typeof zDecision>;

/** One of several firings in a log. */
export const zFiringInLog = z.strictObject({
  /** On the log's own clock, from its first kept sample. */
  startSeconds: zSeconds,
  endSeconds: zSeconds,
  startInstant: z.string().nullable(),
  peakC: zCelsius,
  samples: zCount,
  /** Whether it is the one that this document analyses. */
  chosen: z.boolean(),
});
export type FiringInLog = z.infer<typeof zFiringInLog>;

/** The full account of how the file was read. */
export const zSource = z
  .strictObject({
    fileName: z.string(),
    byteLength: zCount,
    sha256: z.string().nullable(),
    format: z.enum(['delimited', 'json', 'json-lines', 'typed-in']),
    encoding: z.string(),
    delimiter: z.string().nullable(),
    decimalMark: z.enum(['.', ',']).nullable(),
    headerLine: z.number().int().positive().nullable(),
    rowsRead: zCount,
    rowsKept: zCount,
    rowsRejected: zCount,
    rejected: z.array(zRejectedRow).max(REJECTED_ROWS_LISTED),
    time: z.strictObject({
      columns: z.array(z.string()),
      kind: z.enum(['instant', 'elapsed']),
      pattern: z.string(),
      assumptions: z.array(zId),
    }),
    channels: z.array(zChannel),
    /** The firings in order of time, where the log holds more than one; else left out. */
    firings: z.array(zFiringInLog).min(2).optional(),
    decisions: z.array(zDecision),
    warnings: z.array(zId),
  })
  .refine((source) => source.rowsKept + source.rowsRejected === source.rowsRead, {
    message: 'kept and rejected rows must add up to the rows read',
  });
export type Source = z.infer<typeof zSource>;
