import type { Line } from '../../wording/line.ts';
import type { EvidenceLink } from '../../wording/verdict.ts';
import { prose } from '../clean.ts';
import { el, type Child, type Markup } from '../markup.ts';

/** A line with the numbers that matter set larger. */
export const lineMarkup = ({ parts }: Line): Child[] =>
  parts.map(({ text, large }) =>
    large ? el('span', { class: 'large' }, prose(text)) : prose(text),
  );

/** A paragraph of prose. */
export const paragraph = (text: string, className: string | null = null): Markup =>
  el('p', { class: className }, prose(text));

/** A list of sentences; nothing for none. */
export const bullets = (sentences: readonly string[]): Markup | null =>
  sentences.length === 0
    ? null
    : el(
        'ul',
        {},
        sentences.map((text) => el('li', {}, prose(text))),
      );

/** Where a sentence's evidence stands on the page. */
export const anchorOf = (evidence: EvidenceLink, letters: readonly string[]): string =>
  evidence.to === 'finding' ? `#finding-${letters[evidence.index] ?? ''}` : `#${evidence.section}`;

/** A titled section that links can find. */
export const section = (id: string, title: string, ...children: Child[]): Markup =>
  el(
    'section',
    { id, 'aria-labelledby': `${id}-title` },
    el('h2', { id: `${id}-title` }, title),
    children,
  );

/** A table's cell; numbers stand to the right. */
export const cell = (text: string, className: string | null = null): Markup =>
  el('td', { class: className }, prose(text));
