import type { Account } from '../account.ts';
import type { TableRead } from '../assemble/table-read.ts';
import type { Text } from '../bytes/text.ts';
import { headerUnits } from '../columns/header-units.ts';
import { planColumns } from '../columns/plan-columns.ts';
import { RawColumns } from '../columns/raw-columns.ts';
import { RowReader } from '../columns/row-reader.ts';
import { makeSample } from '../columns/sample.ts';
import type { ReadingDecisions } from '../../model/options.ts';
import { EMPTY_PREAMBLE } from '../text/preamble.ts';
import { typedEntries, type TypedEntry } from './entries.ts';

const NAMES = ['time', 'temperature'];
/** Whoever names what only a table has, has a table before them. */
const OF_TABLES = [
  ...(['delimiter', 'headerLine', 'timeColumns', 'temperatureColumn'] as const),
  ...(['intervalSeconds', 'timeUnit', 'timeFrom'] as const),
];

/** A longer text is no one's typing. */
const MOST_BYTES = 8192;

/** The unit that the person says, else the only one that stands beside any of the temperatures. */
const unitOfBare = (
  entries: readonly TypedEntry[],
  { unit }: ReadingDecisions,
): string | undefined => {
  if (unit !== undefined) return unit === 'C' || unit === 'F' ? unit : undefined;
  const units = new Set(
    entries.flatMap(({ temperature }) => (temperature.includes('°') ? temperature.slice(-1) : [])),
  );
  return units.size === 1 ? [...units][0] : undefined;
};

/** A unit that somebody wrote once was meant for all: `0:00 20 °C / 3:00 600 / 9:30 1222`. */
const withUnitWrittenOnce = (
  entries: readonly TypedEntry[],
  decisions: ReadingDecisions,
): TypedEntry[] => {
  const unit = unitOfBare(entries, decisions);
  const isWritten = entries.some(({ temperature }) => temperature.includes('°'));
  return entries.map((entry) =>
    unit === undefined || !isWritten || entry.bare === null
      ? entry
      : { ...entry, temperature: `${entry.temperature} °${unit}` },
  );
};

const readEntries = (entries: readonly TypedEntry[], reader: RowReader): void => {
  entries.forEach(({ time, temperature }, place) => {
    if (time === '') {
      reader.reject(place, 'no-time');
      return;
    }
    const cells = [time, temperature];
    const seconds = reader.timeOf(cells);
    if (Number.isNaN(seconds)) reader.reject(place, 'unreadable-time');
    else if (temperature === '') reader.reject(place, 'event', seconds);
    else reader.add(cells, place, seconds);
  });
};

/**
 * Reads times and temperatures that were typed or pasted by hand: `0:00 20 / 3h 600 / 9:30pm 1222`.
 * Null if the text is nothing of the kind.
 *
 * @throws Refusal naming what is missing
 */
export const readTyped = (
  text: Text,
  fileName: string,
  byteLength: number,
  decisions: ReadingDecisions,
  account: Account,
): TableRead | null => {
  if (text.bytes.length > MOST_BYTES) return null;
  if (OF_TABLES.some((name) => decisions[name] !== undefined)) return null;
  const found = typedEntries(text.decode(0, text.bytes.length));
  if (found === null) return null;
  const entries = withUnitWrittenOnce(found, decisions);
  account.decide('format', 'typed-in', 'rows-agree', 0.9);
  account.decide('header-line', 'none', 'no-names', 0.9);
  const rows = entries.map(({ time, temperature }) => [time, temperature]);
  const sample = makeSample(
    {
      names: NAMES,
      line: entries[0]!.line,
      isNamed: true,
      aliases: [[], []],
      units: headerUnits(NAMES, null),
      rows,
      decimalMark: '.',
      preamble: EMPTY_PREAMBLE,
    },
    decisions.noReadingMarks,
  );
  const plan = planColumns(sample, decisions, { isContinental: false, sectionTime: null }, account);
  const columns = new RawColumns(plan.wanted.length, rows.length, false);
  const reader = new RowReader(plan, columns);
  readEntries(entries, reader);
  return {
    columns,
    plan,
    sample,
    series: reader.series,
    marks: reader.marks,
    lineOf: (place) => entries[place]!.line,
    linesOf: (places) => places.map((place) => entries[place]!.text),
    decisions,
    account,
    source: {
      fileName,
      byteLength,
      format: 'typed-in',
      encoding: text.encoding,
      delimiter: null,
      decimalMark: '.',
      headerLine: null,
    },
  };
};
