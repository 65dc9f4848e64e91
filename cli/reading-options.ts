import { InvalidArgumentError, Option, type Command } from 'commander';
import { zReadingDecisions, type ReadingDecisions } from '../core/model/options.ts';

/** What the options on reading give, by commander's names for them. */
export interface GivenReading {
  readonly timeColumn?: string[];
  readonly temperatureColumn?: string;
  readonly readingUnit?: 'C' | 'F' | 'K';
  readonly delimiter?: string;
  readonly decimalMark?: '.' | ',';
  readonly dayOrder?: NonNullable<ReadingDecisions['dayOrder']>;
  readonly intervalSeconds?: number;
  readonly timeZone?: string;
  readonly firstDate?: string;
  readonly firing?: number;
}

/** Names for what is awkward to type in a shell. */
const DELIMITERS: Readonly<Record<string, string>> = {
  comma: ',',
  semicolon: ';',
  tab: '\t',
  bar: '|',
  blanks: ' ',
};

const delimiter = (given: string): string => {
  const named = DELIMITERS[given] ?? given;
  if (/^[^\p{L}\p{N}"]$/u.test(named)) return named;
  const names = Object.keys(DELIMITERS).join(', ');
  throw new InvalidArgumentError(`It is one character, or one of ${names}.`);
};

const positiveSeconds = (given: string): number => {
  const value = Number(given);
  if (Number.isFinite(value) && value > 0) return value;
  throw new InvalidArgumentError('It is a number of seconds above 0.');
};

const isoDate = (given: string): string => {
  if (zReadingDecisions.shape.firstDate.safeParse(given).success) return given;
  throw new InvalidArgumentError('It is a date such as 2024-03-14.');
};

const positiveWhole = (given: string): number => {
  const value = Number(given);
  if (Number.isInteger(value) && value > 0) return value;
  throw new InvalidArgumentError('It is a whole number above 0.');
};

/** Adds the options with which a person overrides how the reader would read the logs. */
export const withReadingOptions = (command: Command): Command =>
  command
    .addOption(
      new Option(
        '--time-column <name>',
        'the column of the times; twice for a date and a time',
      ).argParser((name: string, before: string[] | undefined) => [...(before ?? []), name]),
    )
    .option('--temperature-column <name>', 'the column of the kiln’s temperature')
    .addOption(
      new Option('--reading-unit <unit>', 'degrees of the readings').choices(['C', 'F', 'K']),
    )
    .addOption(
      new Option(
        '--delimiter <mark>',
        `what parts the columns: one character, or ${Object.keys(DELIMITERS).join(', ')}`,
      ).argParser(delimiter),
    )
    .addOption(new Option('--decimal-mark <mark>', 'the decimal mark').choices(['.', ',']))
    .addOption(
      new Option('--day-order <order>', 'how dates are written').choices([
        'day-first',
        'month-first',
        'year-first',
      ]),
    )
    .addOption(
      new Option(
        '--interval-seconds <n>',
        'seconds between readings, where the log has no times',
      ).argParser(positiveSeconds),
    )
    .option('--time-zone <name>', 'the zone of times without an offset, such as Europe/Berlin')
    .addOption(
      new Option(
        '--first-date <date>',
        'the day of the first row, YYYY-MM-DD, where the log has a clock and no date',
      ).argParser(isoDate),
    )
    .addOption(
      new Option(
        '--firing <n>',
        'which of several firings in a log, counted from 1; else the hottest',
      ).argParser(positiveWhole),
    );

/** The decisions on reading among what was given; empty where the reader decides all of it. */
export const readingGiven = (given: GivenReading): ReadingDecisions => ({
  ...(given.timeColumn && { timeColumns: given.timeColumn }),
  ...(given.temperatureColumn !== undefined && { temperatureColumn: given.temperatureColumn }),
  ...(given.readingUnit && { unit: given.readingUnit }),
  ...(given.delimiter !== undefined && { delimiter: given.delimiter }),
  ...(given.decimalMark && { decimalMark: given.decimalMark }),
  ...(given.dayOrder && { dayOrder: given.dayOrder }),
  ...(given.intervalSeconds !== undefined && { intervalSeconds: given.intervalSeconds }),
  ...(given.timeZone !== undefined && { timeZone: given.timeZone }),
  ...(given.firstDate !== undefined && { firstDate: given.firstDate }),
  ...(given.firing !== undefined && { firing: given.firing }),
});

/** The options that answer a refusal of the reader, by its code. */
export const OPTIONS_FOR: Readonly<Record<string, string>> = {
  'no-time': '--time-column NAME or --interval-seconds N',
  'no-temperature': '--temperature-column NAME',
};
