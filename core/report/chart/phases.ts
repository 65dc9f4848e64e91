import type { AnalysisDocument, Band, Curve } from '../../model/document.ts';
import { placeLabels, type Label } from './labels.ts';
import { bottomOf, rightOf, type Box, type Scale } from './scale.ts';

/** The phases of the ware as faint bands across the side of the curve on which they happen. */
export interface Phases {
  readonly bands: readonly Box[];
  readonly labels: readonly Label[];
}

/** A band that reaches within this of the peak is about the peak, and no phase of the ware, °C. */
const AT_PEAK_DELTA_C = 20;

/** How far from the curve's flank a name stands. */
const OFF_FLANK = 14;

/** When the curve last leaves a band on its way up, or first enters it on its way down. */
const flankSeconds = (
  { atSeconds, celsius }: Curve,
  band: Band,
  peakIndex: number,
): number | null => {
  const upper = Math.max(band.fromC, band.toC);
  const isAbove = (reading: number) => reading >= upper;
  const index =
    band.direction === 'heating'
      ? celsius.findIndex(isAbove)
      : celsius.findLastIndex((reading, at) => at >= peakIndex && isAbove(reading));
  return index < 0 ? null : (atSeconds[index] ?? null);
};

const hottestIndex = (readings: readonly number[]): number =>
  readings.reduce((best, reading, index) => (reading > readings[best]! ? index : best), 0);

/**
 * Lays the bands across the plot: from the left edge to the peak on heating, from the peak to the
 * right edge on cooling. Names stand under the curve, beside the flank on which the band was passed.
 */
export const phasesIn = (
  { bands, curve, trace }: AnalysisDocument,
  names: readonly string[],
  plot: Box,
  time: Scale,
  temperature: Scale,
  labelSize: number,
): Phases => {
  const peakX = time(trace.peakAtSeconds);
  const peakIndex = hottestIndex(curve.celsius);
  const boxes: Box[] = [];
  const labels: Label[] = [];
  bands.forEach((band, index) => {
    const [upper, lower] = [Math.max(band.fromC, band.toC), Math.min(band.fromC, band.toC)];
    const top = Math.max(plot.top, temperature(upper));
    const height = Math.min(bottomOf(plot), temperature(lower)) - top;
    const isHeating = band.direction === 'heating';
    const left = isHeating ? plot.left : peakX;
    if (height <= 0 || upper > trace.peakC - AT_PEAK_DELTA_C) return;
    boxes.push({ left, top, width: (isHeating ? peakX : rightOf(plot)) - left, height });
    const flank = flankSeconds(curve, band, peakIndex);
    if (flank === null) return;
    const x = time(flank) + (isHeating ? OFF_FLANK : -OFF_FLANK);
    const anchor = isHeating ? 'start' : 'end';
    labels.push({ text: names[index] ?? '', x, y: top + height / 2 + labelSize * 0.35, anchor });
  });
  return { bands: boxes, labels: placeLabels(labels, labelSize, plot.top + 8, bottomOf(plot) - 3) };
};
