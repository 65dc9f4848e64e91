import { Refusal } from '../../core/model/refusal.ts';
import type { Segment } from '../../core/model/schedule.ts';
import { segmentFrom, type SegmentEntry } from '../../core/schedule/segment-entry.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { sentence } from '../../core/wording/topic.ts';
import { readNumber } from '../controls/number-text.ts';
import { entryNumber, exactEntry, typedEntry, type Entry } from './entry.ts';

/** How a leg goes to its target. */
export type Way = 'rate' | 'full' | 'minutes';

/** One leg as it stands in the table of entries, whole or not. */
export interface LegDraft {
  /** Stays with the leg while others come and go. */
  readonly id: number;
  readonly way: Way;
  readonly rate: Entry;
  readonly minutes: string;
  readonly target: Entry;
  readonly hold: string;
}

export const LEG_FIELDS = ['rate', 'minutes', 'target', 'hold'] as const;
export type LegField = (typeof LEG_FIELDS)[number];

/** What is amiss in a leg's fields, a sentence each; `missing` fields are only not filled in yet. */
export interface LegFaults {
  readonly wrong: Readonly<Partial<Record<LegField, string>>>;
  readonly missing: readonly LegField[];
}

export const blankLeg = (id: number, unit: TemperatureUnit): LegDraft => ({
  id,
  way: 'rate',
  rate: typedEntry('', unit),
  minutes: '',
  target: typedEntry('', unit),
  hold: '',
});

/** A schedule's segment as a leg to be edited. */
export const legOfSegment = (segment: Segment, id: number): LegDraft => {
  const { rateCPerHour, minutes, targetC, holdMinutes } = segment;
  const way = rateCPerHour === 'full' ? 'full' : rateCPerHour === null ? 'minutes' : 'rate';
  return {
    id,
    way,
    rate: typeof rateCPerHour === 'number' ? exactEntry(rateCPerHour) : typedEntry('', 'C'),
    minutes: minutes === null ? '' : String(minutes),
    target: exactEntry(targetC),
    hold: holdMinutes === 0 ? '' : String(holdMinutes),
  };
};

type Judged<Value> = { readonly value: Value } | { readonly wrong: string } | 'missing';

/** A segment with nothing wrong in it: each field is judged on its own in the midst of it. */
const SOUND: SegmentEntry = {
  ratePerHour: 'full',
  minutes: null,
  target: 100,
  holdMinutes: 0,
  line: null,
};

/** The segment that core makes of one field, or what it has against it. */
const judge = (entry: Partial<SegmentEntry>, unit: TemperatureUnit): Judged<Segment> => {
  try {
    return { value: segmentFrom({ ...SOUND, ...entry }, unit) };
  } catch (error) {
    if (error instanceof Refusal) return { wrong: `${sentence(error.message)}.` };
    throw error;
  }
};

const judgeEntry = (
  entry: Entry,
  as: (value: number) => Partial<SegmentEntry>,
): Judged<Segment> => {
  const number = entryNumber(entry);
  if (number === null) return 'missing';
  return 'wrong' in number ? number : judge(as(number.value), number.unit);
};

const judgeMinutes = (
  text: string,
  as: (value: number) => Partial<SegmentEntry>,
): Judged<Segment> => {
  const number = readNumber(text);
  if (number === null) return 'missing';
  return 'wrong' in number ? number : judge(as(number.value), 'C');
};

const judgeWay = (leg: LegDraft): Judged<Segment> => {
  if (leg.way === 'full') return judge({}, 'C');
  if (leg.way === 'rate') return judgeEntry(leg.rate, (ratePerHour) => ({ ratePerHour }));
  return judgeMinutes(leg.minutes, (minutes) => ({ minutes, ratePerHour: null }));
};

/** A hold left blank is no hold. */
const judgeHold = (leg: LegDraft): Judged<Segment> => {
  const judged = judgeMinutes(leg.hold, (holdMinutes) => ({ holdMinutes }));
  return judged === 'missing' ? judge({ holdMinutes: 0 }, 'C') : judged;
};

/** The segment that a leg's entries come to, or what is amiss with them. */
export const segmentOfLeg = (leg: LegDraft): { segment: Segment } | { faults: LegFaults } => {
  const way = judgeWay(leg);
  const target = judgeEntry(leg.target, (value) => ({ target: value }));
  const hold = judgeHold(leg);
  if (typeof way === 'object' && typeof target === 'object' && typeof hold === 'object') {
    if ('value' in way && 'value' in target && 'value' in hold) {
      const { rateCPerHour, minutes } = way.value;
      const { targetC } = target.value;
      const { holdMinutes } = hold.value;
      return { segment: { rateCPerHour, minutes, targetC, holdMinutes } };
    }
  }
  const fields: [LegField, Judged<Segment>][] = [
    [leg.way === 'minutes' ? 'minutes' : 'rate', way],
    ['target', target],
    ['hold', hold],
  ];
  const wrong: Partial<Record<LegField, string>> = {};
  for (const [field, judged] of fields) {
    if (judged !== 'missing' && 'wrong' in judged) wrong[field] = judged.wrong;
  }
  const missing = fields.flatMap(([field, judged]) => (judged === 'missing' ? [field] : []));
  return { faults: { wrong, missing } };
};
