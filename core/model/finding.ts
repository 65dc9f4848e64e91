import { z } from 'zod';
import { zCelsius, zId, zSeconds } from './scalars.ts';

/** Every finding the tool knows, grouped by what it speaks of. */
export const FINDING_IDS = [
  // heat-work
  'underfired',
  'overfired',
  'wrong-end-cone',
  // schedule
  'ramp-slow',
  'ramp-fast',
  'hold-short',
  'hold-drift',
  'segment-missing',
  'ended-early',
  'overshoot',
  'peak-not-reached',
  'schedule-suspect',
  // kiln
  'elements-weak',
  'element-lost',
  'power-stuck-on',
  'power-interrupted',
  'heavy-load',
  'ceiling-near',
  'supply-varies',
  // thermocouple
  'sensor-open',
  'sensor-spikes',
  'sensor-flat',
  'sensor-reversed',
  'sensor-wrong-type',
  'sensor-lag',
  'sensor-drift',
  'zones-apart',
  // log
  'log-gap',
  'log-starts-hot',
  'log-ends-early',
  'clock-jump',
  'log-coarse',
  'several-firings',
  // ware
  'drying-fast',
  'burnout-fast',
  'quartz-fast-heating',
  'quartz-fast-cooling',
  'cooling-fast',
  'cooling-differs',
  'opened-hot',
] as const;
export const zFindingId = z.enum(FINDING_IDS);
export type FindingId = z.infer<typeof zFindingId>;

/** `act`: do something before the next load; `watch`: keep an eye on it; `note`: good to know. */
export const zSeverity = z.enum(['act', 'watch', 'note']);
export type Severity = z.infer<typeof zSeverity>;

export const zEvidence = z.strictObject({
  fromSeconds: zSeconds,
  toSeconds: zSeconds,
  celsius: zCelsius.optional(),
});
export type Evidence = z.infer<typeof zEvidence>;

export const zFinding = z.strictObject({
  id: zFindingId,
  severity: zSeverity,
  evidence: z.array(zEvidence),
  /** Measured values; each name ends in its unit (`…C`, `…DeltaC`, `…CPerHour`, `…Minutes`, `…Cones`). */
  figures: z.record(z.string(), z.number()),
  thresholds: z.record(z.string(), z.number()),
  /** Other findings that could explain the same evidence. */
  instead: z.array(zFindingId),
});
export type Finding = z.infer<typeof zFinding>;

export const zCheck = z.strictObject({
  id: zFindingId,
  outcome: z.enum(['found', 'clear', 'not-applicable', 'failed']),
  reason: zId,
});
export type Check = z.infer<typeof zCheck>;
