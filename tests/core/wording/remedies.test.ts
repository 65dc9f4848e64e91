import { describe, expect, it } from 'vitest';
import type { AnalysisDocument, Remedy } from '../../../core/model/document.ts';
import {
  leaveScheduleSentence,
  remediesNote,
  remedyPhrase,
  remedySentence,
  scheduleComesTo,
} from '../../../core/wording/remedies.ts';
import { speechIn } from '../../../core/wording/speech.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';
import { finding } from './builders.ts';

/** Peaked at 1184 °C (2162 °F) where the schedule has 1188 °C (2170 °F), with 9 min of hold. */
const troubled = exampleDocument('troubled-firing');
const say = speechIn('F');

type Row = readonly [Remedy['kind'], Remedy['unit'], number, number, number | null, string];

const said = ([kind, unit, amount, lowAmount, highAmount]: Row, document = troubled) =>
  remedyPhrase({ kind, unit, amount, lowAmount, highAmount }, document, say);

describe('a remedy', () => {
  it.each<Row>([
    [
      ...(['longer-hold', 'min', 58, 24, 110] as const),
      'a hold of 1 h 07 min at the peak (between 33 min and 1 h 59 min), where this one had 9 min',
    ],
    [
      ...(['shorter-hold', 'min', 4, 2, 8] as const),
      'a hold of 5 min at the peak (between 1 min and 7 min), where this one had 9 min',
    ],
    [
      ...(['higher-peak', 'C', 10, 5, 20] as const),
      'a peak of 2181 °F (between 2172 °F and 2199 °F), 18 °F above the one reached and 11 °F above the schedule’s own',
    ],
    [
      ...(['lower-peak', 'C', 10, 5, 20] as const),
      'a peak of 2145 °F (between 2127 °F and 2154 °F), 18 °F below the one reached and 25 °F below the schedule’s own',
    ],
    [
      ...(['slower-last-ramp', 'C/h', 50, 40, 60] as const),
      'the last climb at 90 °F/h (between 72 °F/h and 108 °F/h)',
    ],
  ])('%s is said as the thing itself, with its range', (...row) => {
    expect(said(row)).toBe(row[5]);
  });

  it('of a peak that lies between the one reached and the schedule’s own says both', () => {
    expect(said(['higher-peak', 'C', 2, 1, 3, ''])).toMatch(
      /4 °F above the one reached and 3 °F below the schedule’s own$/,
    );
    const without: AnalysisDocument = { ...troubled, schedule: null };
    expect(said(['higher-peak', 'C', 10, 5, 20, ''], without)).toMatch(
      /18 °F above the one reached$/,
    );
  });

  it('has three numbers that agree, whatever the unit', () => {
    for (const unit of ['C', 'F'] as const) {
      for (const amount of [4.4, 10.49, 17.5, 41.8]) {
        const remedy = { kind: 'higher-peak', unit: 'C', amount, lowAmount: 1, highAmount: 90 };
        const text = remedyPhrase(remedy as Remedy, troubled, speechIn(unit));
        const peak = Number(/peak of (\d+)/.exec(text)![1]);
        const above = Number(/(\d+) °. above the one/.exec(text)![1]);
        const reached = speechIn(unit).temperature(troubled.trace.peakC);
        expect(`${peak - above} °${unit}`).toBe(reached);
      }
    }
  });

  it.each<Row>([
    [
      ...(['longer-hold', 'min', 60, 20, null] as const),
      'a hold of 1 h 09 min at the peak (at least 29 min, and no amount within reason is certain to do it), where this one had 9 min',
    ],
    [
      ...(['lower-peak', 'C', 10, 5, null] as const),
      'a peak of 2145 °F (at most 2154 °F, and no amount within reason is certain to do it), 18 °F below the one reached and 25 °F below the schedule’s own',
    ],
    [
      ...(['shorter-hold', 'min', 9, 0, null] as const),
      'no hold at the peak at all, where this one had 9 min',
    ],
    [
      ...(['shorter-hold', 'min', 4, 0, null] as const),
      'a hold of about 5 min at the peak, where this one had 9 min',
    ],
    [
      ...(['longer-hold', 'min', 16, 0, 40] as const),
      'a hold of 25 min at the peak (up to 49 min), where this one had 9 min',
    ],
    [
      ...(['slower-last-ramp', 'C/h', 50, 10, null] as const),
      'the last climb at 90 °F/h (no rate within reason is certain to do it)',
    ],
    // A hold that the legs do not show cannot be named by its length.
    [
      ...(['shorter-hold', 'min', 84, 40, 120] as const),
      '1 h 24 min less at the peak (between 40 min and 2 h 00 min)',
    ],
  ])('%s %s %d from %d to %s names no end that says nothing', (...row) => {
    expect(said(row)).toBe(row[5]);
  });

  it('joins all ways into one sentence, or says none', () => {
    expect(remedySentence(troubled, say)).toMatch(
      /a hold of 1 h 07 min.*; or a peak of .*Change one of these at a time, and let cones prove it\.$/,
    );
    expect(remedySentence(exampleDocument('good-firing'), say)).toBeNull();
    expect(remedySentence({ ...troubled, heatWork: null }, say)).toBeNull();
  });

  it('is not one of a choice where it stands alone', () => {
    const heatWork = { ...troubled.heatWork!, remedies: troubled.heatWork!.remedies.slice(0, 1) };
    expect(remediesNote({ ...troubled, heatWork })).toBe('Let cones prove it.');
    expect(remediesNote(troubled)).toMatch(/^Change one of these at a time/);
    expect(remediesNote(exampleDocument('good-firing'))).toBeNull();
  });
});

describe('a schedule that the kiln did not follow', () => {
  const findings = [finding('underfired', { shortCones: 1.4, asPlannedOffCones: 0.1 })];
  const unfollowed: AnalysisDocument = { ...troubled, findings };

  it('is to be left as it is, whatever else would have done it', () => {
    expect(scheduleComesTo(unfollowed)).toBe('cone 6');
    expect(leaveScheduleSentence(unfollowed)).toMatch(
      /comes to cone 6: leave its peak and its hold as they are/,
    );
    expect(remediesNote(unfollowed)).toBe(leaveScheduleSentence(unfollowed));
    expect(remedySentence(unfollowed, say)).toMatch(
      /^Followed to the letter.*With all else as it went this time, .*a hold of 1 h 07 min/,
    );
  });

  it('is not spoken of where the schedule may be to blame', () => {
    expect(scheduleComesTo(troubled)).toBeNull();
    expect(leaveScheduleSentence(troubled)).toBeNull();
    expect(scheduleComesTo({ ...unfollowed, heatWork: null })).toBeNull();
  });
});
