import uPlot from 'uplot';
import type { Palette } from '../../core/report/html/palette.ts';
import { roundStep, roundTicks } from '../../core/report/chart/ticks.ts';
import {
  paintDepartures,
  paintDimming,
  paintHoles,
  paintPlaces,
  paintPlanned,
  paintRemoved,
  paintTimeGrid,
  paintZero,
  type Painting,
} from './paint.ts';
import { paintPhases } from './paint-phases.ts';
import type { Picture } from './scene.ts';

/** The three pictures on one clock. */
export type LaneName = 'curve' | 'difference' | 'slope';

export interface Measures {
  readonly width: number;
  readonly height: number;
  /** The room for the scale on the left, and the little on the right. */
  readonly left: number;
  readonly right: number;
}

export interface Plot {
  readonly draw: (painting: Painting, measures: Measures) => void;
  /** Where a value stands, in pixels from the plot's top. */
  readonly heightOf: (value: number) => number;
  readonly destroy: () => void;
}

const TOP_PX = 6;
/** So much of a lane lies within its outermost numbers, which would else be cut (chosen). */
const LANE_ROOM = 1.35;
const numberText = (value: number): string => String(value).replace('-', '−');

const signed = (value: number): string => (value > 0 ? `+${value}` : numberText(value));

/** How far a lane reaches about its zero, in the reader's degrees: a round number. */
const reachIn = (lane: 'difference' | 'slope', { picture }: Painting): number =>
  roundStep(picture.reach[lane], 1);

const clippedTo = (values: readonly (number | null)[], reach: number): (number | null)[] =>
  values.map((value) => (value === null ? null : Math.min(Math.max(value, -reach), reach)));

const columnsOf = (lane: LaneName, painting: Painting): (number | null)[] => {
  const picture: Picture = painting.picture;
  if (lane === 'curve') return [...picture.kiln];
  return clippedTo(picture[lane], reachIn(lane, painting) * LANE_ROOM);
};

const fillOf = (lane: LaneName, palette: Palette) => (u: uPlot) => {
  const { top, height } = u.bbox;
  const gradient = u.ctx.createLinearGradient(0, top, 0, top + height);
  const [above, below] =
    lane === 'difference' ? [palette.hot, palette.cold] : [palette.muted, palette.muted];
  const strength = lane === 'difference' ? '66' : '26';
  gradient.addColorStop(0, above + strength);
  gradient.addColorStop(0.5, above + strength);
  gradient.addColorStop(0.5, below + strength);
  gradient.addColorStop(1, below + strength);
  return gradient;
};

/** The scale on the left: round temperatures, or a lane's reach about its zero. */
const splitsOf = (lane: LaneName, painting: Painting, heightPx: number): number[] => {
  if (lane !== 'curve') {
    const reach = reachIn(lane, painting);
    return [-reach, 0, reach];
  }
  const most = Math.max(2, Math.floor(heightPx / (painting.typePx * 2.2)));
  return roundTicks(...painting.picture.temperatures, most);
};

/** One picture of the curve or of a lane under it; drawn anew for every view. */
export const createPlot = (lane: LaneName, target: HTMLElement): Plot => {
  let now: Painting | null = null;
  let measures: Measures = { width: 10, height: 10, left: 0, right: 0 };
  const painting = (): Painting => {
    if (!now) throw new Error('a plot was drawn before it was given anything');
    return now;
  };
  const palette = (): Palette => painting().palette;

  const under = (u: uPlot): void => {
    if (!now) return;
    if (lane === 'curve') paintPhases(u, now);
    paintTimeGrid(u, now);
    paintHoles(u, now);
    if (lane === 'curve') {
      paintDepartures(u, now);
      paintPlaces(u, now);
      paintPlanned(u, now);
      paintRemoved(u, now);
    } else paintZero(u, now);
  };

  const start = (): uPlot =>
    new uPlot(
      {
        width: measures.width,
        height: measures.height,
        padding: [TOP_PX, measures.right, 2, 0],
        legend: { show: false },
        cursor: { show: false },
        scales: {
          x: {
            time: false,
            range: () => [painting().picture.view.from, painting().picture.view.to],
          },
          y: {
            range: () => {
              if (lane === 'curve') return [...painting().picture.temperatures];
              const reach = reachIn(lane, painting()) * LANE_ROOM;
              return [-reach, reach];
            },
          },
        },
        series: [
          {},
          {
            stroke: () => palette().ink,
            width: lane === 'curve' ? 1.8 : 1.1,
            points: { show: false },
            spanGaps: false,
            ...(lane === 'curve'
              ? {}
              : { fill: (u: uPlot) => fillOf(lane, palette())(u), fillTo: 0 }),
          },
        ],
        axes: [
          { show: false },
          {
            size: () => measures.left,
            gap: 6,
            font: `${painting().typePx}px ${painting().face}`,
            stroke: () => palette().muted,
            grid: { stroke: () => palette().rule, width: 0.5, show: lane === 'curve' },
            ticks: { show: false },
            splits: () => splitsOf(lane, painting(), measures.height),
            values: (_u, splits) => splits.map(lane === 'curve' ? numberText : signed),
          },
        ],
        hooks: {
          drawAxes: [under],
          draw: [(u) => now && paintDimming(u, now)],
        },
      },
      [[], []],
      target,
    );

  let plot: uPlot | null = null;
  return {
    draw: (next, size) => {
      const isOtherSize = size.width !== measures.width || size.height !== measures.height;
      const isOtherType =
        now?.typePx !== next.typePx || now.face !== next.face || size.left !== measures.left;
      now = next;
      measures = size;
      if (plot && isOtherType) {
        plot.destroy();
        plot = null;
      }
      plot ??= start();
      plot.batch(() => {
        if (isOtherSize) plot?.setSize({ width: size.width, height: size.height });
        plot?.setData(
          [[...next.picture.atSeconds], columnsOf(lane, next)] as uPlot.AlignedData,
          true,
        );
      });
    },
    heightOf: (value) => (plot ? plot.valToPos(value, 'y') + plot.bbox.top / uPlot.pxRatio : 0),
    destroy: () => plot?.destroy(),
  };
};
