import type { AnalysisDocument } from '../../model/document.ts';
import { clockTime } from '../../wording/speech.ts';
import type { Words } from '../../wording/wording.ts';
import { overlayOf } from '../chart/overlay.ts';
import { overlaySvg } from '../chart/overlay-svg.ts';
import { el, type Markup } from '../markup.ts';

/** What the drawing shows, for someone who cannot see it. */
const describe = ({ verdict, legs, findings }: Words): string =>
  [
    verdict.map(({ text }) => text).join(' '),
    legs.rows
      .map(({ number, name, verdict: outcome }) => `Leg ${number}, ${name}: ${outcome}.`)
      .join(' '),
    findings.map(({ letter, title }) => `${letter}: ${title.text}`).join(' '),
  ]
    .filter((text) => text !== '')
    .join(' ');

const legend = (hasPlan: boolean): string =>
  hasPlan
    ? 'Solid: the kiln. Dashed: the plan, laid once from where heating begins. Filled: where the kiln was notably hotter or cooler than planned. Below: the difference, the slope, and the legs planned above driven, on the same clock.'
    : 'Solid: the kiln. Below: its slope and its legs, on the same clock.';

/** The overlay with its caption. */
export const curveFigure = (document: AnalysisDocument, words: Words): Markup => {
  const { startInstant } = document.trace;
  const overlay = overlayOf(document, words.unit, {
    bands: words.bands.map(({ short }) => short),
    letters: words.findings.map(({ letter }) => letter),
  });
  const svg = overlaySvg(overlay, {
    title: `Temperature of ${words.firing.title} against time`,
    description: describe(words),
    unit: words.unit,
    letterTitles: Object.fromEntries(
      words.findings.map(({ letter, title }) => [letter, `${letter}: ${title.text}`]),
    ),
    clockAt: (atSeconds) => clockTime(startInstant, atSeconds),
  });
  return el(
    'figure',
    { id: 'curve' },
    el('div', { class: 'scroll', tabindex: '0', role: 'group', 'aria-label': 'The curve' }, svg),
    el('figcaption', { class: 'muted' }, legend(document.alignment !== null)),
  );
};
