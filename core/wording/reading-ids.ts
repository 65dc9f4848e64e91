import { celsius, temperatureIn, type TemperatureUnit } from '../units.ts';
import { idAsWords } from './checks.ts';

/**
 * The words for what the reader decides, why, what it assumes, what it warns of and why it rejects
 * a row. The ids come from the rooms that read; an id that has no words of its own here is still
 * said, by its own name.
 */
const DECISIONS: Readonly<Record<string, (choice: string, unit: TemperatureUnit) => string>> = {
  encoding: (choice) => `the characters are read as ${choice}`,
  format: (choice) => `the file is ${FORMATS[choice] ?? choice}`,
  delimiter: (choice) => `cells are parted by ${delimiterName(choice)}`,
  'decimal-mark': (choice) => `the decimal mark is ${choice === ',' ? 'a comma' : 'a point'}`,
  'header-line': (choice) =>
    /^\d+$/.test(choice) ? `the columns are named on line ${choice}` : 'no line names the columns',
  'units-row': (choice) => `units stand in a row of their own, on line ${choice}`,
  table: (choice) => `of the tables in the file this one was read: ${choice}`,
  series: (choice) => `of the channels in the file this one was read: “${choice}”`,
  'time-column': (choice) => `the time stands in “${choice}”`,
  'time-pattern': (choice) => `times are written as ${choice}`,
  'time-unit': (choice) => `times are counted in ${TIME_UNITS[choice] ?? choice}`,
  'day-order': (choice) => `dates are written ${choice.replace(/-/g, ' ')}`,
  interval: (choice) => `rows are ${/^[\d.]+$/.test(choice) ? `${choice} s` : choice} apart`,
  'first-date': (choice) => `the log begins on ${choice}`,
  'time-zone': (choice) => `times are those of the zone ${choice}`,
  firing: (choice) => `the firing analysed is number ${choice} in the log`,
  'temperature-column': (choice) => `the kiln’s temperature stands in “${choice}”`,
  unit: (choice) => `temperatures are in ${unitName(choice)}`,
  'setpoint-column': (choice) => columnOr(choice, 'the setpoint stands', 'no column is a setpoint'),
  'output-column': (choice) =>
    columnOr(choice, 'the controller’s output stands', 'no column is the controller’s output'),
  'zone-columns': (choice) =>
    choice === 'none'
      ? 'no column is another measured place'
      : `other measured places: “${choice}”`,
  'couple-type': (choice) => `the couple is of type ${choice}`,
  'cold-junction-column': (choice) =>
    columnOr(
      choice,
      'the temperature of the cold junction stands',
      'no column is the cold junction',
    ),
  'cold-junction': (choice, unit) =>
    choice === 'compensated'
      ? 'the cold junction is allowed for in the voltages'
      : `the cold junction stood at ${temperatureOf(choice, unit)}`,
  'no-reading-marks': (choice) => `these stand for no reading: “${choice}”`,
  'lines-aside': (choice) => `lines that are no rows were left aside: ${choice}`,
};

/** A temperature that is written in °C, in the reader's unit and to a tenth. */
const temperatureOf = (choice: string, unit: TemperatureUnit): string =>
  `${Math.round(temperatureIn(celsius(Number(choice)), unit) * 10) / 10} °${unit}`;

const FORMATS: Readonly<Record<string, string>> = {
  delimited: 'delimited text',
  json: 'JSON',
  'json-lines': 'JSON, one row a line',
  'typed-in': 'readings typed in by hand',
};

/** Where a column stands, or that there is none. */
const columnOr = (choice: string, stands: string, none: string): string =>
  choice === 'none' ? none : `${stands} in “${choice}”`;

/** Scales by name, so that a reader of one scale is not shown the sign of the other. */
const UNITS: Readonly<Record<string, string>> = {
  C: 'degrees Celsius',
  F: 'degrees Fahrenheit',
  K: 'kelvins',
  mV: 'millivolts',
  uV: 'microvolts',
};

