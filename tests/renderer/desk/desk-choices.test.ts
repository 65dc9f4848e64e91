import { describe, expect, it } from 'vitest';
import type { Decision } from '../../../core/model/source.ts';
import {
  asTheFileSays,
  headerChoices,
  headerTold,
  judgeDate,
  judgeZone,
  marksFrom,
  mattersOf,
  ownChoice,
} from '../../../renderer/desk/desk-choices.ts';

const decision = (what: string, choice: string, why: string, certainty: number): Decision => ({
  ...{ what, choice, why, certainty },
});
const DECISIONS = [
  decision('delimiter', ';', 'rows-agree', 0.98),
  decision('day-order', 'day-first', 'nothing-decides', 0.5),
  decision('unit', 'F', 'given', 1),
  decision('encoding', 'windows-1252', 'not-utf8', 0.7),
  decision('time-column', 'when', 'name', 0.9),
];

describe('the reader’s own choice', () => {
  it('is said in words, with the reason and how sure it is', () => {
    const own = ownChoice(DECISIONS, 'delimiter');
    expect(asTheFileSays(own)).toBe('semicolons (as read)');
    expect(own.why).toBe('certain: the rows then agree best with each other');
    expect(own.isGuess).toBe(false);
  });

  it('is marked where it is a guess', () => {
    const own = ownChoice(DECISIONS, 'day-order');
    expect(own.isGuess).toBe(true);
    expect(own.why).toMatch(/^◇ a guess: /);
    expect(asTheFileSays(own)).toBe('day, month, year (as read)');
  });

  it('is unknown where the person decided, or nothing was decided', () => {
    expect(asTheFileSays(ownChoice(DECISIONS, 'unit'))).toBe('as the file says');
    expect(ownChoice(DECISIONS, 'unit').why).toBe('as you said');
    expect(ownChoice(DECISIONS, 'interval')).toEqual({
      ...{ choice: null, why: undefined, isGuess: false },
    });
  });
});

describe('what is in sight', () => {
  it('is what the log raises, and what was told', () => {
    const shown = { decisions: DECISIONS, warnings: [] };
    const matters = mattersOf(shown, {});
    for (const key of ['unit', 'dayOrder', 'delimiter', 'encoding', 'timeZone'] as const) {
      expect(matters.has(key), key).toBe(true);
    }
    for (const key of ['coupleType', 'firstDate', 'timeUnit', 'intervalSeconds'] as const) {
      expect(matters.has(key), key).toBe(false);
    }
    expect(mattersOf(shown, { unit: 'mV' }).has('coupleType')).toBe(true);
    expect(mattersOf(shown, { intervalSeconds: 60 }).has('intervalSeconds')).toBe(true);
    expect(mattersOf({ ...shown, warnings: ['no-date'] }, {}).has('firstDate')).toBe(true);
  });
});

describe('what is typed', () => {
  it('is a day or not', () => {
    expect(judgeDate('2026-03-14')).toBeNull();
    for (const wrong of ['14.3.2026', '2026-13-40', 'today']) {
      expect(judgeDate(wrong), wrong).not.toBeNull();
    }
  });

  it('is a zone or not', () => {
    expect(judgeZone('Europe/Berlin')).toBeNull();
    expect(judgeZone('UTC')).toBeNull();
    expect(judgeZone('Atlantis/Poseidonis')).not.toBeNull();
  });

  it('is marks, each once, in which a comma may stand', () => {
    expect(marksFrom(' OPEN ; -999,9  OPEN ')).toEqual(['OPEN', '-999,9']);
  });
});

it('a header may stand on any of the first lines that hold something, or on none', () => {
  const lines = [
    { line: 1, text: 'Kiln' },
    { line: 2, text: ' ' },
    { line: 3, text: 'time;temp' },
  ];
  expect(headerChoices(lines).map(({ value }) => value)).toEqual(['none', '1', '3']);
  expect(headerTold({})).toBeNull();
  expect(headerTold({ headerLine: null })).toBe('none');
  expect(headerTold({ headerLine: 3 })).toBe('3');
});
