import { describe, expect, it } from 'vitest';
import { ribbonLegs } from '../../../renderer/curve/ribbon-legs.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

describe('the ribbon of legs', () => {
  it('has every leg that took time, planned and driven, with the table’s numbers', () => {
    const document = exampleDocument('troubled-firing');
    const legs = ribbonLegs(document);
    document.alignment!.legs.forEach((leg, index) => {
      const drawn = legs.filter(({ number }) => number === index + 1);
      const tookTime = leg.planned.endSeconds > leg.planned.startSeconds;
      expect(drawn.filter(({ row }) => row === 'planned')).toHaveLength(tookTime ? 1 : 0);
      const { actual } = leg;
      const ran = actual !== null && actual.endSeconds > actual.startSeconds;
      expect(drawn.filter(({ row }) => row === 'driven')).toHaveLength(ran ? 1 : 0);
    });
  });

  it('marks what departs on the driven row only', () => {
    const legs = ribbonLegs(exampleDocument('troubled-firing'));
    expect(legs.filter(({ departs }) => departs).length).toBeGreaterThan(0);
    expect(legs.filter(({ departs, row }) => departs && row === 'planned')).toEqual([]);
  });

  it('shows the trace’s own legs without a plan', () => {
    const document = exampleDocument('no-schedule');
    const legs = ribbonLegs(document);
    expect(legs.map(({ row }) => row)).toEqual(document.trace.legs.map(() => 'driven'));
    expect(legs.map(({ fromSeconds }) => fromSeconds)).toEqual(
      document.trace.legs.map(({ startSeconds }) => startSeconds),
    );
  });
});
