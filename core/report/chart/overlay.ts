import type { AnalysisDocument } from '../../model/document.ts';
import type { Severity } from '../../model/finding.ts';
import { celsius, temperatureIn, type TemperatureUnit } from '../../units.ts';
import { departuresIn } from './departures.ts';
import { mergedHoles, unbrokenRuns } from './holes.ts';
import { placeMarks } from './labels.ts';
import { laneOf, type Lane } from './lanes.ts';
import { overlayLayout, type OverlayLayout } from './overlay-layout.ts';
import { linePath, linesPath, outlinePath, type Point } from './path.ts';
import { phasesIn, type Phases } from './phases.ts';
import { ribbonLegs, type RibbonLeg } from './ribbon.ts';
import { bottomOf, linearScale, rightOf, type Scale } from './scale.ts';
import { roundRange, roundTicks, timeTicks } from './ticks.ts';

/** A value on an axis and where it stands. */
export interface Tick {
  readonly value: number;
  readonly at: number;
}

/** A finding's letter at its place. */
export interface Letter {
  readonly letter: string;
  readonly severity: Severity;
  readonly x: number;
  readonly y: number;
  /** The place on the curve that the letter stands for. */
  readonly footX: number;
  readonly footY: number;
}

/** A stretch that was not recorded; `isBetween` two logs of one load, or within a log. */
export interface Hole {
  readonly left: number;
  readonly width: number;
  readonly isBetween: boolean;
}

/** The overlay of plan and firing, as geometry: nothing in it is text but the phases' names. */
export interface Overlay {
  readonly layout: OverlayLayout;
  readonly actual: string;
  readonly planned: string;
  readonly fills: readonly { readonly side: 'hot' | 'cold'; readonly path: string }[];
  readonly holes: readonly Hole[];
  readonly difference: Lane | null;
  readonly slope: Lane;
  readonly ribbon: readonly RibbonLeg[];
  readonly phases: Phases;
  readonly letters: readonly Letter[];
  readonly temperatureTicks: readonly Tick[];
  readonly timeTicks: readonly Tick[];
}

/** What the caller supplies: names for the bands and letters for the findings, in their order. */
export interface OverlayNames {
  readonly bands: readonly string[];
  readonly letters: readonly string[];
}

export const LETTER_RADIUS = 9;
export const LABEL_SIZE = 11;
const MOST_TEMPERATURE_TICKS = 7;
const MOST_TIME_TICKS = 13;

interface Axes {
  readonly time: Scale;
  readonly temperature: Scale;
  readonly endSeconds: number;
  readonly ticks: readonly Tick[];
}

const axesOf = (
  { trace, alignment, curve }: AnalysisDocument,
  { plot }: OverlayLayout,
  unit: TemperatureUnit,
): Axes => {
  const planned = alignment?.planned ?? [];
  const endSeconds = Math.max(trace.durationSeconds, ...planned.map(({ atSeconds }) => atSeconds));
  const readings = [trace.minC, trace.peakC, ...curve.celsius, ...planned.map((at) => at.celsius)];
  const shown = readings.map((reading) => temperatureIn(celsius(reading), unit));
  const low = Math.min(
    0,
    shown.reduce((a, b) => Math.min(a, b)),
  );
  const high = shown.reduce((a, b) => Math.max(a, b));
  // Head room for letters that stand above the peak.
  const [from, to] = roundRange(low, high + (high - low) * 0.06, MOST_TEMPERATURE_TICKS);
  const inUnit = linearScale(from, to, bottomOf(plot), plot.top);
  return {
    endSeconds,
    time: linearScale(0, endSeconds, plot.left, rightOf(plot)),
    temperature: (reading) => inUnit(temperatureIn(celsius(reading), unit)),
    ticks: roundTicks(from, to, MOST_TEMPERATURE_TICKS).map((value) => ({
      value,
      at: inUnit(value),
    })),
  };
};

const curveAt = (
  { atSeconds, celsius: readings }: AnalysisDocument['curve'],
  at: number,
): number => {
  const after = atSeconds.findIndex((moment) => moment >= at);
  if (after <= 0) return readings.at(after) ?? 0;
  const [from, to] = [atSeconds[after - 1]!, atSeconds[after]!];
  const share = (at - from) / (to - from || 1);
  return readings[after - 1]! + share * (readings[after]! - readings[after - 1]!);
};

const lettersOn = (
  { findings, curve }: AnalysisDocument,
  letters: readonly string[],
  { plot }: OverlayLayout,
  { time, temperature }: Axes,
): Letter[] => {
  const wanted = findings.flatMap(({ evidence, severity }, index): Letter[] => {
    const first = evidence[0];
    if (!first) return [];
    const middle = (first.fromSeconds + first.toSeconds) / 2;
    const footY = temperature(curveAt(curve, middle));
    const y = footY - 2.2 * LETTER_RADIUS;
    const footX = time(middle);
    return [{ letter: letters[index] ?? '', severity, x: footX, y, footX, footY }];
  });
  const { left, top, width, height } = plot;
  const reach = LETTER_RADIUS + 2;
  const room = { left: left + reach, top: top + reach, width: width - 2 * reach };
  return placeMarks(wanted, reach, { ...room, height: height - 2 * reach });
};

/** Works out the overlay's geometry for a reader's unit. */
export const overlayOf = (
  document: AnalysisDocument,
  unit: TemperatureUnit,
  names: OverlayNames,
): Overlay => {
  const { curve, alignment, trace } = document;
  const layout = overlayLayout(alignment !== null, trace.startInstant === null ? 1 : 2);
  const axes = axesOf(document, layout, unit);
  const { time, temperature } = axes;
  const holes = mergedHoles([...trace.gaps, ...trace.noReadings]);
  const runs = unbrokenRuns(curve.atSeconds, holes);
  const point = (at: number, reading: number): Point => [time(at), temperature(reading)];
  const departures = runs.flatMap((run) => departuresIn(curve, run));
  return {
    layout,
    actual: linesPath(
      runs.map(([from, to]) =>
        curve.atSeconds.slice(from, to).map((at, index) => point(at, curve.celsius[from + index]!)),
      ),
    ),
    planned: linePath(
      (alignment?.planned ?? []).map(({ atSeconds, celsius: c }) => point(atSeconds, c)),
    ),
    fills: departures.map(({ side, atSeconds, celsius: readings, plannedC }) => ({
      side,
      path: outlinePath([
        ...atSeconds.map((at, index) => point(at, readings[index]!)),
        ...atSeconds.map((at, index) => point(at, plannedC[index]!)).reverse(),
      ]),
    })),
    holes: holes.map(({ fromSeconds, toSeconds }) => {
      const left = time(fromSeconds);
      const isBetween = fromSeconds === document.joined?.gap.fromSeconds;
      return { left, width: Math.max(1, time(toSeconds) - left), isBetween };
    }),
    difference:
      layout.difference && curve.differenceC
        ? laneOf(
            'difference',
            curve.atSeconds,
            curve.differenceC,
            runs,
            layout.difference,
            time,
            unit,
          )
        : null,
    slope: laneOf('slope', curve.atSeconds, curve.slopeCPerHour, runs, layout.slope, time, unit),
    ribbon: ribbonLegs(document, layout, time, LABEL_SIZE),
    phases: phasesIn(document, names.bands, layout.plot, time, temperature, LABEL_SIZE - 1),
    letters: lettersOn(document, names.letters, layout, axes),
    temperatureTicks: axes.ticks,
    timeTicks: timeTicks(axes.endSeconds, MOST_TIME_TICKS).map((value) => ({
      value,
      at: time(value),
    })),
  };
};