const TIME_UNITS: Readonly<Record<string, string>> = {
  s: 'seconds',
  ms: 'milliseconds',
  us: 'microseconds',
  ns: 'nanoseconds',
  min: 'minutes',
  h: 'hours',
  d: 'days',
};

const DELIMITERS: Readonly<Record<string, string>> = {
  ',': 'commas',
  ';': 'semicolons',
  '\t': 'tabs',
  tab: 'tabs',
  '|': 'upright bars',
  ' ': 'blanks',
  blanks: 'runs of blanks',
  fixed: 'fixed widths',
  none: 'nothing, one on each line',
};

/** A delimiter by its name in the plural. */
export const delimiterName = (delimiter: string): string =>
  DELIMITERS[delimiter] ?? `“${delimiter}”`;

/** A temperature scale by its name. */
export const unitName = (unit: string): string => UNITS[unit] ?? unit;

const REASONS: Readonly<Record<string, string>> = {
  given: 'as you said',
  declared: 'the file says so',
  'byte-order-mark': 'the file begins with a mark that says so',
  'zero-bytes': 'every other byte is zero',
  'valid-utf8': 'every byte fits',
  'mostly-utf8': 'nearly every byte fits; the rest are damaged',
  'not-utf8': 'the bytes do not fit the usual one',
  guessed: 'the likeliest by its letters',
  'only-one': 'it can be nothing else',
  'rows-agree': 'the rows then agree best with each other',
  'file-start': 'the file begins as such files do',
  'above-data': 'names stand above the first row',
  'listed-above': 'the names are listed above the rows',
  keys: 'by the keys of the records',
  'no-names': 'nothing above the rows looks like names',
  name: 'by its name',
  'name-and-order': 'by its name, and it comes first of those that suit',
  'order-only': 'several suit as well; this one comes first',
  behaviour: 'by how its values run',
  'most-rows': 'it has the most rows',
  'part-over-twelve': 'one of the two numbers goes beyond 12',
  'steady-steps': 'the other way round the clock would leap',
  'year-first': 'the year comes first',
  'named-month': 'months are written as words',
  'usual-for-mark': 'that is usual where dates are written with this mark',
  'usual-for-clock': 'that is usual with this clock and these degrees',
  'nothing-decides': 'nothing in the file decides, so this is an assumption',
  'single-day': 'nothing decides, but the whole log lies within one day either way',
  header: 'the column’s name says so',
  preamble: 'the lines above the table say so',
  'in-cell': 'it stands beside the number',
  'own-column': 'a column of its own says so',
  plausible: 'only so do the values run as a kiln can',
  'same-as-main': 'as for the kiln’s temperature',
  'within-range': 'values of this size can be nothing else',
  'known-words': 'loggers write such words for a missing reading',
  'impossible-values': 'the kiln cannot have been there, and the number repeats exactly',
  hottest: 'it is the hottest of those that were recorded from their beginning',
  counted: 'counted while reading',
};

const WARNINGS: Readonly<Record<string, string>> = {
  'damaged-characters': 'Some characters in the file are damaged.',
  'nul-bytes': 'The file holds empty bytes, as after a power cut while it was written.',
  'half-written-end': 'The last line was cut off while it was written.',
  'many-rows-rejected': 'More than a tenth of the rows could not be used; please look at them.',
  'main-stops-early': 'The kiln’s thermocouple stops giving readings while other columns go on.',
  'several-temperatures':
    'Several columns could be the kiln’s temperature; please check which was taken.',
  'temperature-guessed': 'The temperature column was chosen by its values alone; please check it.',
  'setpoint-by-behaviour': 'A column was taken for the setpoint by its course alone.',
  'unit-assumed':
    'The temperature scale stands nowhere in the file; it was inferred from the values.',
  'unit-doubtful': 'The temperature scale given does not suit values such as a kiln makes.',
  'day-order-assumed': 'Day and month could be the other way round; please check the dates.',
  'time-unit-assumed': 'The unit of the times stands nowhere in the file; it was inferred.',
  'interval-assumed': 'The rows carry no time; an even interval was laid between them.',
  'no-date': 'The log has a clock but no date.',
  'other-tables': 'The file holds other tables that were not read.',
  'other-series': 'The file holds other channels that were not read.',
  'output-not-percent': 'The output is not in percent of full power and was left aside.',
  'readings-at-floor': 'Many readings lie at one lowest level, as of a sensor below its range.',
  'cold-junction-assumed':
    'Nothing says how warm the couple’s cold junction was; room temperature was assumed, and every reading is off by as much as that is.',
  'type-b-when-cool':
    'A couple of type B gives almost no voltage while the kiln is cool; the first readings are rough.',
  'impossible-numbers': 'Numbers that cannot be readings were taken as missing.',
  'several-firings':
    'The log holds several firings; please check that the one analysed is the one you mean.',
};

