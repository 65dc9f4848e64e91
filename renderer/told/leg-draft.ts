import { Refusal } from '../../core/model/refusal.ts';
import type { Segment } from '../../core/model/schedule.ts';
import {
  FASTEST_RATE_C_PER_HOUR,
  HOTTEST_TARGET_C,
  LONGEST_MINUTES,
} from '../../core/schedule/bounds.ts';
import { segmentFrom, type SegmentEntry } from '../../core/schedule/segment-entry.ts';
import { celsius, celsiusPerHour, type TemperatureUnit } from '../../core/units.ts';
import { speechIn } from '../../core/wording/speech.ts';
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

type Judged = { readonly segment: Segment } | { readonly wrong: string } | 'missing';

/** A segment with nothing wrong in it: each field is judged on its own in the midst of it. */
const SOUND: SegmentEntry = {
  ratePerHour: 'full',
  minutes: null,
  target: 100,
  holdMinutes: 0,
  line: null,
};

/** What core holds against a field, put for someone who types it; in the unit it is typed in. */
const BOUNDS: Readonly<Record<LegField, (unit: TemperatureUnit) => string>> = {
  rate: (unit) =>
    `A rate is above zero and at most ${speechIn(unit).rate(celsiusPerHour(FASTEST_RATE_C_PER_HOUR))}, also where it cools; for more there is full power.`,
  minutes: () => `A time is above zero and at most ${LONGEST_MINUTES} min.`,
  target: (unit) => {
    const { temperature } = speechIn(unit);
    const hottest = temperature(celsius(HOTTEST_TARGET_C));
    return `A target lies above ${temperature(celsius(0))} and at most at ${hottest}.`;
  },
  hold: () => `A hold lasts at most ${LONGEST_MINUTES} min.`,
};

/** The segment that core makes of one field, or what is wrong with it. */
const judge = (field: LegField, entry: Partial<SegmentEntry>, unit: TemperatureUnit): Judged => {
  try {
    return { segment: segmentFrom({ ...SOUND, ...entry }, unit) };
  } catch (error) {
    if (error instanceof Refusal) return { wrong: BOUNDS[field](unit) };
    throw error;
  }
};

const judgeEntry = (
  field: LegField,
  entry: Entry,
  as: (value: number) => Partial<SegmentEntry>,
): Judged => {
  const number = entryNumber(entry);
  if (number === null) return 'missing';
  return 'wrong' in number ? number : judge(field, as(number.value), number.unit);
};

const judgeMinutes = (
  field: LegField,
  text: string,
  as: (value: number) => Partial<SegmentEntry>,
): Judged => {
  const number = readNumber(text);
  if (number === null) return 'missing';
  return 'wrong' in number ? number : judge(field, as(number.value), 'C');
};

const judgeWay = ({ way, rate, minutes }: LegDraft): Judged => {
  if (way === 'full') return { segment: segmentFrom(SOUND, 'C') };
  if (way === 'rate') return judgeEntry('rate', rate, (ratePerHour) => ({ ratePerHour }));
  return judgeMinutes('minutes', minutes, (value) => ({ minutes: value, ratePerHour: null }));
};

/** A hold left blank is no hold. */
const judgeHold = ({ hold }: LegDraft): Judged =>
  judgeMinutes('hold', hold.trim() === '' ? '0' : hold, (holdMinutes) => ({ holdMinutes }));

const isSound = (judged: Judged): judged is { readonly segment: Segment } =>
  typeof judged === 'object' && 'segment' in judged;

/** The segment that a leg's entries come to, or what is amiss with them. */
export const segmentOfLeg = (leg: LegDraft): { segment: Segment } | { faults: LegFaults } => {
  const way = judgeWay(leg);
  const target = judgeEntry('target', leg.target, (value) => ({ target: value }));
  const hold = judgeHold(leg);
  if (isSound(way) && isSound(target) && isSound(hold)) {
    const { rateCPerHour, minutes } = way.segment;
    const { targetC } = target.segment;
    const { holdMinutes } = hold.segment;
    return { segment: { rateCPerHour, minutes, targetC, holdMinutes } };
  }
  const judged: [LegField, Judged][] = [
    [leg.way === 'minutes' ? 'minutes' : 'rate', way],
    ['target', target],
    ['hold', hold],
  ];
  return {
    faults: {
      wrong: Object.fromEntries(
        judged.flatMap(([field, one]) =>
          one !== 'missing' && 'wrong' in one ? [[field, one.wrong]] : [],
        ),
      ),
      missing: judged.flatMap(([field, one]) => (one === 'missing' ? [field] : [])),
    },
  };
};
