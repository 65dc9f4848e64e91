import { describe, expect, it } from 'vitest';
import type { Schedule } from '../../../core/model/schedule.ts';
import { celsius } from '../../../core/units.ts';
import { draftInHand } from '../../../renderer/told/drafts.ts';
import { changedDraft, draftOf, newDraft } from '../../../renderer/told/schedule-draft.ts';

const schedule = (name: string): Schedule => ({
  name,
  cone: null,
  segments: [{ rateCPerHour: 'full', minutes: null, targetC: celsius(1000), holdMinutes: 0 }],
});
const MINE = schedule('Mine');
const begun = changedDraft(draftOf(MINE), { change: 'add', before: null, unit: 'C' });

describe('the draft in hand', () => {
  it('is what is told, where nothing was begun', () => {
    expect(draftInHand(null, undefined)).toBeNull();
    expect(draftInHand(null, MINE)).toEqual(draftOf(MINE));
  });

  it('is what was begun, as long as the same schedule is told', () => {
    const held = { draft: begun, told: MINE };
    expect(draftInHand(held, schedule('Mine'))).toBe(begun);
    const fresh = { draft: newDraft('C', 'Unnamed'), told: undefined };
    expect(draftInHand(fresh, undefined)).toBe(fresh.draft);
  });

  it('gives way to a schedule told from elsewhere', () => {
    const other = schedule('Other');
    expect(draftInHand({ draft: begun, told: MINE }, other)).toEqual(draftOf(other));
    expect(draftInHand({ draft: newDraft('C', 'Unnamed'), told: undefined }, other)).toEqual(
      draftOf(other),
    );
  });

  it('stays unfinished when its schedule goes with its firing, and goes with it when whole', () => {
    expect(draftInHand({ draft: begun, told: MINE }, undefined)).toBe(begun);
    expect(draftInHand({ draft: draftOf(MINE), told: MINE }, undefined)).toBeNull();
  });
});
