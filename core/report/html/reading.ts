import type { Words } from '../../wording/wording.ts';
import { prose } from '../clean.ts';
import { el, type Markup } from '../markup.ts';
import { bullets, cell, paragraph, section } from './words.ts';

const table = (heads: readonly string[], rows: readonly Markup[]): Markup =>
  el(
    'table',
    {},
    el(
      'thead',
      {},
      el(
        'tr',
        {},
        heads.map((head) => el('th', { scope: 'col' }, head)),
      ),
    ),
    el('tbody', {}, rows),
  );

const scrolled = (label: string, content: Markup): Markup =>
  el('div', { class: 'scroll', tabindex: '0', role: 'group', 'aria-label': label }, content);

/** How the kiln went through the bands that matter to the ware. */
export const bandsSection = ({ bands }: Words): Markup | null =>
  bands.length === 0
    ? null
    : section(
        'bands',
        'Slopes through what matters to the ware',
        scrolled(
          'Slopes by band',
          table(
            ['band', 'stretch', 'lasted', 'mean slope', 'fastest'],
            bands.map(({ name, stretch, lasted, mean, fastest }) =>
              el(
                'tr',
                {},
                el('th', { scope: 'row' }, name),
                [stretch, lasted, mean, fastest].map((text) => cell(text)),
              ),
            ),
          ),
        ),
      );

const rejectedMarkup = ({ reading: { rejected, rejectedUnlisted } }: Words): Markup[] => {
  if (rejected.length === 0) return [];
  const rest = rejectedUnlisted > 0 ? ` ${rejectedUnlisted} more are counted but not listed.` : '';
  return [
    el('h3', {}, 'Rejected rows'),
    scrolled(
      'Rejected rows',
      table(
        ['line', 'reason', 'text'],
        rejected.map(({ line, reason, text }) =>
          el(
            'tr',
            {},
            cell(String(line), 'number'),
            cell(reason),
            el('td', { class: 'mono' }, text),
          ),
        ),
      ),
    ),
    rest === '' ? el('p', {}) : paragraph(rest.trim(), 'muted'),
  ];
};

/** How the log was read: the account, every decision, every rejected row. */
export const readingSection = (words: Words): Markup => {
  const { account, firings, warnings, assumptions, decisions } = words.reading;
  return section(
    'reading',
    'How the log was read',
    bullets([...warnings, ...firings, ...account, ...assumptions]),
    scrolled(
      'Decisions of the reader',
      table(
        ['decided', 'certainty'],
        decisions.map(({ said, certainty, isGuess }) =>
          el('tr', {}, cell(said), cell(certainty, isGuess ? 'departs' : null)),
        ),
      ),
    ),
    rejectedMarkup(words),
  );
};

/** Every check, also those that found nothing or could not tell. */
export const checksSection = ({ checks }: Words): Markup =>
  section(
    'checks',
    'Checks',
    paragraph('Everything that was looked for. Silence is no clean bill of health.', 'muted'),
    table(
      ['looked for', 'outcome', 'because'],
      checks.map(({ name, outcome, outcomeWord, reason }) =>
        el(
          'tr',
          {},
          el('th', { scope: 'row' }, prose(name)),
          cell(outcomeWord, outcome === 'found' ? 'departs' : null),
          cell(reason),
        ),
      ),
    ),
  );
