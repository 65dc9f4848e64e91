import type { Cone } from '../../core/model/cone.ts';
import type { Schedule, Segment } from '../../core/model/schedule.ts';
import { MOST_SEGMENTS } from '../../core/schedule/bounds.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { typedEntry } from './entry.ts';
import {
  blankLeg,
  legOfSegment,
  segmentOfLeg,
  type LegDraft,
  type LegFaults,
  type LegField,
  type Way,
} from './leg-draft.ts';

/** A schedule while it is typed. */
export interface ScheduleDraft {
  readonly name: string;
  /** What it is called while `name` is blank. */
  readonly unnamed: string;
  readonly cone: Cone | null;
  readonly legs: readonly LegDraft[];
  /** The id that the next new leg gets. */
  readonly nextId: number;
}

export type DraftChange =
  /** Begins with one empty leg. */
  | {
      readonly change: 'begin';
      readonly unit: TemperatureUnit;
      /** The name it has until it is given one. */
      readonly unnamed: string;
    }
  /** Takes a whole schedule, to be edited. */
  | { readonly change: 'take'; readonly schedule: Schedule }
  | { readonly change: 'name'; readonly name: string }
  | { readonly change: 'cone'; readonly cone: Cone | null }
  /** A new empty leg before another, or at the end. */
  | { readonly change: 'add'; readonly before: number | null; readonly unit: TemperatureUnit }
  | { readonly change: 'remove'; readonly id: number }
  | { readonly change: 'way'; readonly id: number; readonly way: Way }
  | {
      readonly change: 'enter';
      readonly id: number;
      readonly field: LegField;
      readonly text: string;
      readonly unit: TemperatureUnit;
    };

export const draftOf = (schedule: Schedule): ScheduleDraft => ({
  name: schedule.name,
  unnamed: schedule.name,
  cone: schedule.cone,
  legs: schedule.segments.map(legOfSegment),
  nextId: schedule.segments.length,
});

export const newDraft = (unit: TemperatureUnit, unnamed: string): ScheduleDraft => ({
  name: '',
  unnamed,
  cone: null,
  legs: [blankLeg(0, unit)],
  nextId: 1,
});

const withLeg = (
  draft: ScheduleDraft,
  id: number,
  change: (leg: LegDraft) => LegDraft,
): ScheduleDraft => ({
  ...draft,
  legs: draft.legs.map((leg) => (leg.id === id ? change(leg) : leg)),
});

const entered = (leg: LegDraft, field: LegField, text: string, unit: TemperatureUnit): LegDraft =>
  field === 'rate' || field === 'target'
    ? { ...leg, [field]: typedEntry(text, unit) }
    : { ...leg, [field]: text };

const withAdded = (
  draft: ScheduleDraft,
  before: number | null,
  unit: TemperatureUnit,
): ScheduleDraft => {
  if (draft.legs.length >= MOST_SEGMENTS) return draft;
  const found = draft.legs.findIndex(({ id }) => id === before);
  const at = found < 0 ? draft.legs.length : found;
  return {
    ...draft,
    legs: draft.legs.toSpliced(at, 0, blankLeg(draft.nextId, unit)),
    nextId: draft.nextId + 1,
  };
};

/** The draft after one change. Pure; a change of a leg that is no longer there changes nothing. */
export const changedDraft = (draft: ScheduleDraft, by: DraftChange): ScheduleDraft => {
  switch (by.change) {
    case 'begin':
      return newDraft(by.unit, by.unnamed);
    case 'take':
      return draftOf(by.schedule);
    case 'name':
      return { ...draft, name: by.name };
    case 'cone':
      return { ...draft, cone: by.cone };
    case 'add':
      return withAdded(draft, by.before, by.unit);
    case 'remove':
      return { ...draft, legs: draft.legs.filter(({ id }) => id !== by.id) };
    case 'way':
      return withLeg(draft, by.id, (leg) => ({ ...leg, way: by.way }));
    case 'enter':
      return withLeg(draft, by.id, (leg) => entered(leg, by.field, by.text, by.unit));
  }
};

/** What the entries come to. */
export interface DraftReading {
  /** The whole schedule; null while any leg is unfinished or wrong. */
  readonly schedule: Schedule | null;
  /** The legs up to the first that is unfinished or wrong: what can be drawn. */
  readonly drawable: readonly Segment[];
  /** Faults by leg id; a sound leg has none. */
  readonly faults: ReadonlyMap<number, LegFaults>;
}

export const readDraft = (draft: ScheduleDraft): DraftReading => {
  const faults = new Map<number, LegFaults>();
  const drawable: Segment[] = [];
  for (const leg of draft.legs) {
    const read = segmentOfLeg(leg);
    if ('faults' in read) faults.set(leg.id, read.faults);
    else if (faults.size === 0) drawable.push(read.segment);
  }
  const isWhole = faults.size === 0 && drawable.length > 0;
  const name = draft.name.trim() || draft.unnamed;
  return {
    schedule: isWhole ? { name, cone: draft.cone, segments: drawable } : null,
    drawable,
    faults,
  };
};

/** Whether two schedules say the same. */
export const isSameSchedule = (a: Schedule | undefined, b: Schedule | undefined): boolean =>
  a === b || JSON.stringify(a) === JSON.stringify(b);