const ASSUMPTIONS: Readonly<Record<string, string>> = {
  'day-first': 'The first number of a date is taken as the day.',
  'month-first': 'The first number of a date is taken as the month.',
  'year-first': 'The first number of a date is taken as the year.',
  'day-after-midnight': 'Where the clock falls back to the early hours, the next day has begun.',
  'twelve-hour-clock': 'Where the clock falls back without a mark, it was the afternoon.',
  'no-year': 'The dates have no year; the days are counted on.',
  'minutes-and-seconds': 'The times are taken as minutes and seconds.',
  seconds: 'Bare numbers of time are taken as seconds.',
  minutes: 'Bare numbers of time are taken as minutes.',
  hours: 'Bare numbers of time are taken as hours.',
  milliseconds: 'Bare numbers of time are taken as milliseconds.',
  days: 'Bare numbers of time are taken as days.',
  interval: 'Every row is taken to come one interval after the one before.',
  'time-of-section': 'Rows take their time from the head of their section.',
};

const REJECTIONS: Readonly<Record<string, string>> = {
  'no-reading': 'no reading',
  'no-time': 'a temperature without a time',
  'unreadable-time': 'the time cannot be read',
  'unreadable-temperature': 'the temperature cannot be read',
  event: 'a remark, not a reading',
  'too-few-cells': 'cells are missing',
  'too-many-cells': 'more cells than columns',
  'half-written': 'cut off while it was written',
  'damaged-record': 'damaged',
  'line-too-long': 'longer than any row of a log',
};

/** A decision as a clause: `fields are parted by semicolons`; temperatures in the reader's unit. */
export const decisionClause = (what: string, choice: string, unit: TemperatureUnit = 'C'): string =>
  DECISIONS[what]?.(choice, unit) ?? `${idAsWords(what)}: “${choice}”`;

/** Why a decision was taken, as a clause. */
export const decisionReason = (why: string): string => REASONS[why] ?? idAsWords(why);

/** A warning of the reader as a sentence. */
export const warningSentence = (id: string): string =>
  WARNINGS[id] ?? `Please note: ${idAsWords(id)}.`;

/** An assumption about time as a sentence. */
export const timeAssumption = (id: string): string =>
  ASSUMPTIONS[id] ?? `Taken for granted: ${idAsWords(id)}.`;

/** Why a row was rejected, as a clause. */
export const rejectionReason = (reason: string): string => REJECTIONS[reason] ?? idAsWords(reason);

/** Ids, by what they say, that have no words of their own: for a test that lists them. */
export const idsWithoutWords = (ids: {
  readonly decisions?: readonly string[];
  readonly reasons?: readonly string[];
  readonly warnings?: readonly string[];
  readonly assumptions?: readonly string[];
  readonly rejections?: readonly string[];
}): string[] => {
  const missing = (records: object, names: readonly string[] = []) =>
    names.filter((name) => !(name in records));
  return [
    ...missing(DECISIONS, ids.decisions),
    ...missing(REASONS, ids.reasons),
    ...missing(WARNINGS, ids.warnings),
    ...missing(ASSUMPTIONS, ids.assumptions),
    ...missing(REJECTIONS, ids.rejections),
  ];
};
