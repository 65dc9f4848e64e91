import type { RemovedSample, Repair } from '../model/trace.ts';

/** Whether readings were taken out because the kiln cannot have had them. */
export const isFalseReading = ({ kind }: Pick<Repair | RemovedSample, 'kind'>): boolean =>
  kind === 'spike' || kind === 'dropout' || kind === 'out-of-range';
