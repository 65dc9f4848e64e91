import { describe, expect, it } from 'vitest';
import { ASSUMPTIONS, DECISIONS, REASONS, REJECTIONS, WARNINGS } from '../../../core/log/ids.ts';
import {
  decisionClause,
  decisionReason,
  delimiterName,
  idsWithoutWords,
  rejectionReason,
  timeAssumption,
  unitName,
  warningSentence,
} from '../../../core/wording/reading-ids.ts';

describe('the words for ids of the account', () => {
  it('are there for every id that the reader can write', () => {
    const missing = idsWithoutWords({
      decisions: Object.keys(DECISIONS),
      reasons: Object.keys(REASONS),
      warnings: Object.keys(WARNINGS),
      assumptions: Object.keys(ASSUMPTIONS),
      rejections: Object.keys(REJECTIONS),
    });
    expect(missing).toEqual([]);
  });

  it('notice an id that has none', () => {
    expect(idsWithoutWords({ decisions: ['encoding', 'moon-phase'] })).toEqual(['moon-phase']);
  });

  it('still say an id that has no words of its own', () => {
    expect(decisionClause('moon-phase', 'full')).toBe('moon phase: “full”');
    expect(decisionReason('because-so')).toBe('because so');
    expect(warningSentence('odd-thing')).toBe('Please note: odd thing.');
    expect(timeAssumption('odd-thing')).toBe('Taken for granted: odd thing.');
    expect(rejectionReason('odd-thing')).toBe('odd thing');
  });

  it('name things rather than show their signs', () => {
    expect(delimiterName(';')).toBe('semicolons');
    expect(delimiterName('~')).toBe('“~”');
    expect(unitName('F')).toBe('degrees Fahrenheit');
    // 25 °C = 77 °F.
    expect(decisionClause('cold-junction', '25', 'F')).toBe('the cold junction stood at 77 °F');
    expect(decisionClause('cold-junction', '24.44')).toBe('the cold junction stood at 24.4 °C');
    expect(decisionClause('header-line', 'none')).toBe('no line names the columns');
    expect(decisionClause('header-line', '3')).toBe('the columns are named on line 3');
    expect(decisionClause('interval', '60')).toBe('rows are 60 s apart');
    expect(decisionClause('decimal-mark', ',')).toBe('the decimal mark is a comma');
  });

  it('make a clause of every decision, whatever the choice', () => {
    for (const what of Object.keys(DECISIONS)) {
      expect(decisionClause(what, 'zebra')).toMatch(/^[a-z].*[^.]$/s);
    }
  });
});
