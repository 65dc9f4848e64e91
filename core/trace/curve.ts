import type { Curve } from '../model/document.ts';
import type { Trace } from '../model/trace.ts';
import {
  celsius,
  celsiusDelta,
  celsiusPerHour,
  seconds,
  type Celsius,
  type Seconds,
} from '../units.ts';
import { interpolate } from '../numeric/search.ts';
import { minMaxIndices } from './thin.ts';

/** Enough that no screen or page shows the thinning (chosen). */
const CURVE_POINTS = 3000;

/** Hundredths of a degree are below any logger's noise, and half the size when written out. */
const rounded = (value: number, places: number): number => {
  const scale = 10 ** places;
  // Adding 0 makes a plain 0 of −0, which JSON does not know.
  return Math.round(value * scale) / scale + 0;
};

interface Corner {
  readonly atSeconds: Seconds;
  readonly celsius: Celsius;
}

/** Actual minus planned at a moment, or null where the plan does not reach. */
const differenceFrom = (planned: readonly Corner[]) => {
  const times = planned.map((corner) => corner.atSeconds);
  const values = planned.map((corner) => corner.celsius);
  const first = times[0] ?? Infinity;
  const last = times.at(-1) ?? -Infinity;
  return (atSeconds: number, actualC: number) =>
    atSeconds < first || atSeconds > last
      ? null
      : celsiusDelta(rounded(actualC - interpolate(times, values, atSeconds), 2));
};

/** The thinned curve that every picture of the firing is drawn from: no peak and no dip is lost. */
export const thinnedCurve = (trace: Trace, planned: readonly Corner[] | null): Curve => {
  const indices = minMaxIndices(trace.atSeconds, trace.celsius, CURVE_POINTS);
  const differenceAt = planned === null ? null : differenceFrom(planned);
  return {
    atSeconds: indices.map((i) => seconds(rounded(trace.atSeconds[i]!, 1))),
    celsius: indices.map((i) => celsius(rounded(trace.celsius[i]!, 2))),
    slopeCPerHour: indices.map((i) => celsiusPerHour(rounded(trace.slopeCPerHour[i]!, 1))),
    differenceC:
      differenceAt === null
        ? null
        : indices.map((i) => differenceAt(trace.atSeconds[i]!, trace.celsius[i]!)),
  };
};
