import type { Severity } from '../../model/finding.ts';
import type { FindingWords } from '../../wording/findings.ts';
import { prose } from '../clean.ts';
import { el, type Markup } from '../markup.ts';
import { paragraph, section } from './words.ts';

/** Severity by shape, beside the word: colour only comes in addition. */
export const SEVERITY_SHAPES: Readonly<Record<Severity, string>> = {
  act: '◆',
  watch: '◇',
  note: '·',
};

const measuredText = ({ measured }: FindingWords): string =>
  measured
    .map(
      ({ label, value, limit }) => `${label} ${value}${limit === null ? '' : ` (limit ${limit})`}`,
    )
    .join('; ');

/** Other explanations, each beside what would tell it apart. */
const alternatives = (couldBe: FindingWords['couldBe']): Markup =>
  el(
    'table',
    { class: 'plain' },
    el(
      'thead',
      {},
      el(
        'tr',
        {},
        el('th', { scope: 'col' }, 'it could also be'),
        el('th', { scope: 'col' }, 'what would tell'),
      ),
    ),
    el(
      'tbody',
      {},
      couldBe.map(({ cause, tell }) =>
        el('tr', {}, el('td', {}, prose(cause)), el('td', {}, prose(tell))),
      ),
    ),
  );

const row = (term: string, ...content: (Markup | string | null)[]): Markup[] => [
  el('dt', {}, term),
  el('dd', {}, content),
];

const findingMarkup = (finding: FindingWords): Markup => {
  const { letter, severity, severityWord, title, why, couldBe, remedy, caution } = finding;
  return el(
    'article',
    { id: `finding-${letter}`, class: `finding ${severity}` },
    el(
      'header',
      {},
      el(
        'span',
        { class: 'letter-mark' },
        `${SEVERITY_SHAPES[severity]} ${letter} ${severityWord}`,
      ),
      el('h3', {}, prose(title.text)),
    ),
    el(
      'dl',
      {},
      row('Why', prose(why)),
      row('Measured', prose(measuredText(finding))),
      row('To do', prose(remedy)),
    ),
    caution === null ? null : paragraph(caution, 'caution'),
    alternatives(couldBe),
  );
};

/** The findings with all that belongs to them. */
export const findingsSection = (findings: readonly FindingWords[]): Markup =>
  section(
    'findings',
    'Findings',
    findings.length === 0
      ? paragraph('None. What was looked for, and what could not be told, stands under “Checks”.')
      : findings.map(findingMarkup),
  );
