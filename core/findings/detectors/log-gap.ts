import type { Severity } from '../../model/finding.ts';
import type { Span } from '../../model/scalars.ts';
import type { Trace } from '../../model/trace.ts';
import { defineDetector, foundAny, type Draft } from '../detector.ts';
import { longest } from '../marks.ts';
import { isNearPeak, longestMinutes, minutesOf } from '../spans.ts';

/**
 * Chosen: at cone 6 after 60 °C/h ten minutes more or less at the peak are some 0.4 of the cone's
 * dose (E about 700 kJ/mol, reference), a quarter to half a cone.
 */
const WATCH_NEAR_PEAK_MINUTES = 10;
/** Chosen: near the peak even a short pause is told; the trace lists none under three minutes. */
const NOTE_NEAR_PEAK_MINUTES = 3;
/** Chosen: elsewhere the kiln goes on as before, and only a pause of some length is worth a word. */
const NOTE_ELSEWHERE_MINUTES = 10;

const overlaps = (a: Span, b: Span): boolean =>
  a.fromSeconds < b.toSeconds && b.fromSeconds < a.toSeconds;

/** Pauses in which no row came at all; rows with a false reading or none are the couple's. */
const pausesOf = ({ summary, removed }: Trace): Span[] =>
  summary.gaps.filter(
    (gap) =>
      !summary.noReadings.some((open) => overlaps(gap, open)) &&
      !removed.some(({ atSeconds }) => atSeconds > gap.fromSeconds && atSeconds < gap.toSeconds),
  );

const draft = (gaps: readonly Span[], limitMinutes: number, severity: Severity): Draft[] => {
  const gapMinutes = minutesOf(gaps);
  if (gaps.length === 0 || gapMinutes < limitMinutes) return [];
  return [
    {
      severity,
      evidence: longest(gaps),
      figures: {
        gaps: gaps.length,
        gapMinutes,
        longestMinutes: longestMinutes(gaps),
      },
      thresholds: { gapMinutes: limitMinutes },
      instead: ['power-interrupted', 'clock-jump', 'sensor-open'],
    },
  ];
};

/**
 * Are there pauses in the record? Those near the peak, where they hide heat-work, are told apart
 * from the rest. Never `act`: the logger wants looking after, the ware need not. What counts as a
 * pause is the trace's own rule (core/trace/gaps.ts).
 */
export const logGap = defineDetector({
  id: 'log-gap',
  needs: ['samples'],
  detect: ({ samples }) => {
    const pauses = pausesOf(samples);
    const isNear = isNearPeak(samples);
    const near = pauses.filter(isNear);
    const far = pauses.filter((gap) => !isNear(gap));
    const watched = draft(near, WATCH_NEAR_PEAK_MINUTES, 'watch');
    return foundAny([
      ...(watched.length > 0 ? watched : draft(near, NOTE_NEAR_PEAK_MINUTES, 'note')),
      ...draft(far, NOTE_ELSEWHERE_MINUTES, 'note'),
    ]);
  },
});
