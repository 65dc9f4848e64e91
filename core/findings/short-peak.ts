import type { Schedule } from '../model/schedule.ts';
import type { TraceSummary } from '../model/trace.ts';
import { topC } from './legs.ts';

/** Chosen: what a working controller stays within once it holds. */
const SHORT_DELTA_C = 5;
/** … or this many times the noise, where that is more. */
const SIGMAS = 3;

type Peak = Pick<TraceSummary, 'peakC' | 'noiseC' | 'resolutionC'>;

/** How far the hottest reading stayed below the schedule's hottest target, °C. */
export const shortOfPeakC = (schedule: Schedule, { peakC }: Peak): number => topC(schedule) - peakC;

/** Within this, in °C, the record cannot show that the hottest target was not reached. */
export const peakToleranceC = ({ noiseC, resolutionC }: Peak): number =>
  Math.max(SHORT_DELTA_C, SIGMAS * noiseC, resolutionC);

/** Whether the hottest target was clearly not reached. */
export const isPeakShort = (schedule: Schedule, trace: Peak): boolean =>
  shortOfPeakC(schedule, trace) > peakToleranceC(trace);
