import { describe, expect, it } from 'vitest';
import type { AlignedLeg, AnalysisDocument } from '../../../core/model/document.ts';
import { celsius, seconds } from '../../../core/units.ts';
import { departuresLine } from '../../../core/wording/departures.ts';
import { speechIn } from '../../../core/wording/speech.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';
import { finding } from './builders.ts';

const good = exampleDocument('good-firing');

const said = (
  change: (leg: AlignedLeg, index: number) => AlignedLeg,
  document: Partial<AnalysisDocument> = {},
): string => {
  const legs = good.alignment!.legs.map(change);
  const alignment = { ...good.alignment!, legs };
  return departuresLine({ ...good, ...document, alignment }, speechIn('C')).text;
};

const asItWas = (leg: AlignedLeg): AlignedLeg => leg;
const missing = (leg: AlignedLeg): AlignedLeg => ({ ...leg, actual: null, verdict: 'missing' });

/** The fifth leg, its only hold at the top, longer or shorter by so many minutes. */
const topHoldBy = (minutes: number) => (leg: AlignedLeg, index: number) =>
  index === 4 && leg.actual !== null
    ? {
        ...leg,
        verdict: minutes > 0 ? ('long' as const) : ('short' as const),
        actual: {
          ...leg.actual,
          endSeconds: seconds(
            leg.actual.startSeconds +
              (leg.planned.endSeconds - leg.planned.startSeconds) +
              minutes * 60,
          ),
        },
      }
    : leg;

describe('how the legs went', () => {
  it('is whole where all of the firing was seen', () => {
    expect(said(asItWas)).toBe(
      'The kiln kept to the schedule from start to finish: the record shows no departure.',
    );
  });

  it.each(['log-gap', 'sensor-open'] as const)('is not whole with a %s while firing', (id) => {
    const findings = [finding(id)];
    expect(said(asItWas, { findings })).toBe(
      'The record, where it has readings, shows no departure from the schedule.',
    );
    const late = seconds(good.trace.offSeconds! + 3600);
    const after = [{ ...finding(id), evidence: [{ fromSeconds: late, toSeconds: late }] }];
    expect(said(asItWas, { findings: after })).toContain('from start to finish');
  });

  it('holds nothing against legs before a record that begins hot', () => {
    const trace = { ...good.trace, startSeconds: null };
    const begun = (leg: AlignedLeg, index: number) => {
      if (index < 2) return missing(leg);
      return index === 2 ? { ...leg, actual: { ...leg.actual!, startC: celsius(573) } } : leg;
    };
    expect(said(begun, { trace })).toContain('where it has readings, shows no departure');
    expect(said(begun)).toContain('2 legs of 6 never ran');
  });

  it('holds nothing against legs after the end of a record, nor the one it ends in', () => {
    const trace = { ...good.trace, offSeconds: null };
    const ended = (leg: AlignedLeg, index: number) => {
      if (index >= 4) return missing(leg);
      return index === 3 ? { ...leg, verdict: 'not-reached' as const } : leg;
    };
    expect(said(ended, { trace })).toContain('where it has readings, shows no departure');
    expect(said(ended)).toContain('did not run the schedule to its end');
  });

  it.each([
    // Large is more than ten minutes and more than a fifth (chosen).
    [9, 'but for small departures in one leg'],
    [75, 'took 1 h 15 min longer than the'],
    [-12, 'took 12 min less than the'],
  ])('calls %d minutes more of a hold what they are', (minutes, words) => {
    expect(said(topHoldBy(minutes))).toContain(words);
  });
});
