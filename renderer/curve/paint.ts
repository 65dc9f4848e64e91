import uPlot from 'uplot';
import type { Palette } from '../../core/report/html/palette.ts';
import { celsius, temperatureIn } from '../../core/units.ts';
import type { Span } from '../../core/model/scalars.ts';
import type { Picture, Scene } from './scene.ts';
import type { TimeTick } from './time-ticks.ts';

/** Everything a picture is painted from. */
export interface Painting {
  readonly scene: Scene;
  readonly picture: Picture;
  readonly palette: Palette;
  readonly ticks: readonly TimeTick[];
  /** The size of small type, in the page's pixels. */
  readonly typePx: number;
  readonly face: string;
  /** The stretches of the chosen finding; all else is dimmed. Empty: nothing is chosen. */
  readonly chosen: readonly Span[];
}

/** How far what is not chosen fades into the paper (chosen). */
const DIMMED = 0.62;

export const x = (u: uPlot, atSeconds: number): number => u.valToPos(atSeconds, 'x', true);
export const y = (u: uPlot, value: number): number => u.valToPos(value, 'y', true);

/** Paints within the plot's own area and leaves the context as it was. */
export const inPlot = (u: uPlot, paint: (ctx: CanvasRenderingContext2D) => void): void => {
  const { ctx, bbox } = u;
  ctx.save();
  ctx.beginPath();
  ctx.rect(bbox.left, bbox.top, bbox.width, bbox.height);
  ctx.clip();
  paint(ctx);
  ctx.restore();
};

const line = (
  ctx: CanvasRenderingContext2D,
  points: readonly (readonly [number, number])[],
): void => {
  points.forEach(([px, py], index) => (index === 0 ? ctx.moveTo(px, py) : ctx.lineTo(px, py)));
};

/** The vertical lines of the clock, on every lane alike. */
export const paintTimeGrid = (u: uPlot, { ticks, palette }: Painting): void =>
  inPlot(u, (ctx) => {
    ctx.strokeStyle = palette.rule;
    ctx.lineWidth = uPlot.pxRatio * 0.5;
    ctx.beginPath();
    for (const { atSeconds } of ticks) {
      const px = Math.round(x(u, atSeconds));
      ctx.moveTo(px, u.bbox.top);
      ctx.lineTo(px, u.bbox.top + u.bbox.height);
    }
    ctx.stroke();
  });

/** Stretches without readings stay holes, and are seen to be. */
export const paintHoles = (u: uPlot, { scene, palette }: Painting): void =>
  inPlot(u, (ctx) => {
    ctx.fillStyle = palette.accent;
    ctx.globalAlpha = 0.12;
    for (const { fromSeconds, toSeconds } of scene.holes) {
      const left = x(u, fromSeconds);
      const width = Math.max(uPlot.pxRatio, x(u, toSeconds) - left);
      ctx.fillRect(left, u.bbox.top, width, u.bbox.height);
    }
  });

/** The space between plan and kiln, where it matters. */
export const paintDepartures = (u: uPlot, { scene, palette }: Painting): void =>
  inPlot(u, (ctx) => {
    const { unit } = scene.words;
    const height = (c: number): number => y(u, temperatureIn(celsius(c), unit));
    ctx.globalAlpha = 0.3;
    for (const { side, atSeconds, celsius: readings, plannedC } of scene.departures) {
      const there = atSeconds.map((at, i) => [x(u, at), height(readings[i]!)] as const);
      const back = atSeconds.map((at, i) => [x(u, at), height(plannedC[i]!)] as const);
      ctx.fillStyle = side === 'hot' ? palette.hot : palette.cold;
      ctx.beginPath();
      line(ctx, [...there, ...back.reverse()]);
      ctx.fill();
    }
  });

/** The plan: thin, dashed, grey. */
export const paintPlanned = (u: uPlot, { scene, palette }: Painting): void =>
  inPlot(u, (ctx) => {
    const { unit } = scene.words;
    const corners = scene.document.alignment?.planned ?? [];
    ctx.strokeStyle = palette.muted;
    ctx.lineWidth = 1.25 * uPlot.pxRatio;
    ctx.setLineDash([5 * uPlot.pxRatio, 4 * uPlot.pxRatio]);
    ctx.beginPath();
    line(
      ctx,
      corners.map((at) => [x(u, at.atSeconds), y(u, temperatureIn(at.celsius, unit))] as const),
    );
    ctx.stroke();
  });

/** The other measured places: thinner than the kiln's own line, and greyer. */
export const paintPlaces = (u: uPlot, { picture, palette }: Painting): void =>
  inPlot(u, (ctx) => {
    ctx.strokeStyle = palette.muted;
    ctx.lineWidth = 0.9 * uPlot.pxRatio;
    ctx.beginPath();
    for (const place of picture.places) {
      let isDown = false;
      place.forEach((value, index) => {
        if (value !== null) {
          const [px, py] = [x(u, picture.atSeconds[index]!), y(u, value)];
          if (isDown) ctx.lineTo(px, py);
          else ctx.moveTo(px, py);
        }
        isDown = value !== null;
      });
    }
    ctx.stroke();
  });

/** Readings that were taken out of the record, as small crosses. */
export const paintRemoved = (u: uPlot, { scene, palette }: Painting): void =>
  inPlot(u, (ctx) => {
    const reach = 2.5 * uPlot.pxRatio;
    ctx.strokeStyle = palette.muted;
    ctx.lineWidth = uPlot.pxRatio;
    ctx.beginPath();
    for (const { atSeconds, celsius: c } of scene.trace.removed) {
      if (!Number.isFinite(c)) continue;
      const [px, py] = [x(u, atSeconds), y(u, temperatureIn(celsius(c), scene.words.unit))];
      ctx.moveTo(px - reach, py - reach);
      ctx.lineTo(px + reach, py + reach);
      ctx.moveTo(px - reach, py + reach);
      ctx.lineTo(px + reach, py - reach);
    }
    ctx.stroke();
  });

/** Fades all but the chosen finding's stretches into the paper. */
export const paintDimming = (u: uPlot, { chosen, palette, picture }: Painting): void => {
  if (chosen.length === 0) return;
  inPlot(u, (ctx) => {
    const { left, top, width, height } = u.bbox;
    ctx.fillStyle = palette.paper;
    ctx.globalAlpha = DIMMED;
    ctx.beginPath();
    ctx.rect(left, top, width, height);
    for (const { fromSeconds, toSeconds } of chosen) {
      const middle = x(u, (fromSeconds + toSeconds) / 2);
      const half = Math.max(10 * uPlot.pxRatio, (x(u, toSeconds) - x(u, fromSeconds)) / 2);
      ctx.rect(middle - half, top, 2 * half, height);
    }
    // Stretches that overlap would dim each other by the even-odd rule; they are rare and few.
    if (picture.atSeconds.length > 0) ctx.fill('evenodd');
  });
};

/** The line about which a lane is drawn. */
export const paintZero = (u: uPlot, { palette }: Painting): void =>
  inPlot(u, (ctx) => {
    const py = Math.round(y(u, 0));
    ctx.strokeStyle = palette.muted;
    ctx.lineWidth = 0.75 * uPlot.pxRatio;
    ctx.beginPath();
    ctx.moveTo(u.bbox.left, py);
    ctx.lineTo(u.bbox.left + u.bbox.width, py);
    ctx.stroke();
  });
