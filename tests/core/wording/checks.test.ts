import { describe, expect, it } from 'vitest';
import type { ClearReason, NotApplicableReason } from '../../../core/findings/detector.ts';
import { CHECK_REASONS, checkReason, checksWords } from '../../../core/wording/checks.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

/** A record, so that a reason without a row here does not compile. */
const REASONS: Record<ClearReason | NotApplicableReason | 'measured' | 'detector-failed', true> = {
  measured: true,
  'detector-failed': true,
  'within-limits': true,
  'cooling-logged': true,
  'ends-cool': true,
  'no-schedule': true,
  'no-alignment': true,
  'no-heat-work': true,
  'fuel-fired': true,
  'never-at-full-power': true,
  'power-not-fitted': true,
  'alignment-uncertain': true,
  'no-target-cone': true,
  'no-cone-reached': true,
  'no-mirrored-cone': true,
  'no-rated-ramp': true,
  'no-hold': true,
  'no-cooling-logged': true,
  'record-ends-hot': true,
  'gap-at-peak': true,
  'readings-too-coarse': true,
  'starts-hot': true,
  'no-second-place': true,
  'not-heated-and-cooled': true,
  'no-witness-cones': true,
  'told-by-another': true,
  'no-glaze': true,
  'stretch-not-seen': true,
  'ware-fired-before': true,
  'no-reference': true,
  'reference-unusable': true,
  'cooling-not-comparable': true,
};

describe('the checks', () => {
  it.each(Object.keys(REASONS))('have words for the reason %s', (reason) => {
    expect(CHECK_REASONS[reason]).toMatch(/^[a-z].*[^.]$/);
  });

  it('say an unknown reason by its name', () => {
    expect(checkReason('moon-phase')).toBe('moon phase');
  });

  it('list every outcome of the document, the silent ones too', () => {
    const { checks } = exampleDocument('no-schedule');
    const words = checksWords(checks, 'electric');
    expect(words).toHaveLength(checks.length);
    expect(words.find(({ id }) => id === 'ramp-slow')).toEqual({
      id: 'ramp-slow',
      outcome: 'not-applicable',
      name: 'A climb slower than planned',
      outcomeWord: 'cannot be told',
      reason: 'no schedule was given to hold the record against',
    });
  });

  it('of a kiln that burns fuel say what is asked of electric kilns only, and name no element', () => {
    const words = checksWords(
      [{ id: 'elements-weak', outcome: 'not-applicable', reason: 'fuel-fired' }],
      'fuel',
    );
    expect(words[0]).toMatchObject({
      name: 'Less power than in the good firing',
      outcomeWord: 'cannot be told',
      reason: 'this is judged of electric kilns only',
    });
  });
});
