import type { Severity } from '../../model/finding.ts';
import type { Repair, Trace } from '../../model/trace.ts';
import { interpolate } from '../../numeric/search.ts';
import { SECONDS_PER_HOUR } from '../../units.ts';
import { clear, defineDetector, found } from '../detector.ts';
import { isFalseReading } from '../false-readings.ts';
import { longest } from '../marks.ts';

/** Chosen: one or two bursts in a night can be a relay or a motor nearby. */
const NOTE_TIMES = 3;
/** Chosen: no longer chance; a connection or the couple itself is going. */
const WATCH_TIMES = 10;
/**
 * Chosen: from one reading in twenty on, or four bursts an hour all firing long, a controller on
 * the same couple has been steered by false readings.
 */
const ACT = { falsePercent: 5, timesPerHour: 4 } as const;

interface Amount {
  /** Bursts, each of one false reading or more. */
  readonly times: number;
  /** False readings in all. */
  readonly spikes: number;
  readonly falsePercent: number;
  readonly timesPerHour: number;
}

const amountOf = (bursts: readonly Repair[], { summary }: Trace): Amount => {
  const spikes = bursts.reduce((sum, { samples }) => sum + samples, 0);
  const { samples, durationSeconds } = summary;
  return {
    times: bursts.length,
    spikes,
    falsePercent: (100 * spikes) / (samples + spikes),
    timesPerHour: durationSeconds > 0 ? (bursts.length * SECONDS_PER_HOUR) / durationSeconds : 0,
  };
};

/** How far the worst false reading stood off the curve. */
const largestDeltaC = ({ removed, atSeconds, smoothC }: Trace): number =>
  removed
    .filter(isFalseReading)
    .map((sample) => Math.abs(sample.celsius - interpolate(atSeconds, smoothC, sample.atSeconds)))
    .reduce((most, deltaC) => Math.max(most, deltaC), 0);

/** `act` where the false readings are so many that they steered the kiln, not only the log. */
const severityOf = ({ times, falsePercent, timesPerHour }: Amount): Severity => {
  if (times < WATCH_TIMES) return 'note';
  return falsePercent >= ACT.falsePercent || timesPerHour >= ACT.timesPerHour ? 'act' : 'watch';
};

/** Did readings jump as no kiln can, and come back? */
export const sensorSpikes = defineDetector({
  id: 'sensor-spikes',
  needs: ['samples'],
  detect: ({ samples }) => {
    const bursts = samples.summary.repairs.filter(isFalseReading);
    if (bursts.length < NOTE_TIMES) return clear();
    const amount = amountOf(bursts, samples);
    const severity = severityOf(amount);
    return found({
      severity,
      evidence: longest(bursts),
      figures: { ...amount, largestDeltaC: largestDeltaC(samples) },
      thresholds: {
        times: severity === 'note' ? NOTE_TIMES : WATCH_TIMES,
        ...(severity === 'act' ? ACT : {}),
      },
      instead: ['sensor-open', 'sensor-wrong-type', 'element-lost'],
    });
  },
});
