import type { HistoryFindingWords, HistoryWords } from '../wording/history.ts';
import { clean } from './clean.ts';
import { item, table, wrap, type Column } from './text/layout.ts';

const SHAPES = { act: '◆', watch: '◇', note: '·' } as const;

const heading = (text: string): string[] => ['', text, '-'.repeat(text.length)];
const left = (head: string): Column => ({ head, align: 'left' });
const right = (head: string): Column => ({ head, align: 'right' });

const rows = ({ rows: all }: HistoryWords): string[] => {
  const columns = [
    right('#'),
    left('began'),
    right('peak'),
    right('climb'),
    right('power'),
    left('log'),
  ];
  const cells = all.map(({ began, peak, climb, power, fileName }, i) => [
    ...[String(i + 1), began, peak, climb, power, clean(fileName)],
  ]);
  const notes = all.flatMap(({ note }, i) => (note === '' ? [] : item(`${i + 1}: ${note}.`)));
  return [...table(columns, cells), ...notes];
};

const finding = (words: HistoryFindingWords): string[] => [
  ...wrap(`${SHAPES[words.severity]} ${words.severity}: ${words.title}`, '', undefined, '  '),
  ...wrap(words.why, '  '),
  ...wrap(`To do: ${words.remedy}`, '  '),
  ...(words.caution === null ? [] : wrap(`Caution: ${words.caution}`, '  ')),
  ...(words.couldBe.length === 0 ? [] : ['  It could also be:']),
  ...words.couldBe.flatMap(({ cause, tell }) => item(`${cause} What would tell: ${tell}`)),
  '',
];

/** A kiln's history as plain text. */
export const historyReport = (words: HistoryWords): string =>
  [
    `Afterfire: ${words.title}`,
    ...(words.order === null ? [] : wrap(words.order)),
    '',
    ...rows(words),
    ...heading('Power'),
    ...wrap(words.trend),
    ...words.steps.flatMap((text) => item(text)),
    ...wrap(words.forecast),
    ...(words.cooling.length === 0 ? [] : heading('Cooling of the last firing')),
    ...words.cooling.flatMap((text) => item(text)),
    ...heading('Findings'),
    ...(words.findings.length === 0 ? ['None.'] : words.findings.flatMap(finding).slice(0, -1)),
    ...heading('Cautions'),
    ...words.cautions.flatMap((text) => item(text)),
    '',
  ].join('\n');
