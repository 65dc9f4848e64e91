import uPlot from 'uplot';
import { celsius, fromFahrenheit, temperatureIn } from '../../core/units.ts';
import { inPlot, x, y, type Painting } from './paint.ts';
import type { Phase, Scene } from './scene.ts';

/** Room between a name and the curve, sideways and up or down, in the page's pixels. */
const BESIDE_PX = 5;

interface Box {
  readonly left: number;
  readonly right: number;
  readonly upper: number;
  readonly lower: number;
}

interface PlacedName {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly py: number;
}

/** The part of the plot that a phase fills; null where none of it is in view. */
const boxOf = (u: uPlot, phase: Phase, { words }: Scene): Box | null => {
  const { left, top, width, height } = u.bbox;
  const heightOf = (c: number): number => y(u, temperatureIn(celsius(c), words.unit));
  const box = {
    left: Math.max(left, x(u, phase.fromSeconds)),
    right: Math.min(left + width, x(u, phase.toSeconds)),
    upper: Math.max(top, heightOf(phase.highC)),
    lower: Math.min(top + height, heightOf(phase.lowC)),
  };
  return box.lower - box.upper < 1 || box.right - box.left < 1 ? null : box;
};

/** Where the curve passes a height on one side of the peak; null if it does not. */
const crossing = (u: uPlot, { document, words }: Scene, isHeating: boolean, py: number) => {
  const { curve, trace } = document;
  const value = u.posToVal((py - u.bbox.top) / uPlot.pxRatio, 'y');
  const reading = words.unit === 'C' ? value : fromFahrenheit(value);
  const { length } = curve.celsius;
  const last = curve.celsius.findLastIndex(
    (c, at) => c >= reading && curve.atSeconds[at]! >= trace.peakAtSeconds,
  );
  const falls = last < 0 ? -1 : last + 1;
  const after = isHeating ? curve.celsius.findIndex((c) => c >= reading) : falls;
  if (after < 0) return null;
  const edge = after === 0 ? 0 : length - 1;
  if (after === 0 || after === length) return x(u, curve.atSeconds[edge]!);
  // Between readings far apart the line crosses well before the next of them.
  const [from, to] = [curve.celsius[after - 1]!, curve.celsius[after]!];
  const share = to === from ? 1 : (reading - from) / (to - from);
  const [begins, ends] = [curve.atSeconds[after - 1]!, curve.atSeconds[after]!];
  return x(u, begins + share * (ends - begins));
};

/**
 * Where a phase's name stands: under the curve beside its flank, or outside of it where there is no
 * room before the peak; never on the line itself, however gently that falls.
 */
const placeName = (
  u: uPlot,
  painting: Painting,
  phase: Phase,
  box: Box,
  textWidth: number,
): PlacedName | null => {
  const { scene, typePx } = painting;
  const ratio = uPlot.pxRatio;
  const py = (box.upper + box.lower) / 2;
  const half = (typePx / 2 + BESIDE_PX) * ratio;
  const flank = (at: number): number | null => crossing(u, scene, phase.isHeating, at);
  const [inside, outside] = [flank(py - half), flank(py + half)];
  const beside = BESIDE_PX * ratio;
  const rightward = (from: number | null): number | null => (from === null ? null : from + beside);
  const leftward = (from: number | null): number | null =>
    from === null ? null : from - beside - textWidth;
  const under = phase.isHeating ? rightward(inside) : leftward(inside);
  const fits =
    under !== null && under >= box.left - 1 && under + textWidth <= box.right + 1 ? under : null;
  const px = fits ?? (phase.isHeating ? leftward(outside) : rightward(outside));
  if (px === null || px < u.bbox.left || px + textWidth > u.bbox.left + u.bbox.width) return null;
  return { text: phase.name, left: px, right: px + textWidth, py };
};

const isFree = (name: PlacedName, placed: readonly PlacedName[], linePx: number): boolean =>
  placed.every(
    (other) =>
      Math.abs(other.py - name.py) > linePx ||
      other.right + BESIDE_PX < name.left ||
      name.right + BESIDE_PX < other.left,
  );

/** The ware's phases: faint bands of temperature, named beside the flank on which they were passed. */
export const paintPhases = (u: uPlot, painting: Painting): void =>
  inPlot(u, (ctx) => {
    const { scene, palette, typePx, face } = painting;
    const ratio = uPlot.pxRatio;
    const placed: PlacedName[] = [];
    ctx.font = `${typePx * ratio}px ${face}`;
    ctx.textBaseline = 'middle';
    ctx.textAlign = 'left';
    ctx.fillStyle = palette.muted;
    for (const phase of scene.phases) {
      const box = boxOf(u, phase, scene);
      if (!box) continue;
      ctx.globalAlpha = 0.08;
      ctx.fillRect(box.left, box.upper, box.right - box.left, box.lower - box.upper);
      ctx.globalAlpha = 1;
      const name = placeName(u, painting, phase, box, ctx.measureText(phase.name).width);
      if (name && isFree(name, placed, typePx * ratio)) placed.push(name);
    }
    ctx.strokeStyle = palette.paper;
    ctx.lineWidth = 3 * ratio;
    ctx.lineJoin = 'round';
    for (const { text, left, py } of placed) {
      ctx.strokeText(text, left, py);
      ctx.fillText(text, left, py);
    }
  });
