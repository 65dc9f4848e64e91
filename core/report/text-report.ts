import type { FindingWords } from '../wording/findings.ts';
import type { LegCells } from '../wording/legs.ts';
import type { ReadingWords } from '../wording/reading.ts';
import type { Words } from '../wording/wording.ts';
import { clean } from './clean.ts';
import { item, table, wrap, type Column } from './text/layout.ts';

const SHAPES = { act: '◆', watch: '◇', note: '·' } as const;

const heading = (text: string): string[] => ['', clean(text), '-'.repeat(clean(text).length)];

const top = ({ firing, joined, verdict, load }: Words): string[] => [
  `Afterfire: ${clean(firing.title)}`,
  ...wrap(firing.facts.join(' · ')),
  ...(joined.length === 0 ? [] : ['', ...wrap(joined.join(' '))]),
  '',
  ...verdict.flatMap(({ text }) => wrap(text)),
  '',
  ...wrap(`${load.answer} ${load.advice}`),
  ...(load.caution === null ? [] : wrap(`Caution: ${load.caution}`, '  ')),
];

const left = (head: string): Column => ({ head, align: 'left' });
const right = (head: string): Column => ({ head, align: 'right' });

const cellOf = (cells: LegCells | null, name: keyof LegCells): string => cells?.[name] ?? '–';

const legs = ({ legs: { heading: title, note, rows }, overshoots, zones }: Words): string[] => {
  const hasPlan = rows.some(({ planned }) => planned !== null);
  const columns = hasPlan
    ? [
        ...[right('#'), left('leg'), right('plan'), right('driven'), right('plan')],
        ...[right('lasted'), right('reached'), right('until'), left('verdict')],
      ]
    : [right('#'), left('leg'), right('rate'), right('lasted'), right('reached'), right('until')];
  const cells = rows.map(({ number, name, planned, actual, verdict }) => {
    const driven = [cellOf(actual, 'lasted'), cellOf(actual, 'to'), cellOf(actual, 'ended')];
    const rate = cellOf(actual, 'rate');
    return hasPlan
      ? [
          ...[String(number), name, cellOf(planned, 'rate'), rate, cellOf(planned, 'lasted')],
          ...driven,
          verdict,
        ]
      : [String(number), name, rate, ...driven];
  });
  return [
    ...heading(title),
    ...table(columns, cells),
    ...(note === null ? [] : wrap(note)),
    ...[...overshoots, ...zones].flatMap((text) => item(text)),
  ];
};

const heatWork = ({ heatWork: said }: Words): string[] => {
  if (said === null) return [];
  const { headline, target, coupleError, pack, parts, remedies, remediesNote, assumptions } = said;
  const stands = pack.map(({ name, roleWord, stands: how }) => `${name} (${roleWord}) ${how}`);
  const added = parts.map(({ name, share, added: steps }) => [name, share, steps]);
  return [
    ...heading('Heat-work'),
    ...[headline.text, target, coupleError].flatMap((text) => (text === null ? [] : wrap(text))),
    ...(stands.length === 0 ? [] : wrap(`The cones as predicted: ${stands.join(', ')}.`)),
    ...(added.length === 0
      ? []
      : ['', ...table([left('where it came from'), right('of the dose'), left('added')], added)]),
    ...(remedies.length === 0 ? [] : ['', 'What would have done it:']),
    ...remedies.flatMap((text) => item(text)),
    ...(remediesNote === null ? [] : wrap(remediesNote)),
    ...(assumptions.length === 0 ? [] : ['', 'Taken for granted:']),
    ...assumptions.flatMap((text) => item(text)),
  ];
};

const finding = (words: FindingWords): string[] => {
  const { letter, severity, severityWord, title, why, measured, couldBe, remedy, caution } = words;
  const figures = measured.map(
    ({ label, value, limit }) => `${label} ${value}${limit === null ? '' : ` (limit ${limit})`}`,
  );
  return [
    ...wrap(`${SHAPES[severity]} ${letter} ${severityWord}: ${title.text}`, '', undefined, '  '),
    ...wrap(why, '  '),
    ...(figures.length === 0 ? [] : wrap(`Measured: ${figures.join('; ')}.`, '  ')),
    ...wrap(`To do: ${remedy}`, '  '),
    ...(caution === null ? [] : wrap(`Caution: ${caution}`, '  ')),
    '  It could also be:',
    ...couldBe.flatMap(({ cause, tell }) => item(`${cause} What would tell: ${tell}`, '-')),
    '',
  ];
};

const findings = ({ findings: all }: Words): string[] => [
  ...heading('Findings'),
  ...(all.length === 0 ? ['None.'] : all.flatMap(finding).slice(0, -1)),
];

const unknown = ({ checks }: Words): string[] => {
  const open = checks.filter(({ outcome }) => outcome === 'not-applicable' || outcome === 'failed');
  if (open.length === 0) return [];
  const reasons = [...new Set(open.map(({ reason }) => reason))];
  const namesOf = (because: string) =>
    open.filter(({ reason }) => reason === because).map(({ name }) => name);
  return [
    ...heading('What cannot be told from this log'),
    ...reasons.flatMap((reason) => item(`${namesOf(reason).join('; ')}: because ${reason}.`)),
  ];
};

const reading = ({ account, firings, warnings, decisions }: ReadingWords): string[] => {
  const guesses = decisions.filter(({ isGuess }) => isGuess).map(({ said }) => `A guess: ${said}`);
  return [...warnings, ...firings, ...guesses, ...account].flatMap((text) => item(text));
};

const cautions = ({ cautions: all }: Words): string[] => [
  ...heading('Cautions'),
  ...all.flatMap((text) => item(text)),
];

/** The firing as plain text, in the order in which a potter would want it read out. */
export const textReport = (words: Words): string =>
  [
    ...top(words),
    ...legs(words),
    ...heatWork(words),
    ...findings(words),
    ...unknown(words),
    ...heading('How the log was read'),
    ...reading(words.reading),
    ...cautions(words),
    '',
  ].join('\n');

/** How one log was read, as plain text: the account alone, with every decision and rejected row. */
export const readingReport = (fileName: string, words: ReadingWords): string => {
  const { decisions, rejected, rejectedUnlisted } = words;
  const more = rejectedUnlisted > 0 ? [`  … and ${rejectedUnlisted} more.`] : [];
  return [
    clean(fileName),
    ...reading(words),
    '',
    ...table(
      [left('decided'), left('certainty')],
      decisions.map(({ said, certainty }) => [said, certainty]),
    ),
    ...(rejected.length === 0 ? [] : ['', 'Rejected rows:']),
    ...rejected.map(({ line, reason, text }) => clean(`  line ${line}: ${reason}: ${text}`)),
    ...more,
    '',
  ].join('\n');
};
