import type { Span } from '../model/scalars.ts';
import type { Trace } from '../model/trace.ts';
import { interpolate } from '../numeric/search.ts';
import { SECONDS_PER_MINUTE } from '../units.ts';

/** Where nearly all heat-work is done (reference: the rate over the last 100 °C decides; chosen wider). */
const NEAR_PEAK_DELTA_C = 150;

/** How long some stretches are in all. */
export const minutesOf = (spans: readonly Span[]): number =>
  spans.reduce((sum, span) => sum + span.toSeconds - span.fromSeconds, 0) / SECONDS_PER_MINUTE;

/** How long the longest of some stretches is; 0 where there is none. */
export const longestMinutes = (spans: readonly Span[]): number =>
  Math.max(0, ...spans.map((span) => minutesOf([span])));

/** Whether a stretch begins or ends near the peak, so that what happens in it is heat-work. */
export const isNearPeak =
  ({ atSeconds, smoothC, summary }: Pick<Trace, 'atSeconds' | 'smoothC' | 'summary'>) =>
  ({ fromSeconds, toSeconds }: Span): boolean =>
    [fromSeconds, toSeconds].some(
      (moment) => interpolate(atSeconds, smoothC, moment) >= summary.peakC - NEAR_PEAK_DELTA_C,
    );
