import { departuresIn, type Departure } from '../../core/report/chart/departures.ts';
import { mergedHoles, unbrokenRuns } from '../../core/report/chart/holes.ts';
import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Span } from '../../core/model/scalars.ts';
import { celsius, celsiusDelta, differenceIn, temperatureIn } from '../../core/units.ts';
import type { Words } from '../../core/wording/wording.ts';
import type { ShownTrace } from '../worker/protocol.ts';
import { plannedAt, sliceOf, type Slice } from './slice.ts';
import type { View } from './view.ts';

/** One ware phase as a band of temperatures on one side of the peak. */
export interface Phase {
  readonly name: string;
  readonly lowC: number;
  readonly highC: number;
  readonly fromSeconds: number;
  readonly toSeconds: number;
  readonly isHeating: boolean;
}

/** All of a firing that the pictures are made from, worked out once a document. */
export interface Scene {
  readonly document: AnalysisDocument;
  readonly trace: ShownTrace;
  readonly words: Words;
  readonly whole: View;
  readonly holes: readonly Span[];
  readonly departures: readonly Departure[];
  readonly phases: readonly Phase[];
}

/** As many points as a wide screen has columns, twice over (chosen). */
export const POINTS_DRAWN = 4000;

/**
 * Values that last for less than the rest of these shares of the view are cut off in the lanes:
 * the plunge after shut-off would flatten everything else (chosen; an overshoot of 12 minutes in a
 * firing of 9 hours is still shown whole).
 */
const KEPT_SHARES = { difference: 0.99, slope: 0.97 } as const;
/** The least that a lane reaches, in the reader's degrees (chosen). */
const LEAST_REACH = 6;

const wholeOf = ({ trace, alignment }: AnalysisDocument): View => {
  const planned = alignment?.planned ?? [];
  return {
    from: Math.min(0, planned[0]?.atSeconds ?? 0),
    to: Math.max(trace.durationSeconds, planned.at(-1)?.atSeconds ?? 0, 1),
  };
};

const phasesOf = ({ bands, trace }: AnalysisDocument, words: Words, whole: View): Phase[] =>
  bands.map(({ fromC, toC, direction }, index) => {
    const [lowC, highC] = [Math.min(fromC, toC), Math.max(fromC, toC)];
    const isHeating = direction === 'heating';
    return {
      name: words.bands[index]?.short ?? '',
      ...{ lowC, highC, isHeating },
      fromSeconds: isHeating ? whole.from : trace.peakAtSeconds,
      toSeconds: isHeating ? trace.peakAtSeconds : whole.to,
    };
  });

/** The size that all but the rarest values stay within, weighing each by how long it lasted. */
const reachOf = (
  atSeconds: readonly number[],
  values: readonly (number | null)[],
  keptShare: number,
): number => {
  const weighted = values
    .map((value, i) => {
      const weight = (atSeconds[i + 1] ?? atSeconds[i]!) - (atSeconds[i - 1] ?? atSeconds[i]!);
      return { size: value === null ? null : Math.abs(value), weight };
    })
    .filter((entry): entry is { size: number; weight: number } => entry.size !== null)
    .sort((a, b) => a.size - b.size);
  const total = weighted.reduce((sum, { weight }) => sum + weight, 0);
  let seen = 0;
  const most = weighted.find(({ weight }) => (seen += weight) >= keptShare * total);
  return Math.max(LEAST_REACH, most?.size ?? 0);
};

export const sceneOf = (document: AnalysisDocument, trace: ShownTrace, words: Words): Scene => {
  const { curve } = document;
  const holes = mergedHoles([...document.trace.gaps, ...document.trace.noReadings]);
  const whole = wholeOf(document);
  const runs = unbrokenRuns(curve.atSeconds, holes);
  return {
    ...{ document, trace, words, holes, whole },
    departures: runs.flatMap((run) => departuresIn(curve, run)),
    phases: phasesOf(document, words, whole),
  };
};

/** What a view shows of a scene, in the reader's unit. */
export interface Picture {
  readonly view: View;
  readonly atSeconds: readonly number[];
  readonly kiln: readonly (number | null)[];
  /** The other measured places, each a line of its own. */
  readonly places: readonly (readonly (number | null)[])[];
  readonly difference: readonly (number | null)[];
  readonly slope: readonly (number | null)[];
  readonly temperatures: readonly [low: number, high: number];
  /** How far the lanes reach about their zero. */
  readonly reach: { readonly difference: number; readonly slope: number };
}

/** Head room for the letters above the curve, and a little below it, as shares (chosen). */
const HEAD_ROOM = 0.16;
const FOOT_ROOM = 0.04;
/** The least span of temperatures shown, in the reader's degrees (chosen: a hold's wander is seen). */
const LEAST_SPAN = 12;

const extremes = (lists: readonly (readonly (number | null)[])[]): [number, number] => {
  let [low, high] = [Infinity, -Infinity];
  for (const list of lists) {
    for (const value of list) {
      if (value === null) continue;
      if (value < low) low = value;
      if (value > high) high = value;
    }
  }
  return low > high ? [0, 1] : [low, high];
};

/** The plan's temperatures within a view: at its edges and at every corner between. */
const plannedWithin = ({ document }: Scene, { from, to }: View): (number | null)[] => {
  const corners = document.alignment?.planned ?? [];
  const inside = corners.filter(({ atSeconds }) => atSeconds > from && atSeconds < to);
  return [plannedAt(corners, from), ...inside.map((at) => at.celsius), plannedAt(corners, to)];
};

export const pictureOf = (scene: Scene, view: View): Picture => {
  const { trace, document, holes, words } = scene;
  const slice: Slice = sliceOf(
    trace,
    document.alignment?.planned ?? null,
    holes,
    view,
    POINTS_DRAWN,
  );
  const temperature = (c: number | null): number | null =>
    c === null ? null : temperatureIn(celsius(c), words.unit);
  const degrees = (c: number | null): number | null =>
    c === null ? null : differenceIn(celsiusDelta(c), words.unit);
  const kiln = slice.celsius.map(temperature);
  const planned = plannedWithin(scene, view).map(temperature);
  const [low, high] = extremes([kiln, planned]);
  const middle = (low + high) / 2;
  const span = Math.max(LEAST_SPAN, high - low);
  const { atSeconds } = slice;
  const difference = slice.differenceC.map(degrees);
  const slope = slice.slopeCPerHour.map(degrees);
  const places = trace.zones.map(({ celsius: readings }) =>
    slice.sample.map((index) => {
      const reading = index === null ? NaN : readings[index]!;
      return Number.isFinite(reading) ? temperature(reading) : null;
    }),
  );
  return {
    ...{ view, atSeconds, kiln, places, difference, slope },
    reach: {
      difference: reachOf(atSeconds, difference, KEPT_SHARES.difference),
      slope: reachOf(atSeconds, slope, KEPT_SHARES.slope),
    },
    temperatures: [middle - span * (0.5 + FOOT_ROOM), middle + span * (0.5 + HEAD_ROOM)],
  };
};
