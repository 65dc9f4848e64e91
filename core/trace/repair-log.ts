import type { Log } from '../model/log.ts';
import type { RemovedSample, Repair } from '../model/trace.ts';
import { picked } from '../numeric/search.ts';
import { medianInterval, repairClock } from './clock.ts';
import { estimateNoise } from './noise.ts';
import { removeOutliers } from './outliers.ts';

/** The repaired samples of a log, in order, and the rows of the log they came from. */
export interface Samples {
  readonly atSeconds: Float64Array;
  readonly celsius: Float64Array;
  readonly row: Uint32Array;
  readonly removed: readonly RemovedSample[];
  readonly repairs: readonly Repair[];
  /** The repaired time of a moment by the log's own stamps. */
  readonly onRepairedClock: (stampSeconds: number) => number;
  /** The moment at which the repaired clock stands at 0, by the log's own stamps. */
  readonly originStamp: number;
}

/** Puts a log on one forward clock and takes out readings that the kiln cannot have had. */
export const repairLog = (log: Log): Samples => {
  const clock = repairClock(log.atSeconds, log.celsius);
  const celsius = picked(log.celsius, clock.row);
  const noiseC = estimateNoise(clock.atSeconds, celsius);
  const interval = medianInterval(clock.atSeconds);
  const cleaned = removeOutliers(clock.atSeconds, celsius, noiseC, interval);
  return {
    atSeconds: picked(clock.atSeconds, cleaned.keep),
    celsius: picked(celsius, cleaned.keep),
    row: cleaned.keep.map((i) => clock.row[i]!),
    removed: cleaned.removed,
    repairs: [...clock.repairs, ...cleaned.repairs].sort((a, b) => a.fromSeconds - b.fromSeconds),
    onRepairedClock: clock.onRepairedClock,
    originStamp: log.atSeconds[clock.row[0] ?? 0] ?? 0,
  };
};
