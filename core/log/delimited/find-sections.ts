import type { Account } from '../account.ts';
import type { DatedPlan } from '../columns/decide-time.ts';
import { decideOrder } from '../columns/decide-time.ts';
import type { ReadingDecisions } from '../../model/options.ts';
import { Refusal } from '../../model/refusal.ts';
import { daysOfDate } from '../time/date-order.ts';
import { describeStamp } from '../time/describe-stamp.ts';
import { scanStamp, type Stamp } from '../time/stamp.ts';
import { joinedStamp } from '../time/time-reader.ts';
import type { Layout } from './layout.ts';
import type { LineSample } from './sample-lines.ts';
import { sectionKey, sectionValue } from './section-clock.ts';
import { splitLine } from './split.ts';

/** Sections with more rows than this have a time column of their own worth reading (chosen). */
const FEW_ROWS = 3;

/** The heads' stamps for one column, in file order. */
const stampsOf = (layout: Layout, lines: LineSample, column: number): Stamp[] => {
  const stamps: Stamp[] = [];
  let date = '';
  for (const { text } of lines.head) {
    const { cells } = splitLine(text, layout.survey.dialect);
    const key = sectionKey(cells);
    const value = key === null ? '' : sectionValue(cells, column);
    if (key === 'date') date = value;
    if (key !== 'time') continue;
    const stamp = scanStamp(joinedStamp(date, value));
    if (stamp !== null && stamp.date.length > 0) stamps.push(stamp);
  }
  return stamps;
};

/**
 * Whether a file is made of many small sections, each with its own head of date and time over the
 * same names, and if so how to plan with those times. Null otherwise.
 */
export const findSections = (
  layout: Layout,
  lines: LineSample,
  decisions: ReadingDecisions,
  account: Account,
): ((temperature: number) => DatedPlan) | null => {
  const [names] = layout.header;
  if (names === undefined) return null;
  const heads = lines.head.filter(({ text }) => text === names).length;
  const rows = layout.survey.rows.filter((row) => row < lines.head.length).length;
  const isSplit = heads >= 2 && rows <= FEW_ROWS * heads;
  if (!isSplit || stampsOf(layout, lines, 1).length < heads) return null;
  return (temperature) => {
    const stamps = stampsOf(layout, lines, temperature);
    const context = { isFahrenheit: false, isContinental: false };
    const order = decideOrder(stamps, layout.sample, [], context, decisions, account);
    const first = stamps.find(({ date }) => !Number.isNaN(daysOfDate(date, order)));
    if (first === undefined) {
      throw new Refusal('no-time', 'the dates in the heads of the sections cannot be read');
    }
    account.decide('time-column', 'section heads', 'behaviour', 0.9);
    account.decide('time-pattern', describeStamp(first, order), 'rows-agree', 0.95);
    account.assume('time-of-section');
    return {
      time: { form: 'section', column: temperature, order },
      originDays: daysOfDate(first.date, order),
    };
  };
};
