import type { TemperatureUnit } from '../../units.ts';
import { el, type Markup } from '../markup.ts';
import type { Lane } from './lanes.ts';
import { LABEL_SIZE, LETTER_RADIUS, type Letter, type Overlay } from './overlay.ts';
import { bottomOf, rightOf, type Box } from './scale.ts';
import { timeLabel } from './ticks.ts';

/** The texts that the drawing needs. */
export interface OverlayTexts {
  readonly title: string;
  readonly description: string;
  readonly unit: TemperatureUnit;
  /** What a letter's link says to a screen reader, by letter. */
  readonly letterTitles: Readonly<Record<string, string>>;
  /** The time of day at a moment of the log, or null if the log has none. */
  readonly clockAt: (atSeconds: number) => string | null;
}

const signed = (value: number): string => {
  if (value === 0) return '0';
  return value < 0 ? `−${Math.abs(value)}` : `+${value}`;
};

const axisText = (x: number, y: number, text: string, anchor = 'end'): Markup =>
  el('text', { x, y, 'text-anchor': anchor, class: 'axis' }, text);

const frame = ({ left, top, width, height }: Box): Markup =>
  el('rect', { x: left, y: top, width, height, class: 'frame' });

const temperatureAxis = ({ layout, temperatureTicks }: Overlay, unit: string): Markup[] => [
  ...temperatureTicks.map(({ value, at }, index) =>
    el(
      'g',
      {},
      el('line', { x1: layout.plot.left, x2: rightOf(layout.plot), y1: at, y2: at, class: 'grid' }),
      axisText(
        layout.plot.left - 6,
        at + 4,
        String(value).replace('-', '−') +
          (index === temperatureTicks.length - 1 ? ` °${unit}` : ''),
      ),
    ),
  ),
];

const timeAxis = ({ layout, timeTicks: ticks }: Overlay, texts: OverlayTexts): Markup[] =>
  ticks.map(({ value, at }, index) => {
    const clock = texts.clockAt(value);
    const anchor = index === 0 ? 'start' : 'middle';
    return el(
      'g',
      {},
      el('line', { x1: at, x2: at, y1: layout.plot.top, y2: layout.axisTop, class: 'grid' }),
      axisText(at, layout.axisTop + 12, timeLabel(value), anchor),
      clock === null
        ? null
        : axisText(at, layout.axisTop + 26, clock.replace(/ \+.*$/, ''), anchor),
    );
  });

const phases = ({ phases: { bands, labels } }: Overlay): Markup[] => [
  ...bands.map(({ left, top, width, height }) =>
    el('rect', { x: left, y: top, width, height, class: 'phase' }),
  ),
  ...labels.map(({ text, x, y, anchor }) =>
    el('text', { x, y, 'text-anchor': anchor, class: 'phase-name' }, text),
  ),
];

const lane = (drawn: Lane, name: string, unit: string, kind: string): Markup => {
  const { box, ticks, zeroY } = drawn;
  return el(
    'g',
    { class: `lane ${kind}` },
    frame(box),
    el('path', { d: drawn.above, class: 'hot' }),
    el('path', { d: drawn.below, class: 'cold' }),
    el('line', { x1: box.left, x2: rightOf(box), y1: zeroY, y2: zeroY, class: 'zero' }),
    el('path', { d: drawn.line, class: 'lane-line' }),
    ticks.map(({ value, at }, index) =>
      axisText(box.left - 6, at + (index === 0 ? 9 : index === 2 ? -1 : 4), signed(value)),
    ),
    el('text', { x: box.left + 6, y: box.top + 12, class: 'lane-name' }, `${name}, ${unit}`),
  );
};

const ROW_NAMES = { planned: 'plan', actual: 'kiln' } as const;

const ribbon = ({ ribbon: legs, layout }: Overlay): Markup[] => [
  ...layout.ribbonRows.map((row, index) =>
    axisText(layout.plot.left - 6, layout.ribbon.top + index * 20 + 12, ROW_NAMES[row]),
  ),
  ...legs.map(({ kind, row, departs, box: { left, top, width, height }, label }) =>
    el(
      'g',
      { class: `leg ${kind} ${row}${departs ? ' departs' : ''}` },
      el('rect', { x: left, y: top, width, height }),
      label === null
        ? null
        : el('text', { x: left + width / 2, y: top + 12.5, 'text-anchor': 'middle' }, label),
    ),
  ),
];

