import type { AnalysisDocument } from '../model/document.ts';
import type { TemperatureUnit } from '../units.ts';
import { wording, type Words } from '../wording/wording.ts';
import { curveFigure } from './html/curve.ts';
import { findingsSection } from './html/findings.ts';
import { heatWorkSection } from './html/heat-work.ts';
import { legsSection } from './html/legs.ts';
import { bandsSection, checksSection, readingSection } from './html/reading.ts';
import { styleSheet } from './html/style.ts';
import { anchorOf, bullets, lineMarkup, paragraph, section } from './html/words.ts';
import { prose } from './clean.ts';
import { el, raw, type Markup } from './markup.ts';

/** Nothing is loaded and nothing runs: the page is all there is. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

const head = ({ firing }: Words): Markup =>
  el(
    'head',
    {},
    el('meta', { charset: 'utf-8' }),
    el('meta', { name: 'generator', content: 'Afterfire' }),
    el('meta', { 'http-equiv': 'Content-Security-Policy', content: POLICY }),
    el('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    el('meta', { name: 'color-scheme', content: 'light dark' }),
    el('title', {}, `Afterfire: ${firing.title}`),
    el('style', {}, raw(styleSheet())),
  );

const verdictMarkup = ({ verdict, findings, load }: Words): Markup[] => [
  el(
    'div',
    { class: 'verdict', id: 'verdict' },
    verdict.map((said) => {
      const href = anchorOf(
        said.evidence,
        findings.map(({ letter }) => letter),
      );
      return el('p', {}, el('a', { href }, lineMarkup(said)));
    }),
  ),
  el(
    'div',
    { class: 'load', id: 'load' },
    el('p', {}, el('strong', {}, prose(load.answer)), ' ', prose(load.advice)),
    load.caution === null ? null : paragraph(load.caution, 'caution'),
  ),
];

const body = (document: AnalysisDocument, words: Words): Markup =>
  el(
    'body',
    {},
    el(
      'main',
      {},
      el('h1', {}, words.firing.title),
      el('p', { class: 'facts' }, prose(words.firing.facts.join(' · '))),
      words.joined.length === 0 ? null : paragraph(words.joined.join(' ')),
      verdictMarkup(words),
      el(
        'div',
        { class: 'sheet' },
        el(
          'div',
          {},
          curveFigure(document, words),
          legsSection(words),
          heatWorkSection(document, words),
        ),
        el('div', { class: 'margin' }, findingsSection(words.findings)),
      ),
      bandsSection(words),
      readingSection(words),
      checksSection(words),
      section('cautions', 'Cautions', bullets(words.cautions)),
    ),
  );

/**
 * One firing as one HTML file: no script, nothing fetched, all text escaped. It prints on A4 and
 * Letter and follows the reader's light or dark screen.
 */
export const htmlReport = (document: AnalysisDocument, unit: TemperatureUnit): string => {
  const words = wording(document, unit);
  const page = el('html', { lang: 'en' }, head(words), body(document, words));
  return `<!doctype html>\n${page.markup}\n`;
};
