import type { Severity } from '../../core/model/finding.ts';
import { placeMarks } from '../../core/report/chart/labels.ts';
import { celsius, temperatureIn } from '../../core/units.ts';
import { curveAt } from './slice.ts';
import type { Scene } from './scene.ts';
import { placeIn, type View } from './view.ts';

/** A finding's letter at its place on the curve, in pixels of the plot. */
export interface LetterMark {
  readonly index: number;
  readonly letter: string;
  readonly severity: Severity;
  readonly x: number;
  readonly y: number;
  /** The place itself, from which the letter moves away where another stands there. */
  readonly footX: number;
  readonly footY: number;
}

export interface PlotArea {
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  /** Where a temperature in the reader's unit stands. */
  readonly heightOf: (value: number) => number;
}

/** The letters whose places are in view, none covering another. */
export const letterMarks = (
  { document, trace, words }: Scene,
  view: View,
  area: PlotArea,
  radius: number,
): LetterMark[] => {
  const wanted = document.findings.flatMap(({ evidence, severity }, index): LetterMark[] => {
    const first = evidence[0];
    if (!first) return [];
    const at = (first.fromSeconds + first.toSeconds) / 2;
    if (at < view.from || at > view.to) return [];
    const height = area.heightOf(temperatureIn(celsius(curveAt(trace, at)), words.unit));
    const footY = Math.min(Math.max(height, area.top), area.bottom);
    const letter = words.findings[index]?.letter ?? '';
    const footX = placeIn(view, area.width, at);
    return [{ index, letter, severity, x: footX, y: footY - 2.2 * radius, footX, footY }];
  });
  const room = {
    left: 0,
    top: area.top + radius,
    width: area.width,
    height: area.bottom - area.top - 2 * radius,
  };
  return placeMarks(wanted, radius + 2, room);
};
