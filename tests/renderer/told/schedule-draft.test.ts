import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Schedule } from '../../../core/model/schedule.ts';
import { celsius, celsiusPerHour, type TemperatureUnit } from '../../../core/units.ts';
import { numberText } from '../../../renderer/controls/number-text.ts';
import {
  changedDraft,
  draftOf,
  isSameSchedule,
  newDraft,
  readDraft,
  type DraftChange,
  type ScheduleDraft,
} from '../../../renderer/told/schedule-draft.ts';
import type { LegField, Way } from '../../../renderer/told/leg-draft.ts';

const after = (draft: ScheduleDraft, ...changes: DraftChange[]) =>
  changes.reduce(changedDraft, draft);

const enter = (
  id: number,
  field: LegField,
  text: string,
  unit: TemperatureUnit = 'C',
): DraftChange => ({ change: 'enter', id, field, text, unit });

const glaze: Schedule = {
  name: 'Glaze',
  cone: '6',
  segments: [
    { rateCPerHour: celsiusPerHour(80), minutes: null, targetC: celsius(120), holdMinutes: 20 },
    { rateCPerHour: 'full', minutes: null, targetC: celsius(1000), holdMinutes: 0 },
    { rateCPerHour: null, minutes: 200, targetC: celsius(1218), holdMinutes: 5 },
  ],
};

describe('a schedule being typed', () => {
  it('becomes a schedule once its legs are whole', () => {
    const begun = after(newDraft('C', 'Unnamed'), enter(0, 'rate', '100'));
    expect(readDraft(begun).schedule).toBeNull();
    const whole = after(
      begun,
      enter(0, 'target', '1000'),
      { change: 'add', before: null, unit: 'C' },
      { change: 'way', id: 1, way: 'full' },
      enter(1, 'target', '1200'),
      enter(1, 'hold', '10'),
      { change: 'name', name: ' Trial ' },
      { change: 'cone', cone: '5' },
    );
    expect(readDraft(whole).schedule).toEqual({
      name: 'Trial',
      cone: '5',
      segments: [
        { rateCPerHour: 100, minutes: null, targetC: 1000, holdMinutes: 0 },
        { rateCPerHour: 'full', minutes: null, targetC: 1200, holdMinutes: 10 },
      ],
    });
  });

  it('draws the legs up to the first that is not whole', () => {
    const broken = after(draftOf(glaze), enter(1, 'target', 'x'));
    const { schedule, drawable, faults } = readDraft(broken);
    expect(schedule).toBeNull();
    expect(drawable).toEqual(glaze.segments.slice(0, 1));
    expect([...faults.keys()]).toEqual([1]);
  });

  it('puts a leg in before another, and takes one out, leaving the rest as they are', () => {
    const { legs } = after(
      draftOf(glaze),
      { change: 'add', before: 1, unit: 'C' },
      { change: 'remove', id: 0 },
    );
    expect(legs.map(({ id }) => id)).toEqual([3, 1, 2]);
  });

  it('has no schedule without legs, and a name of its own until it is given one', () => {
    const bare = after(newDraft('C', 'Unnamed'), { change: 'remove', id: 0 });
    expect(readDraft(bare).schedule).toBeNull();
    const named = after(
      newDraft('C', 'Mine 2'),
      { change: 'way', id: 0, way: 'full' },
      enter(0, 'target', '900'),
    );
    expect(readDraft(named).schedule?.name).toBe('Mine 2');
    const unnamed = after(draftOf(glaze), { change: 'name', name: ' ' });
    expect(readDraft(unnamed).schedule?.name).toBe('Glaze');
  });

  it('changes nothing for a leg that is gone', () => {
    const draft = draftOf(glaze);
    expect(after(draft, enter(9, 'hold', '5'), { change: 'remove', id: 9 }).legs).toEqual(
      draft.legs,
    );
  });

  it('gives back a schedule that was taken, exactly', () => {
    const taken = after(newDraft('F', 'Unnamed'), { change: 'take', schedule: glaze });
    expect(isSameSchedule(readDraft(taken).schedule ?? undefined, glaze)).toBe(true);
  });
});

/** A leg as a person has it in mind, in whole degrees Fahrenheit. */
const leg = fc.record({
  way: fc.constantFrom<Way>('rate', 'full', 'minutes'),
  rateF: fc.integer({ min: 1, max: 5400 }),
  minutes: fc.integer({ min: 1, max: 2000 }),
  targetF: fc.integer({ min: 33, max: 2732 }),
  hold: fc.integer({ min: 0, max: 600 }),
});

type MeantLeg = typeof leg extends fc.Arbitrary<infer Leg> ? Leg : never;

/** The keystrokes for a leg in one unit; the conversion is written out here, apart from the app's. */
const keystrokes = (meant: MeantLeg, id: number, unit: TemperatureUnit): DraftChange[] => {
  const rate = unit === 'F' ? meant.rateF : (meant.rateF * 5) / 9;
  const target = unit === 'F' ? meant.targetF : ((meant.targetF - 32) * 5) / 9;
  return [
    { change: 'way', id, way: meant.way },
    enter(id, 'rate', numberText(rate, 9), unit),
    enter(id, 'minutes', String(meant.minutes), unit),
    enter(id, 'target', numberText(target, 9), unit),
    enter(id, 'hold', String(meant.hold), unit),
  ];
};

const typedIn = (legs: readonly MeantLeg[], unitOf: (index: number) => TemperatureUnit) =>
  readDraft(
    legs.reduce<ScheduleDraft>(
      (draft, meant, id) =>
        after(
          id === 0 ? draft : after(draft, { change: 'add', before: null, unit: unitOf(id) }),
          ...keystrokes(meant, id, unitOf(id)),
        ),
      newDraft(unitOf(0), 'Unnamed'),
    ),
  ).schedule;

describe('typing in °F and in °C', () => {
  it('gives the same schedule, also where the unit is changed half-way', () => {
    fc.assert(
      fc.property(fc.array(leg, { minLength: 1, maxLength: 6 }), (legs) => {
        const inF = typedIn(legs, () => 'F');
        const inC = typedIn(legs, () => 'C');
        const mixed = typedIn(legs, (index) => (index % 2 === 0 ? 'C' : 'F'));
        expect(inF?.segments).toHaveLength(legs.length);
        for (const other of [inC, mixed]) {
          other?.segments.forEach((segment, index) => {
            const twin = inF!.segments[index]!;
            expect(segment.targetC).toBeCloseTo(twin.targetC, 6);
            expect(segment.holdMinutes).toBe(twin.holdMinutes);
            expect(segment.minutes).toBe(twin.minutes);
            if (typeof segment.rateCPerHour === 'number') {
              expect(segment.rateCPerHour).toBeCloseTo(twin.rateCPerHour as number, 6);
            } else expect(segment.rateCPerHour).toBe(twin.rateCPerHour);
          });
          expect(other?.segments).toHaveLength(legs.length);
        }
      }),
    );
  });
});
