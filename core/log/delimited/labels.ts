import { commonest } from './commonest.ts';

/** A name right before a value: `temp=25.5`, `Temp: 25.5`, `state="on hold"`. */
const LABEL_AND_VALUE = /(^|[\s,;|])(\p{L}[\p{L}\p{N}_.]{0,40})\s{0,2}[=:]\s{0,2}(?=[-+]?[\d"'])/gu;
const QUOTED_VALUE = /(\p{L}[\p{L}\p{N}_.]{0,40}=)"([^"]*)"/gu;
/** A name and its value in one cell. */
const LABELLED = /^(\p{L}[\p{L}\p{N}_. -]{0,40})=\s*(.*)$/u;
/** So many of the lines must carry names in their cells (chosen). */
const NEARLY_ALL = 0.8;

/** Whether the cells of most lines carry their names, as in `temp=25.5 set=26`. */
export const areLabelled = (texts: readonly string[]): boolean => {
  const filled = texts.filter((text) => text.trim() !== '');
  const labelled = filled.filter((text) => text.search(LABEL_AND_VALUE) >= 0);
  return filled.length > 1 && labelled.length >= NEARLY_ALL * filled.length;
};

/** A line whose names stand right before their values, inside the quotes of those that have any. */
export const glueLabels = (line: string): string =>
  line.replace(LABEL_AND_VALUE, '$1$2=').replace(QUOTED_VALUE, '"$1$2"');

/** The name that a cell carries; '' for none. */
const labelOf = (cell: string): string => LABELLED.exec(cell)?.[1] ?? '';
const withoutLabel = (cell: string): string => LABELLED.exec(cell)?.[2] ?? cell;

/** The names that most lines carry, cell by cell; '' for a cell without one. */
export const labelsOf = (lines: readonly (readonly string[])[]): readonly string[] => {
  const sequences = lines
    .map((cells) => cells.map(labelOf))
    .filter((labels) => labels.some((label) => label !== ''));
  const best = commonest(sequences.map((labels) => labels.join('\u0001')));
  return best === null ? [] : best.key.split('\u0001');
};

/**
 * Cells in the order of `labels`, without their names: named ones where their name stands, others
 * in their order where it has none. What has no place follows behind.
 */
export const arrange = (cells: readonly string[], labels: readonly string[]): string[] => {
  const arranged: string[] = labels.map(() => '');
  const extra: string[] = [];
  let next = labels.indexOf('');
  for (const cell of cells) {
    const label = labelOf(cell);
    const place = label === '' ? next : labels.indexOf(label);
    if (place < 0 || arranged[place] !== '') extra.push(withoutLabel(cell));
    else arranged[place] = withoutLabel(cell);
    if (label === '' && next >= 0) next = labels.indexOf('', next + 1);
  }
  return [...arranged, ...extra];
};
