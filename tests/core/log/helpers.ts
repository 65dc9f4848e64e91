import { Account } from '../../../core/log/account.ts';
import { headerUnits } from '../../../core/log/columns/header-units.ts';
import { makeSample, type TableSample } from '../../../core/log/columns/sample.ts';
import { makeText, type Text } from '../../../core/log/bytes/text.ts';
import { decideDialect } from '../../../core/log/delimited/decide-dialect.ts';
import { layOut, type Layout } from '../../../core/log/delimited/layout.ts';
import { sampleLines } from '../../../core/log/delimited/sample-lines.ts';
import type { Survey } from '../../../core/log/delimited/survey.ts';
import type { ReadingDecisions } from '../../../core/model/options.ts';
import { EMPTY_PREAMBLE, makePreamble } from '../../../core/log/text/preamble.ts';

export const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

export const textOf = (text: string): Text => makeText(utf8(text), 'utf-8', 'utf-8');

/** The choice and the reason of one decision of an account. */
export const decided = (account: Account, what: string): [string, string] | null => {
  const found = account.decisions().find((decision) => decision.what === what);
  return found === undefined ? null : [found.choice, found.why];
};

/** A sampled table from its names and rows. */
export const sampleOf = (
  names: readonly string[] | number,
  rows: readonly (readonly (string | number)[])[],
  more: { preamble?: readonly string[]; unitsRow?: readonly string[] } = {},
): TableSample => {
  const isNamed = typeof names !== 'number';
  const shown = isNamed ? names : Array.from({ length: names }, (_, i) => `column ${i + 1}`);
  return makeSample({
    names: shown,
    line: 7,
    isNamed,
    aliases: [],
    units: headerUnits(shown, more.unitsRow ?? null),
    rows: rows.map((row) => row.map(String)),
    decimalMark: '.',
    preamble: more.preamble === undefined ? EMPTY_PREAMBLE : makePreamble(more.preamble),
  });
};

/** Rows of a climb: 30 stamps ten minutes apart, and what `cells` puts behind each. */
export const climb = (
  cells: (celsius: number, row: number) => readonly (string | number)[],
  count = 30,
): (string | number)[][] =>
  Array.from({ length: count }, (_, row) => [
    new Date(Date.UTC(2024, 2, 14, 6, 10 * row)).toISOString().slice(0, 19).replace('T', ' '),
    ...cells(Math.round((20 + 31.3 * row + (row % 3) * 0.4) * 10) / 10, row),
  ]);

/** What the dialect and the layout make of a text. */
export const surveyOf = (text: string, decisions: ReadingDecisions = {}): Survey | null =>
  decideDialect(sampleLines(textOf(text)), decisions, new Account());

export const layoutOf = (
  text: string,
  decisions: ReadingDecisions = {},
  account = new Account(),
): Layout => {
  const lines = sampleLines(textOf(text));
  const survey = decideDialect(lines, decisions, account);
  const layout = survey === null ? null : layOut(lines, survey, decisions, account);
  if (layout === null) throw new Error('no table was found');
  return layout;
};
