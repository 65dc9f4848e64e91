import type { AnalysisDocument } from '../../model/document.ts';
import { RIBBON_ROW, ribbonRowTop, type OverlayLayout } from './overlay-layout.ts';
import { textWidth } from './labels.ts';
import type { Box, Scale } from './scale.ts';

/** One leg as a stretch of the ribbon. */
export interface RibbonLeg {
  readonly row: 'planned' | 'actual';
  readonly kind: 'ramp' | 'hold' | 'cooling';
  readonly departs: boolean;
  readonly box: Box;
  /** The leg's number, where there is room for it. */
  readonly label: string | null;
}

interface Stretch {
  readonly number: number;
  readonly row: 'planned' | 'actual';
  readonly kind: RibbonLeg['kind'];
  readonly departs: boolean;
  readonly startSeconds: number;
  readonly endSeconds: number;
}

const stretchesOf = ({ alignment, trace }: AnalysisDocument): Stretch[] => {
  if (alignment === null) {
    return trace.legs.map(({ kind, startSeconds, endSeconds }, index) => {
      const course = { startSeconds, endSeconds };
      return { number: index + 1, row: 'actual', kind, departs: false, ...course };
    });
  }
  return alignment.legs.flatMap(({ kind, planned, actual, verdict }, index): Stretch[] => {
    const about = { number: index + 1, kind, departs: verdict !== 'as-planned' };
    return [
      { ...about, row: 'planned' as const, departs: false, ...planned },
      ...(actual ? [{ ...about, row: 'actual' as const, ...actual }] : []),
    ];
  });
};

/** The legs laid along the clock, planned above driven, so that lateness is a sideways shift. */
export const ribbonLegs = (
  document: AnalysisDocument,
  { ribbon, ribbonRows }: OverlayLayout,
  time: Scale,
  labelSize: number,
): RibbonLeg[] =>
  stretchesOf(document)
    .filter(({ startSeconds, endSeconds }) => endSeconds > startSeconds)
    .map(({ number, row, kind, departs, startSeconds, endSeconds }) => {
      const left = time(startSeconds);
      const width = Math.max(1, time(endSeconds) - left);
      const top = ribbonRowTop(ribbon, ribbonRows.indexOf(row));
      const text = String(number);
      const label = textWidth(text, labelSize) + 4 <= width ? text : null;
      return { row, kind, departs, box: { left, top, width, height: RIBBON_ROW }, label };
    });