/** A diamond, filled for `act` and open for `watch`; a small circle for `note`. */
const letterShape = ({ severity, x, y }: Letter): Markup => {
  if (severity === 'note') return el('circle', { cx: x, cy: y, r: LETTER_RADIUS - 1 });
  const reach = LETTER_RADIUS + 3;
  const corners = [
    [x, y - reach],
    [x + reach, y],
    [x, y + reach],
    [x - reach, y],
  ];
  return el('polygon', {
    points: corners.map((corner) => corner.map((v) => v.toFixed(1)).join(',')).join(' '),
  });
};

const letters = ({ letters: marks }: Overlay, titles: OverlayTexts['letterTitles']): Markup[] =>
  marks.map((mark) =>
    el(
      'a',
      { href: `#finding-${mark.letter}`, class: `letter ${mark.severity}` },
      el('title', {}, titles[mark.letter] ?? mark.letter),
      el('line', { x1: mark.x, x2: mark.footX, y1: mark.y, y2: mark.footY, class: 'stem' }),
      letterShape(mark),
      el('text', { x: mark.x, y: mark.y + 4, 'text-anchor': 'middle' }, mark.letter),
    ),
  );

/** Over the hole between two logs stands what it is, upright, so that a narrow one bears it too. */
const betweenLogs = ({ holes, layout: { plot } }: Overlay): Markup[] =>
  holes
    .filter(({ isBetween }) => isBetween)
    .map(({ left, width }) => {
      const [x, y] = [left + width / 2 + LABEL_SIZE / 3, plot.top + plot.height / 2];
      const turned = { transform: `rotate(-90 ${x} ${y})`, 'text-anchor': 'middle' };
      return el('text', { x, y, ...turned, class: 'phase-name' }, 'not recorded: between the logs');
    });

const curves = (overlay: Overlay): Markup[] => [
  ...overlay.holes.map(({ left, width }) =>
    el('rect', {
      x: left,
      y: overlay.layout.plot.top,
      width,
      height: bottomOf(overlay.layout.slope) - overlay.layout.plot.top,
      class: 'hole',
    }),
  ),
  ...betweenLogs(overlay),
  ...overlay.fills.map(({ side, path }) => el('path', { d: path, class: side })),
  el('path', { d: overlay.planned, class: 'curve-planned' }),
  el('path', { d: overlay.actual, class: 'curve-actual' }),
];

const drawing = (overlay: Overlay, texts: OverlayTexts): (Markup | Markup[] | null)[] => [
  phases(overlay),
  temperatureAxis(overlay, texts.unit),
  timeAxis(overlay, texts),
  frame(overlay.layout.plot),
  curves(overlay),
  overlay.difference && lane(overlay.difference, 'kiln minus plan', `°${texts.unit}`, 'difference'),
  lane(overlay.slope, 'slope', `°${texts.unit}/h`, 'slope'),
  ribbon(overlay),
];

/** The overlay as one SVG element that takes its colours from the classes of the page's style. */
export const overlaySvg = (overlay: Overlay, texts: OverlayTexts): Markup => {
  const { layout } = overlay;
  return el(
    'svg',
    {
      class: 'overlay',
      viewBox: `0 0 ${layout.width} ${layout.height}`,
      // A group and no image: an image's parts, and so the letters' links, would be out of reach.
      role: 'group',
      'aria-labelledby': 'overlay-title',
      'aria-describedby': 'overlay-description',
      'font-size': LABEL_SIZE,
    },
    el('title', { id: 'overlay-title' }, texts.title),
    el('desc', { id: 'overlay-description' }, texts.description),
    el('g', { 'aria-hidden': 'true' }, drawing(overlay, texts)),
    letters(overlay, texts.letterTitles),
  );
};
