import { describe, expect, it } from 'vitest';
import { retold, toldOfTheKiln } from '../../../renderer/state/told.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const schedule = exampleDocument('good-firing').schedule!;

describe('what was told', () => {
  it('is changed key by key, and taken back with undefined', () => {
    const told = retold({ cone: '6', purpose: 'glaze' }, { cone: undefined, coneType: 'large' });
    expect(told).toEqual({ purpose: 'glaze', coneType: 'large' });
    expect('cone' in told).toBe(false);
  });

  it('of the kiln stays true for another log; of the firing and of the file it does not', () => {
    const kiln = { heat: 'electric' } as const;
    const couple = { type: 'S' } as const;
    expect(
      toldOfTheKiln({
        ...{ kiln, couple, coneType: 'large', schedule, cone: '6', purpose: 'glaze' },
        reading: { unit: 'F' },
        observedCones: [{ cone: '6', place: 'top', bendDegrees: 90 }],
      }),
    ).toEqual({ kiln, couple, coneType: 'large' });
  });
});
