import { z } from 'zod';
import { zChannelRole, zChannelUnit } from './options.ts';
import { zCount, zId, zShare } from './scalars.ts';

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
    decisions: z.array(zDecision),
    warnings: z.array(zId),
  })
  .refine((source) => source.rowsKept + source.rowsRejected === source.rowsRead, {
    message: 'kept and rejected rows must add up to the rows read',
  });
export type Source = z.infer<typeof zSource>;
