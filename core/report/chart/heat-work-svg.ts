import { el, type Markup } from '../markup.ts';
import { conePath, type ConeForm } from './cone-shape.ts';
import type { DoseChart } from './dose.ts';
import { bottomOf, rightOf } from './scale.ts';
import { timeLabel } from './ticks.ts';

/** One cone of the pack, ready to be drawn. */
export interface DrawnCone {
  readonly name: string;
  readonly roleWord: string;
  readonly stands: string;
  readonly bendDegrees: number;
}

const CONE_SPACE = 118;
const PACK_HEIGHT = 164;
const SHELF_Y = 112;
const FORM: Omit<ConeForm, 'x'> = { y: SHELF_Y - 12, length: 82, foot: 20, tip: 4 };

const coneMarkup = ({ name, roleWord, stands, bendDegrees }: DrawnCone, index: number): Markup => {
  const middle = CONE_SPACE * (index + 0.5);
  const x = middle - 22;
  return el(
    'g',
    {},
    el('rect', { x: x - 16, y: FORM.y - 1, width: 32, height: 13, class: 'plaque' }),
    el('path', { d: conePath({ ...FORM, x }, bendDegrees), class: 'cone' }),
    el('text', { x: middle, y: SHELF_Y + 17, 'text-anchor': 'middle', class: 'cone-name' }, name),
    el('text', { x: middle, y: SHELF_Y + 32, 'text-anchor': 'middle', class: 'axis' }, stands),
    el('text', { x: middle, y: SHELF_Y + 46, 'text-anchor': 'middle', class: 'axis' }, roleWord),
  );
};

/** The three cones of a pack, bent as the dose predicts. */
export const conePackSvg = (cones: readonly DrawnCone[], description: string): Markup => {
  const width = CONE_SPACE * cones.length;
  return el(
    'svg',
    {
      class: 'cones',
      viewBox: `0 0 ${width} ${PACK_HEIGHT}`,
      role: 'img',
      'aria-labelledby': 'cones-title cones-description',
      'font-size': 11,
    },
    el('title', { id: 'cones-title' }, 'The cone pack as the heat-work predicts it'),
    el('desc', { id: 'cones-description' }, description),
    el('line', { x1: 4, x2: width - 4, y1: SHELF_Y, y2: SHELF_Y, class: 'shelf' }),
    cones.map(coneMarkup),
  );
};

/** Dose against time, with the dose that brings the cone down. */
export const doseSvg = (chart: DoseChart, coneName: string, description: string): Markup => {
  const { plot, downY } = chart;
  return el(
    'svg',
    {
      class: 'dose',
      viewBox: `0 0 ${chart.width} ${chart.height}`,
      role: 'img',
      'aria-labelledby': 'dose-title dose-description',
      'font-size': 11,
    },
    el('title', { id: 'dose-title' }, `Dose of ${coneName} against time`),
    el('desc', { id: 'dose-description' }, description),
    chart.doseTicks.map(({ value, at }) => [
      el('line', { x1: plot.left, x2: rightOf(plot), y1: at, y2: at, class: 'grid' }),
      el(
        'text',
        { x: plot.left - 6, y: at + 4, 'text-anchor': 'end', class: 'axis' },
        String(Math.round(value * 100) / 100),
      ),
    ]),
    chart.timeTicks.map(({ value, at }) => [
      el('line', { x1: at, x2: at, y1: plot.top, y2: bottomOf(plot) + 3, class: 'grid' }),
      el(
        'text',
        { x: at, y: bottomOf(plot) + 16, 'text-anchor': 'middle', class: 'axis' },
        timeLabel(value),
      ),
    ]),
    el('text', { x: plot.left + 6, y: plot.top + 10, class: 'axis' }, 'dose'),
    el('line', { x1: plot.left, x2: rightOf(plot), y1: downY, y2: downY, class: 'down' }),
    el('text', { x: plot.left + 6, y: downY - 5, class: 'phase-name' }, `${coneName} down`),
    el('path', { d: chart.line, class: 'curve-actual' }),
  );
};
