import type { Trace } from '../../model/trace.ts';
import { interpolate, lowerBound } from '../../numeric/search.ts';
import { fallsAsOpened } from '../../trace/shut-kiln.ts';
import { celsius, seconds, SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../../units.ts';
import { clear, defineDetector, found, notApplicable } from '../detector.ts';

/** Below this kilns are opened by some; others wait for room temperature (reference notes). */
const OPENED_ABOVE_C = 200;
/** From here on the ware itself is at risk: quartz has yet to invert (573 °C; chosen wider). */
const ACT_ABOVE_C = 600;

/** What the kiln did before is read over this … */
const BEFORE_SECONDS = 20 * SECONDS_PER_MINUTE;
/** … and what it did at once over this, or two readings where they are further apart (chosen). */
const AFTER_SECONDS = 5 * SECONDS_PER_MINUTE;
const AFTER_READINGS = 2;

/**
 * Cooling that grows so much at once has a new cause: a shut kiln only slows down (chosen). It must
 * also be more than a shut kiln ever loses, so that the end of a controlled fall is no opening.
 */
const SUDDEN_FACTOR = 2.5;
const SUDDEN_C_PER_HOUR = 100;
/** Slower than this the kiln was not cooling before: it was held, or heated (chosen). */
const COOLING_C_PER_HOUR = 5;

interface Opening {
  readonly atSeconds: number;
  readonly openedC: number;
  readonly beforeCPerHour: number;
  readonly fellCPerHour: number;
}

/** The mean rate of falling over a time from a moment, °C/h. */
const fallCPerHour = ({ atSeconds, celsius: readC }: Trace, from: number, to: number): number => {
  const drop = interpolate(atSeconds, readC, from) - interpolate(atSeconds, readC, to);
  return (drop * SECONDS_PER_HOUR) / (to - from);
};

const isSudden = ({ openedC, beforeCPerHour, fellCPerHour }: Opening): boolean =>
  beforeCPerHour >= COOLING_C_PER_HOUR &&
  fellCPerHour >= SUDDEN_FACTOR * beforeCPerHour &&
  fellCPerHour >= beforeCPerHour + SUDDEN_C_PER_HOUR &&
  fallsAsOpened(fellCPerHour, openedC);

/** The first moment after the peak at which a kiln that was cooling falls as no shut one does. */
const firstOpening = (samples: Trace): Opening | null => {
  const { atSeconds, celsius: readC, summary } = samples;
  const after = Math.max(AFTER_SECONDS, AFTER_READINGS * summary.medianIntervalSeconds);
  const end = summary.durationSeconds - after;
  const first = lowerBound(atSeconds, summary.peakAtSeconds + BEFORE_SECONDS);
  for (let i = first; i < atSeconds.length && atSeconds[i]! <= end; i += 1) {
    if (readC[i]! < OPENED_ABOVE_C) return null;
    const at = atSeconds[i]!;
    const isUnseen = summary.gaps.some(
      ({ fromSeconds, toSeconds }) => fromSeconds < at + after && toSeconds > at - BEFORE_SECONDS,
    );
    if (isUnseen) continue;
    const opening: Opening = {
      atSeconds: at,
      openedC: readC[i]!,
      beforeCPerHour: fallCPerHour(samples, at - BEFORE_SECONDS, at),
      fellCPerHour: fallCPerHour(samples, at, at + after),
    };
    if (isSudden(opening)) return opening;
  }
  return null;
};

/** Was the kiln opened while it was hot? */
export const openedHot = defineDetector({
  id: 'opened-hot',
  needs: ['samples'],
  detect: ({ samples }) => {
    const { peakC, durationSeconds, peakAtSeconds } = samples.summary;
    const cooled = peakAtSeconds + BEFORE_SECONDS < durationSeconds;
    if (peakC < OPENED_ABOVE_C || !cooled) return notApplicable('no-cooling-logged');
    const opening = firstOpening(samples);
    if (opening === null) return clear();
    const { atSeconds, openedC, beforeCPerHour, fellCPerHour } = opening;
    const at = seconds(atSeconds);
    return found({
      severity: openedC >= ACT_ABOVE_C ? 'act' : 'watch',
      evidence: [{ fromSeconds: at, toSeconds: at, celsius: celsius(openedC) }],
      figures: { openedC, beforeCPerHour, fellCPerHour },
      thresholds: { openedC: OPENED_ABOVE_C },
      instead: ['sensor-open', 'power-interrupted', 'cooling-fast'],
    });
  },
});
