import { InvalidArgumentError, Option, type Command } from 'commander';
import {
  COUPLE_TYPES,
  TIME_ORIGINS,
  TIME_UNITS,
  zChannelUnit,
  zReadingDecisions,
  type ReadingDecisions,
} from '../core/model/options.ts';

/** What the options on reading give, by commander's names for them. */
export interface GivenReading {
  /** The file that holds decisions. */
  readonly reading?: string;
  readonly encoding?: string;
  readonly delimiter?: string;
  readonly decimalMark?: '.' | ',';
  readonly headerLine?: number | 'none';
  readonly timeColumn?: string[];
  readonly timeUnit?: ReadingDecisions['timeUnit'];
  readonly timeFrom?: ReadingDecisions['timeFrom'];
  readonly dayOrder?: ReadingDecisions['dayOrder'];
  readonly timeZone?: string;
  readonly firstDate?: string;
  readonly intervalSeconds?: number;
  readonly firing?: number;
  readonly temperatureColumn?: string;
  readonly readingUnit?: ReadingDecisions['unit'];
  readonly setpointColumn?: string;
  readonly outputColumn?: string;
  readonly coldJunctionColumn?: string;
  readonly zoneColumn?: string[];
  readonly coupleType?: ReadingDecisions['coupleType'];
  readonly coldJunctionC?: number;
  readonly missingMark?: string[];
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

const lineNumber = (given: string): number | 'none' =>
  given === 'none' ? given : positiveWhole(given);

const coldJunction = (given: string): number => {
  const value = zReadingDecisions.shape.coldJunctionC.safeParse(Number(given));
  if (given.trim() !== '' && value.data !== undefined) return value.data;
  throw new InvalidArgumentError('It is a temperature in °C, from -60 to 120.');
};

const orNone = (given: string | undefined): string | null | undefined =>
  given === 'none' ? null : given;
const listed = (one: string, before: string[] | undefined): string[] => [...(before ?? []), one];
const places = (one: string, before: string[] | undefined): string[] =>
  one === 'none' ? [] : listed(one, before);

const DELIMITER_NAMES = Object.keys(DELIMITERS).join(', ');

/** The options of the shape of the file. */
const shapeOptions = (): Option[] => [
  new Option('--reading <file>', 'decisions on reading from a JSON file; options override them'),
  new Option('--encoding <label>', 'the characters, such as utf-8, utf-16le or windows-1252'),
  new Option(
    '--delimiter <mark>',
    `what parts the columns: one character, or ${DELIMITER_NAMES}`,
  ).argParser(delimiter),
  new Option('--decimal-mark <mark>', 'the decimal mark').choices(['.', ',']),
  new Option('--header-line <n>', 'the line that names the columns, or none').argParser(lineNumber),
];

/** The options of its times. */
const timeOptions = (): Option[] => [
  new Option(
    '--time-column <name>',
    'the column of the times; twice for a date and a time',
  ).argParser(listed),
  new Option('--time-unit <unit>', 'what bare numbers of time count').choices(TIME_UNITS),
  new Option('--time-from <origin>', 'where they count from').choices(TIME_ORIGINS),
  new Option('--day-order <order>', 'how dates are written').choices(
    zReadingDecisions.shape.dayOrder.unwrap().options,
  ),
  new Option('--time-zone <zone>', 'the zone of times without an offset, such as Europe/Berlin'),
  new Option('--first-date <date>', 'the day of the first row, where there are no dates').argParser(
    isoDate,
  ),
  new Option(
    '--interval-seconds <n>',
    'how many seconds lie between one row and the next, for a log whose rows carry no times',
  ).argParser(positiveSeconds),
  new Option(
    '--firing <n>',
    'which of several firings in a log, counted from 1; else the hottest',
  ).argParser(positiveWhole),
];

/** The options of its readings. */
const valueOptions = (): Option[] => [
  new Option('--temperature-column <name>', 'the column of the kiln’s temperature'),
  new Option('--reading-unit <unit>', 'the unit of the readings').choices(zChannelUnit.options),
  new Option('--setpoint-column <name>', 'the column of the setpoint, or none'),
  new Option('--output-column <name>', 'the column of the output in percent, or none'),
  new Option(
    '--zone-column <name>',
    'a column of another place in the kiln, once for each; or none',
  ).argParser(places),
  new Option('--couple-type <type>', 'the couple of readings in mV or uV').choices(COUPLE_TYPES),
  new Option(
    '--cold-junction-column <name>',
    'the column of the cold junction’s temperature, or none',
  ),
  new Option(
    '--cold-junction-c <n>',
    'the cold junction’s temperature in °C; 0 where the logger has allowed for it',
  ).argParser(coldJunction),
  new Option(
    '--missing-mark <mark>',
    'a word or number that means no reading, once for each',
  ).argParser(listed),
];

/** Adds the options with which a person overrides how the reader would read the logs. */
export const withReadingOptions = (command: Command): Command => {
  for (const option of [...shapeOptions(), ...timeOptions(), ...valueOptions()]) {
    command.addOption(option);
  }
  return command;
};

/** The decisions on reading among what was given; empty where the reader decides all of it. */
export const readingGiven = (given: GivenReading): ReadingDecisions => {
  const decisions: {
    readonly [Key in keyof ReadingDecisions]-?: ReadingDecisions[Key] | undefined;
  } = {
    encoding: given.encoding,
    delimiter: given.delimiter,
    decimalMark: given.decimalMark,
    headerLine: given.headerLine === 'none' ? null : given.headerLine,
    timeColumns: given.timeColumn,
    timeUnit: given.timeUnit,
    timeFrom: given.timeFrom,
    dayOrder: given.dayOrder,
    timeZone: given.timeZone,
    firstDate: given.firstDate,
    intervalSeconds: given.intervalSeconds,
    firing: given.firing,
    temperatureColumn: given.temperatureColumn,
    unit: given.readingUnit,
    setpointColumn: orNone(given.setpointColumn),
    outputColumn: orNone(given.outputColumn),
    coldJunctionColumn: orNone(given.coldJunctionColumn),
    zoneColumns: given.zoneColumn,
    coupleType: given.coupleType,
    coldJunctionC: given.coldJunctionC,
    noReadingMarks: given.missingMark,
  };
  const said = Object.entries(decisions).filter(([, value]) => value !== undefined);
  return Object.fromEntries(said);
};

/** The options that answer a refusal of the reader, by its code. */
export const OPTIONS_FOR: Readonly<Record<string, string>> = {
  'no-time': '--time-column NAME, or --interval-seconds N if the rows came N seconds apart',
  'no-temperature': '--temperature-column NAME; for millivolts --reading-unit mV --couple-type K',
};
