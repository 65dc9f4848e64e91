import { bottomOf, type Box } from './scale.ts';

/** Where the parts of the overlay stand, in the drawing's own units. */
export interface OverlayLayout {
  readonly width: number;
  readonly height: number;
  /** The plan and the curve. */
  readonly plot: Box;
  /** Actual minus planned; null without a plan. */
  readonly difference: Box | null;
  readonly slope: Box;
  /** The legs, planned above driven; the plan's row is missing without one. */
  readonly ribbon: Box;
  readonly ribbonRows: readonly ('planned' | 'actual')[];
  /** The top of the labels of the time axis. */
  readonly axisTop: number;
}

export const OVERLAY_WIDTH = 960;
const LEFT = 64;
const RIGHT = 14;
const TOP = 14;
const PLOT_HEIGHT = 330;
const LANE_HEIGHT = 58;
const LANE_GAP = 14;
export const RIBBON_ROW = 17;
const RIBBON_GAP = 3;
const AXIS_ROW = 15;

const laneBelow = (box: Box, height: number): Box => ({
  ...box,
  top: bottomOf(box) + LANE_GAP,
  height,
});

/** The layout with or without a plan, with one or two rows of labels under the time axis. */
export const overlayLayout = (hasPlan: boolean, axisRows: 1 | 2): OverlayLayout => {
  const width = OVERLAY_WIDTH - LEFT - RIGHT;
  const plot = { left: LEFT, top: TOP, width, height: PLOT_HEIGHT };
  const difference = hasPlan ? laneBelow(plot, LANE_HEIGHT) : null;
  const slope = laneBelow(difference ?? plot, LANE_HEIGHT);
  const ribbonRows = hasPlan ? (['planned', 'actual'] as const) : (['actual'] as const);
  const ribbonHeight = ribbonRows.length * (RIBBON_ROW + RIBBON_GAP) - RIBBON_GAP;
  const ribbon = laneBelow(slope, ribbonHeight);
  const axisTop = bottomOf(ribbon) + 4;
  const height = axisTop + axisRows * AXIS_ROW + 4;
  return { width: OVERLAY_WIDTH, height, plot, difference, slope, ribbon, ribbonRows, axisTop };
};

/** The top of one row of the ribbon. */
export const ribbonRowTop = (ribbon: Box, row: number): number =>
  ribbon.top + row * (RIBBON_ROW + RIBBON_GAP);
