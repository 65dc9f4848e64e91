import { movedInstant } from '../log/time/civil.ts';
import type { Log } from '../model/log.ts';
import type { Trace, TraceSummary } from '../model/trace.ts';
import { Refusal } from '../model/refusal.ts';
import { celsius as asCelsius, seconds } from '../units.ts';
import { medianInterval } from './clock.ts';
import { findOff, findStart } from './events.ts';
import { findGaps, findNoReadings } from './gaps.ts';
import { findLegs } from './legs.ts';
import { estimateNoise, estimateResolution } from './noise.ts';
import { repairLog, type Samples } from './repair-log.ts';
import { picked } from '../numeric/search.ts';
import { localSlopes } from './slopes.ts';

const pickedOrNull = (values: Float64Array | null, indices: Uint32Array): Float64Array | null =>
  values === null ? null : picked(values, indices);

/** The log says when its first row was written, which need not be the first in time. */
const startInstant = (log: Log, { originStamp }: Samples): string | null =>
  log.startInstant === null ? null : movedInstant(log.startInstant, originStamp);

const summarise = (
  log: Log,
  samples: Samples,
  slopes: ReturnType<typeof localSlopes>,
  noiseC: TraceSummary['noiseC'],
  interval: number,
): TraceSummary => {
  const { atSeconds, celsius } = samples;
  const legs = findLegs({ atSeconds, celsius, noiseC, ...slopes });
  let lowest = 0;
  let highest = 0;
  for (let i = 1; i < celsius.length; i++) {
    if (celsius[i]! < celsius[lowest]!) lowest = i;
    if (celsius[i]! > celsius[highest]!) highest = i;
  }
  return {
    samples: celsius.length,
    startInstant: startInstant(log, samples),
    durationSeconds: seconds(atSeconds[atSeconds.length - 1]!),
    medianIntervalSeconds: seconds(interval),
    noiseC,
    resolutionC: estimateResolution(celsius),
    minC: asCelsius(celsius[lowest]!),
    peakC: asCelsius(celsius[highest]!),
    peakAtSeconds: seconds(atSeconds[highest]!),
    startSeconds: findStart(samples, noiseC),
    offSeconds: findOff(legs),
    gaps: findGaps(atSeconds, interval),
    noReadings: findNoReadings(
      atSeconds,
      Array.from(log.noReadingSeconds, samples.onRepairedClock),
      interval,
    ),
    repairs: [...samples.repairs],
    legs,
  };
};

/**
 * The one maker of traces: a log's columns put on one forward clock, freed of readings the kiln
 * cannot have had, and measured (interval, noise, slopes, gaps, the trace's own legs).
 *
 * @throws Refusal `too-few-rows` where fewer than two samples remain.
 */
export const makeTrace = (log: Log): Trace => {
  const samples = repairLog(log);
  if (samples.celsius.length < 2) {
    throw new Refusal(
      'too-few-rows',
      'only one usable reading is left after repairs; a firing needs at least two readings with a time and a temperature',
    );
  }
  const noiseC = estimateNoise(samples.atSeconds, samples.celsius);
  const interval = medianInterval(samples.atSeconds);
  const slopes = localSlopes(samples.atSeconds, samples.celsius, noiseC, interval);
  return {
    summary: summarise(log, samples, slopes, noiseC, interval),
    atSeconds: samples.atSeconds,
    celsius: samples.celsius,
    ...slopes,
    setpointC: pickedOrNull(log.setpointC, samples.row),
    outputPercent: pickedOrNull(log.outputPercent, samples.row),
    zones: log.zones.map((zone) => ({
      channel: zone.channel,
      celsius: picked(zone.celsius, samples.row),
    })),
    removed: samples.removed,
  };
};
