import { describe, expect, it } from 'vitest';
import type { HeatWorkAssumption } from '../../../core/heatwork/assumptions.ts';
import { assumptionSentence, knowsAssumption } from '../../../core/wording/assumptions.ts';

/** A record, so that an assumption without a row here does not compile. */
const ALL: Record<HeatWorkAssumption, true> = {
  'couple-type-assumed': true,
  'couple-class-assumed': true,
  'couple-beyond-class': true,
  'chart-self-supporting': true,
  'chart-large': true,
  'chart-small': true,
  'chart-iron-free': true,
  'cone-activation-borrowed': true,
  'cone-between-neighbours': true,
  'cone-borrowed': true,
  'rate-outside-chart': true,
  'hold-rules-conflict': true,
  'gap-interpolated': true,
  'logs-joined': true,
  'record-starts-hot': true,
  'record-ends-hot': true,
  'beyond-hottest-cone': true,
  'corrected-by-cones': true,
};

describe('what the heat-work takes for granted', () => {
  it.each(Object.keys(ALL))('%s has a sentence of its own', (id) => {
    expect(knowsAssumption(id)).toBe(true);
    expect(assumptionSentence(id)).toMatch(/^[A-Z].*\.$/);
  });

  it('is said by its id where it has none', () => {
    expect(knowsAssumption('odd-thing')).toBe(false);
    expect(assumptionSentence('odd-thing')).toBe('Taken for granted: odd thing.');
  });
});
