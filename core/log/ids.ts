/**
 * Every id that the account of reading can hold, each with what it means. Sentences for people are
 * made from these elsewhere; nothing here is shown as it stands.
 */

/** What was decided: `decisions[].what`. */
export const DECISIONS = {
  encoding: 'which characters the bytes stand for',
  format: 'the shape of the file: delimited, json, json-lines or typed-in',
  delimiter:
    'what stands between the cells of a row; `blanks` is runs of blanks, `fixed` cells of fixed ' +
    'width, `none` one cell a line',
  'decimal-mark': 'the sign before the decimals',
  'header-line': 'the line of the column names; `none` where the file has none',
  'units-row': 'the line under the names that holds units',
  table: 'which of several tables in the file was read',
  series: 'which channel of a long table was read',
  'time-column': 'the column or columns that hold the time',
  'time-pattern': 'how the times are written',
  'time-unit': 'the unit of times that are bare numbers',
  'day-order': 'whether the day or the month is written first',
  'first-date': 'the day on which a log without dates begins',
  'time-zone': 'the zone of stamps without an offset',
  firing: 'which of several firings in the log is analysed, by its number in order of time',
  interval: 'the seconds between rows that carry no time of their own',
  'temperature-column': 'the column of the main thermocouple',
  unit: 'the unit of the main temperature',
  'setpoint-column': 'the column of the temperature that the controller asked for, or `none`',
  'output-column': "the column of the controller's output, or `none`",
  'zone-columns': 'other measured temperatures, kept as zones; `none` where the person says so',
  'couple-type': 'the type of the couple that gave millivolts',
  'cold-junction-column': 'the column of the temperature at which the cold end of the couple stood',
  'cold-junction':
    "that temperature in °C, or `compensated` where the logger's voltages count from 0 °C",
  'no-reading-marks': 'what stands in cells that hold no reading, beside empty cells',
  'lines-aside': 'lines that are no rows: blank, comment, repeated header, footer, other tables',
} as const;
export type DecisionId = keyof typeof DECISIONS;

/** Why it was decided so: `decisions[].why`. */
export const REASONS = {
  given: 'the person said so',
  declared: 'the file says so',
  'byte-order-mark': 'the file begins with a byte order mark',
  'zero-bytes': 'every other byte of the text is zero',
  'valid-utf8': 'all bytes are well-formed UTF-8',
  'mostly-utf8': 'nearly all bytes above ASCII are well-formed UTF-8; the rest are damaged',
  'not-utf8': 'the bytes above ASCII are not UTF-8',
  guessed: 'the likeliest by the frequency of its characters',
  'only-one': 'there is only one that it can be',
  'rows-agree': 'this way the rows agree best with each other',
  'file-start': 'the file begins as this format does',
  'above-data': 'names stand above the first row of data',
  'listed-above': 'the names are listed one below the other above the data',
  keys: 'the keys of the records',
  'no-names': 'nothing above the data looks like names',
  name: 'by its name',
  'name-and-order': 'by its name, and it comes before others that suit as well',
  'order-only': 'several suit equally; this one comes first',
  behaviour: 'by how its values run',
  'most-rows': 'it has the most rows',
  'part-over-twelve': 'one of the two numbers goes beyond 12',
  'steady-steps': 'the other order would make the clock leap',
  'usual-for-mark': 'usual where dates are written with this mark',
  'usual-for-clock': 'usual where the clock has twelve hours or degrees are Fahrenheit',
  'nothing-decides': 'nothing in the file decides; this is an assumption',
  'single-day': 'nothing decides, but the whole log lies within one day either way',
  header: 'the header says so',
  preamble: 'the lines above the table say so',
  'in-cell': 'it stands beside the number',
  'own-column': 'a column of its own says so',
  plausible: 'only so do the values run as a kiln can',
  'within-range': 'values of this size can be nothing else',
  'known-words': 'words that loggers write for a missing reading',
  'impossible-values': 'numbers that the kiln cannot have reached, repeated exactly',
  hottest: 'the hottest of those whose beginning was recorded',
  counted: 'counted while reading',
} as const;
export type ReasonId = keyof typeof REASONS;

/** Why a row was rejected: `rejected[].reason`. */
export const REJECTIONS = {
  'no-reading': 'the main thermocouple gave nothing: an empty cell, a mark or an impossible number',
  'no-time': 'a temperature without a time',
  'unreadable-time': 'the time cannot be read',
  'unreadable-temperature': 'the temperature cell holds something that is no number and no mark',
  event: 'a remark of the logger or the person among the readings',
  'too-few-cells': 'cells are missing, so that nothing says which value belongs where',
  'too-many-cells': 'more cells than columns, so that nothing says which value belongs where',
  'half-written': 'the last line was cut off while it was written',
  'damaged-record': 'a record of a JSON file that breaks off or is malformed',
  'line-too-long': 'longer than any row of a log',
} as const;
export type RejectionId = keyof typeof REJECTIONS;

/** What the person should look at: `warnings[]`. */
export const WARNINGS = {
  'damaged-characters': 'some bytes are not valid in the encoding of the rest',
  'nul-bytes': 'the file holds NUL bytes, as after a power cut while writing',
  'half-written-end': 'the last line or record was cut off',
  'many-rows-rejected': 'more than a tenth of the rows could not be used',
  'main-stops-early': 'the main thermocouple stops giving readings while others go on',
  'several-temperatures': 'several columns could be the main temperature',
  'temperature-guessed': 'the temperature column was chosen by its values alone',
  'setpoint-by-behaviour': 'a column was taken for the setpoint by its course alone',
  'unit-assumed': 'the unit stands nowhere and was inferred from the values',
  'unit-doubtful': 'the unit given does not suit values such as a kiln makes',
  'day-order-assumed': 'day and month could be the other way round',
  'time-unit-assumed': 'the unit of the times stands nowhere and was inferred',
  'interval-assumed': 'rows carry no time; an interval was laid between them',
  'no-date': 'the log has a clock but no date',
  'other-tables': 'the file holds other tables that were not read',
  'other-series': 'the file holds other channels',
  'output-not-percent': 'the output is not in percent of full power and was left aside',
  'readings-at-floor': 'many readings lie at one lowest level, as of a sensor below its range',
  'cold-junction-assumed':
    'nothing says where the cold junction stood; room temperature was assumed',
  'type-b-when-cool': 'type B gives almost no voltage below about 100 °C; readings there are rough',
  'impossible-numbers': 'numbers that cannot be readings were taken as missing',
  'several-firings': 'the log holds several firings, and nobody said which is meant',
} as const;
export type WarningId = keyof typeof WARNINGS;

/** What was assumed of the times: `time.assumptions[]`. */
export const ASSUMPTIONS = {
  'day-first': 'the first number is the day',
  'month-first': 'the first number is the month',
  'year-first': 'the first number is the year',
  'day-after-midnight': 'where the clock falls back to early hours, the next day has begun',
  'twelve-hour-clock': 'where the clock falls back without a mark, it was the afternoon',
  'no-year': 'the dates have no year; the days are counted on',
  'minutes-and-seconds': 'the times are minutes and seconds',
  seconds: 'the bare numbers are seconds',
  milliseconds: 'the bare numbers are milliseconds',
  minutes: 'the bare numbers are minutes',
  hours: 'the bare numbers are hours',
  days: 'the bare numbers are days',
  interval: 'every row comes one interval after the one before',
  'time-of-section': 'rows take the time from the head of their section',
} as const;
export type AssumptionId = keyof typeof ASSUMPTIONS;
