import type { AnalysisDocument, HeatWork } from '../../model/document.ts';
import type { HeatWorkWords } from '../../wording/heat-work.ts';
import type { Words } from '../../wording/wording.ts';
import { bendDegrees } from '../chart/bend.ts';
import { doseChart } from '../chart/dose.ts';
import { conePackSvg, doseSvg, type DrawnCone } from '../chart/heat-work-svg.ts';
import { prose } from '../clean.ts';
import { el, type Markup } from '../markup.ts';
import { bullets, cell, lineMarkup, paragraph, section } from './words.ts';

const drawnCones = (heatWork: HeatWork, { pack }: HeatWorkWords): DrawnCone[] =>
  pack.flatMap(({ cone, name, roleWord, stands }): DrawnCone[] => {
    const got = heatWork.byCone.find((entry) => entry.cone === cone);
    if (!got) return [];
    return [{ name, roleWord, stands, bendDegrees: bendDegrees(got.dose, got.marginC) }];
  });

const figures = (heatWork: HeatWork, words: HeatWorkWords): Markup | null => {
  const firing = words.pack.find(({ role }) => role === 'firing');
  if (!firing) return null;
  const stand = words.pack.map(({ name, stands }) => `${name} ${stands}`).join(', ');
  const chart = doseChart(heatWork);
  return el(
    'div',
    { class: 'heat-figures' },
    conePackSvg(drawnCones(heatWork, words), `As predicted from the log: ${stand}.`),
    chart &&
      doseSvg(
        chart,
        firing.name,
        `The dose gathers towards the peak; at 1 ${firing.name} is down. ${words.target ?? ''}`,
      ),
  );
};

const partsTable = ({ parts }: HeatWorkWords): Markup | null =>
  parts.length === 0
    ? null
    : el(
        'table',
        {},
        el(
          'thead',
          {},
          el(
            'tr',
            {},
            el('th', { scope: 'col' }, 'where it came from'),
            el('th', { scope: 'col', class: 'number' }, 'of the dose'),
            el('th', { scope: 'col' }, 'added'),
          ),
        ),
        el(
          'tbody',
          {},
          parts.map(({ name, share, added }) =>
            el(
              'tr',
              {},
              el('th', { scope: 'row' }, prose(name)),
              cell(share, 'number'),
              cell(added),
            ),
          ),
        ),
      );

/** The heat-work: cones, dose, parts, and what would have done it. */
export const heatWorkSection = (document: AnalysisDocument, words: Words): Markup => {
  const { heatWork } = document;
  const said = words.heatWork;
  const title = 'Heat-work';
  if (heatWork === null || said === null) {
    return section('heat-work', title, paragraph(words.verdict[0]?.text ?? ''));
  }
  return section(
    'heat-work',
    title,
    el('p', {}, lineMarkup(said.headline)),
    said.target === null ? null : paragraph(said.target),
    said.coupleError === null ? null : paragraph(said.coupleError),
    figures(heatWork, said),
    partsTable(said),
    said.remedies.length === 0
      ? null
      : [
          el('h3', { class: 'after' }, 'What would have done it'),
          bullets(said.remedies),
          said.remediesNote === null ? null : paragraph(said.remediesNote),
        ],
    el('div', { class: 'muted' }, bullets(said.assumptions)),
  );
};
