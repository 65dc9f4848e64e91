import type { ReadingDecisions } from '../../model/options.ts';
import { Refusal } from '../../model/refusal.ts';
import { speaksOfTime } from '../columns/name-meaning.ts';
import { classOf, isNumberClass } from '../text/cell-class.ts';
import type { LineSample } from './sample-lines.ts';
import { plainDialect, splitLine } from './split.ts';

const MARKUP = /^\s*<(?:!doctype|html|\?xml|svg|table|[a-z]+[\s>])/i;
const DELIMITERS = [';', '\t', '|', ','];

/** A line of names without rows below it: words apart by a delimiter, one of them about time. */
const isHeader = (text: string): boolean =>
  DELIMITERS.some((delimiter) => {
    const { cells } = splitLine(text, plainDialect(delimiter));
    const isWords = cells.every((cell) => !isNumberClass(classOf(cell, '.')));
    return cells.length > 1 && isWords && cells.some(speaksOfTime);
  });

/** Refuses text in which no table was found, with what it seems to be instead. */
export const refuseTable = (lines: LineSample, decisions: ReadingDecisions): never => {
  const filled = lines.head
    .map(({ text }, index) => ({ text: text.slice(0, 1000), line: index + 1 }))
    .filter(({ text }) => text.trim() !== '');
  const [first] = filled;
  if (first !== undefined && MARKUP.test(first.text)) {
    throw new Refusal(
      'not-readable',
      'this is a web page or markup, not a log; export the log as CSV or text and give that file',
      first.line,
    );
  }
  const header = filled.find(({ text }) => isHeader(text));
  if (header !== undefined && filled.length - filled.indexOf(header) <= 3) {
    throw new Refusal(
      'header-only',
      'there are names of columns but no rows of readings below them',
      header.line,
    );
  }
  if (decisions.headerLine != null && decisions.headerLine >= lines.head.length) {
    throw new Refusal('bad-option', `there are no rows below line ${decisions.headerLine}`);
  }
  if (decisions.delimiter !== undefined) {
    throw new Refusal(
      'bad-option',
      `no table is there with “${decisions.delimiter}” between the cells; leave the choice open`,
    );
  }
  const count = lines.head.length;
  const more = lines.body.length > 0 ? ' and more' : '';
  const read = `${count}${more} ${count === 1 && more === '' ? 'line' : 'lines'}`;
  throw new Refusal(
    'not-readable',
    `no table of times and temperatures was found in ${read}, with commas, semicolons, ` +
      'tabs, bars or blanks between the cells; a log needs a time and a temperature on each line',
    first?.line ?? null,
  );
};
