import type { Account } from '../account.ts';
import { decideOrder } from '../columns/decide-time.ts';
import type { TableSample } from '../columns/sample.ts';
import type { ReadingDecisions } from '../../model/options.ts';
import { fold } from '../text/fold.ts';
import { civilFromDays, daysFromCivil } from '../time/civil.ts';
import { daysOfDate } from '../time/date-order.ts';
import { scanStamp, type Stamp } from '../time/stamp.ts';

/** A day that the file or the person gives to a log whose rows have none. */
export interface FirstDay {
  /** Days from 1970-01-01. */
  readonly days: number;
  /** The time of day beside the date, where it is that of the log's beginning; else null. */
  readonly startClockSeconds: number | null;
}

const START_KEY = /start|begin|beginn|debut|inicio|inizio|anfang|aanvang|first/;
/** Dates of something else: the end, the printing, the calibration. */
const OTHER_KEY =
  /\bend|stop|finish|\bfin\b|einde|export|print|druck|creat|erstell|report|cali|kali|download|last/;
const DATE_IN_TEXT = /(?<!\d)\d{1,4}([./-])\d{1,2}\1\d{2,4}(?!\d)/;

interface Dated {
  readonly key: string;
  readonly stamp: Stamp;
}

/** Every date above the table, with what stands before it. */
const datesAbove = ({ preamble }: TableSample): Dated[] =>
  preamble.lines.flatMap((line) => {
    const entry = preamble.entries.find(
      ({ key, value }) => line.includes(key) && line.includes(value),
    );
    const inEntry = entry === undefined ? null : scanStamp(entry.value);
    if (entry !== undefined && inEntry?.date.length === 3) {
      return [{ key: fold(entry.key), stamp: inEntry }];
    }
    const inText = scanStamp(DATE_IN_TEXT.exec(line)?.[0] ?? '');
    return inText?.date.length === 3 ? [{ key: fold(line), stamp: inText }] : [];
  });

const likeliest = (dates: readonly Dated[]): Dated | null => {
  const begins = dates.find(({ key }) => START_KEY.test(key));
  if (begins !== undefined) return begins;
  const others = dates.filter(({ key }) => !OTHER_KEY.test(key));
  const distinct = new Set(others.map(({ stamp }) => stamp.date.map(({ value }) => value).join()));
  return distinct.size === 1 ? others[0]! : null;
};

const isoDate = (days: number): string => {
  const { year, month, day } = civilFromDays(days);
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${year}-${two(month)}-${two(day)}`;
};

const isStart = ({ key, stamp }: Dated): boolean =>
  START_KEY.test(key) && stamp.clockSeconds !== null;

/**
 * The day of the log's beginning: the one that the person gives, or that stands above the table;
 * null without either. `needsClock` asks for a start with its time of day.
 */
export const firstDay = (
  sample: TableSample,
  decisions: ReadingDecisions,
  { isContinental, needsClock }: { isContinental: boolean; needsClock: boolean },
  account: Account,
): FirstDay | null => {
  if (decisions.firstDate !== undefined && !needsClock) {
    const [year, month, day] = decisions.firstDate.split('-').map(Number);
    account.decide('first-date', decisions.firstDate, 'given', 1);
    return { days: daysFromCivil(year!, month!, day!), startClockSeconds: null };
  }
  const found = likeliest(datesAbove(sample));
  if (found === null || (needsClock && !isStart(found))) return null;
  const context = { isContinental, isFahrenheit: false };
  const order = decideOrder([found.stamp], sample, [], context, decisions, account);
  const days = daysOfDate(found.stamp.date, order);
  if (Number.isNaN(days)) return null;
  account.decide('first-date', isoDate(days), 'preamble', 0.8);
  return { days, startClockSeconds: isStart(found) ? found.stamp.clockSeconds : null };
};
