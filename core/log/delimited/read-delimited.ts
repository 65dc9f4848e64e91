import type { Account } from '../account.ts';
import { afterLineEnd, lineEndFrom, type Text } from '../bytes/text.ts';
import { planColumns } from '../columns/plan-columns.ts';
import type { ReadingDecisions } from '../../model/options.ts';
import { Refusal } from '../../model/refusal.ts';
import { REJECTED_TEXT_CHARS } from '../limits.ts';
import type { LinesOf, TableRead } from '../assemble/table-read.ts';
import type { Aside, AsideLines } from './aside-lines.ts';
import { decideDialect } from './decide-dialect.ts';
import { dropMarks } from './drop-marks.ts';
import { findSections } from './find-sections.ts';
import { layOut, type Layout } from './layout.ts';
import { otherOrder } from './other-order.ts';
import { readRows } from './read-rows.ts';
import { refuseTable } from './refuse-table.ts';
import { lineText, sampleLines } from './sample-lines.ts';

/** A table of delimited text, and where its lines stand in the file. */
export interface DelimitedRead extends TableRead {
  readonly layout: Layout;
  readonly asideLines: AsideLines;
}

/** The texts of single lines, found again by their numbers in one pass over the line ends. */
export const linesIn =
  (text: Text): LinesOf =>
  (lines) => {
    const { bytes } = text;
    const texts: string[] = [];
    let at = 0;
    let number = 1;
    for (const line of lines) {
      while (number < line && at < bytes.length) {
        at = afterLineEnd(bytes, lineEndFrom(bytes, at));
        number += 1;
      }
      const end = lineEndFrom(bytes, at);
      // A character takes at most four bytes: enough is decoded for the text that is shown.
      texts.push(lineText(text, at, Math.min(end, at + 4 * REJECTED_TEXT_CHARS + 4)));
    }
    return texts;
  };

const accountForAside = (aside: Aside, marks: number, account: Account): void => {
  const counts = Object.entries({ ...aside, mark: marks }).filter(([, count]) => count > 0);
  if (counts.length === 0) return;
  const choice = counts.map(([kind, count]) => `${kind} ${count}`).join(', ');
  account.decide('lines-aside', choice, 'counted', 1);
  if (aside.table > 0) account.warn('other-tables');
};

const isContinental = ({ survey }: Layout): boolean =>
  survey.decimal.mark === ',' || survey.dialect.delimiter === ';';

/**
 * Reads delimited text. `isCareful` keeps to the reference path throughout.
 *
 * @throws Refusal naming what is missing
 */
export const readDelimited = (
  text: Text,
  fileName: string,
  byteLength: number,
  decisions: ReadingDecisions,
  account: Account,
  isCareful: boolean,
): DelimitedRead => {
  const lines = sampleLines(text);
  const survey = decideDialect(lines, decisions, account);
  const layout = survey === null ? null : layOut(lines, survey, decisions, account);
  if (layout === null) return refuseTable(lines, decisions);
  account.decide('format', 'delimited', 'rows-agree', 0.97);
  const sectionTime = findSections(layout, lines, decisions, account);
  const context = { isContinental: isContinental(layout), sectionTime };
  const linesOf = linesIn(text);
  let plan = planColumns(layout.sample, decisions, context, account);
  let read = readRows(text, layout, plan, isCareful);
  const order =
    decisions.dayOrder === undefined
      ? otherOrder(read.columns, plan, layout.survey.dialect, linesOf)
      : null;
  if (order !== null) {
    plan = planColumns(layout.sample, { ...decisions, dayOrder: order }, context, account);
    account.settleDayOrder(order);
    read = readRows(text, layout, plan, isCareful);
  }
  const marks = dropMarks(read.columns, plan, layout.survey.dialect, linesOf);
  accountForAside(read.aside, marks, account);
  if (read.columns.length === 0) {
    throw new Refusal(
      'header-only',
      'there are names of columns but no rows of readings',
      layout.headerLine,
    );
  }
  return {
    ...read,
    layout,
    plan,
    sample: layout.sample,
    lineOf: (line) => line,
    linesOf,
    decisions,
    account,
    source: {
      fileName,
      byteLength,
      format: 'delimited',
      encoding: text.encoding,
      delimiter: layout.survey.dialect.delimiter,
      decimalMark: layout.survey.decimal.mark,
      headerLine: layout.headerLine,
    },
  };
};
