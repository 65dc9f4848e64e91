import type { LegCells, LegWords } from '../../wording/legs.ts';
import type { Words } from '../../wording/wording.ts';
import { el, type Markup } from '../markup.ts';
import { bullets, cell, paragraph, section } from './words.ts';

const NOTHING: LegCells = { rate: '–', from: '–', to: '–', lasted: '–', ended: '–' };

const cellsMarkup = (cells: LegCells | null): Markup[] => {
  const { rate, to, lasted, ended } = cells ?? NOTHING;
  return [
    cell(rate, 'number group'),
    cell(to, 'number'),
    cell(lasted, 'number'),
    cell(ended, 'number'),
  ];
};

const rowMarkup =
  (hasPlan: boolean) =>
  (leg: LegWords): Markup =>
    el(
      'tr',
      {},
      cell(String(leg.number), 'number'),
      el('th', { scope: 'row' }, leg.name),
      hasPlan ? cellsMarkup(leg.planned) : null,
      cellsMarkup(leg.actual),
      hasPlan ? cell(leg.verdict, leg.departs ? 'departs verdict-cell' : 'verdict-cell') : null,
    );

const COLUMNS = ['rate', 'to', 'lasted', 'until'];

const heads = (): Markup[] =>
  COLUMNS.map((name, index) =>
    el('th', { scope: 'col', class: index === 0 ? 'number group' : 'number' }, name),
  );

const groupHeads = (): Markup =>
  el(
    'tr',
    {},
    el('td', { colspan: 2 }),
    el('th', { scope: 'colgroup', colspan: 4, class: 'group' }, 'planned'),
    el('th', { scope: 'colgroup', colspan: 4, class: 'group' }, 'driven'),
    el('td', {}),
  );

/** The legs, planned beside driven. */
export const legsSection = ({ legs, overshoots, zones }: Words): Markup => {
  const hasPlan = legs.rows.some(({ planned }) => planned !== null);
  return section(
    'legs',
    legs.heading,
    el(
      'div',
      { class: 'scroll', tabindex: '0', role: 'group', 'aria-label': legs.heading },
      el(
        'table',
        { class: 'legs' },
        el(
          'thead',
          {},
          hasPlan ? groupHeads() : null,
          el(
            'tr',
            {},
            el('th', { scope: 'col', class: 'number' }, '#'),
            el('th', { scope: 'col' }, 'leg'),
            hasPlan ? heads() : null,
            heads(),
            hasPlan ? el('th', { scope: 'col' }, 'verdict') : null,
          ),
        ),
        el('tbody', {}, legs.rows.map(rowMarkup(hasPlan))),
      ),
    ),
    legs.note === null ? null : paragraph(legs.note, 'muted'),
    bullets([...overshoots, ...zones]),
  );
};
