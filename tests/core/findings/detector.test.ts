import { describe, expect, test } from 'vitest';
import {
  clear,
  defineDetector,
  found,
  foundAny,
  notApplicable,
  type Draft,
  type Figures,
} from '../../../core/findings/detector.ts';
import { seconds } from '../../../core/units.ts';

const DRAFT: Draft = {
  severity: 'note',
  evidence: [{ fromSeconds: seconds(0), toSeconds: seconds(60) }],
  figures: { gapMinutes: 1 },
  thresholds: {},
  instead: [],
};

describe('a verdict', () => {
  test('is found with drafts and clear without', () => {
    expect(foundAny([])).toEqual(clear('within-limits'));
    expect(foundAny([DRAFT])).toEqual(found(DRAFT));
    expect(foundAny([DRAFT, DRAFT])).toEqual({ outcome: 'found', findings: [DRAFT, DRAFT] });
  });

  test('says why it does not apply', () => {
    expect(notApplicable('no-hold')).toEqual({ outcome: 'not-applicable', reason: 'no-hold' });
  });
});

describe('the compiler refuses', () => {
  test('a detector that reads a fact it did not name', () => {
    defineDetector({
      id: 'log-gap',
      needs: ['trace'],
      // @ts-expect-error the schedule was not named
      detect: ({ schedule }) => clear(schedule === null ? 'ends-cool' : 'within-limits'),
    });
  });

  test('a wanted fact used as if it were there', () => {
    defineDetector({
      id: 'log-gap',
      needs: ['trace'],
      wants: ['schedule'],
      // @ts-expect-error the schedule may be null
      detect: ({ schedule }) => clear(schedule.cone === null ? 'ends-cool' : 'within-limits'),
    });
  });

  test('a figure whose name does not end in a unit', () => {
    const named: Figures = { lateMinutes: 3, peakC: 1000, overDeltaC: 4, times: 2, segment: 0 };
    // @ts-expect-error the name has no unit
    const bare: Figures = { late: 3 };
    expect(Object.keys({ ...named, ...bare })).toHaveLength(6);
  });

  test('but takes a needed fact as not null', () => {
    const detector = defineDetector({
      id: 'ramp-slow',
      needs: ['schedule'],
      detect: ({ schedule }) => (schedule.cone === null ? clear() : found(DRAFT)),
    });
    expect(detector).toMatchObject({ id: 'ramp-slow', needs: ['schedule'], wants: [] });
  });
});
