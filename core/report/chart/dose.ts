import type { HeatWork } from '../../model/document.ts';
import { linePath, type Point } from './path.ts';
import { bottomOf, linearScale, rightOf, type Box } from './scale.ts';
import { roundRange, roundTicks, timeTicksWithin } from './ticks.ts';

/** Dose against time as geometry. */
export interface DoseChart {
  readonly width: number;
  readonly height: number;
  readonly plot: Box;
  readonly line: string;
  /** Where the dose that brings the cone down lies. */
  readonly downY: number;
  readonly doseTicks: readonly { readonly value: number; readonly at: number }[];
  readonly timeTicks: readonly { readonly value: number; readonly at: number }[];
}

const WIDTH = 420;
const HEIGHT = 200;
const PLOT: Box = { left: 40, top: 12, width: WIDTH - 40 - 14, height: HEIGHT - 12 - 26 };

/** The chart begins where this share of the whole dose has been reached: below it nothing happens. */
const FROM_SHARE = 0.01;
/** … and ends where all but this share has. */
const REST_SHARE = 0.01;
/** Some room on either side of it, as a share of the stretch shown (chosen). */
const ROOM = 0.08;

/** A time such as `10:30 h` takes some 60 of the plot's 366 units. */
const MOST_TIME_STEPS = 5;

/** The stretch in which the heat-work happens, widened a little; null where there was none. */
const busyStretch = (accumulated: HeatWork['accumulated']): [number, number] | null => {
  const total = accumulated.at(-1)?.dose ?? 0;
  if (total <= 0) return null;
  const from = accumulated.find(({ dose }) => dose >= FROM_SHARE * total)?.atSeconds ?? 0;
  const to = accumulated.find(({ dose }) => dose >= (1 - REST_SHARE) * total)?.atSeconds ?? from;
  const room = Math.max(60, ROOM * (to - from));
  return [Math.max(0, from - room), to + room];
};

/** Dose against time over the stretch in which it was done; null where nothing was done. */
export const doseChart = ({ accumulated }: Pick<HeatWork, 'accumulated'>): DoseChart | null => {
  const stretch = busyStretch(accumulated);
  if (stretch === null) return null;
  const [from, to] = stretch;
  const most = Math.max(1.1, ...accumulated.map(({ dose }) => dose));
  const [, top] = roundRange(0, most, 5);
  const time = linearScale(from, to, PLOT.left, rightOf(PLOT));
  const height = linearScale(0, top, bottomOf(PLOT), PLOT.top);
  const shown = accumulated.filter((_, index) => {
    const next = accumulated[index + 1]?.atSeconds ?? Infinity;
    const before = accumulated[index - 1]?.atSeconds ?? -Infinity;
    return next >= from && before <= to;
  });
  const points = shown.map(({ atSeconds, dose }): Point => {
    const x = Math.min(Math.max(time(atSeconds), PLOT.left), rightOf(PLOT));
    return [x, height(dose)];
  });
  return {
    width: WIDTH,
    height: HEIGHT,
    plot: PLOT,
    line: linePath(points),
    downY: height(1),
    doseTicks: roundTicks(0, top, 5).map((value) => ({ value, at: height(value) })),
    timeTicks: timeTicksWithin(from, to, MOST_TIME_STEPS).map((value) => ({
      value,
      at: time(value),
    })),
  };
};
