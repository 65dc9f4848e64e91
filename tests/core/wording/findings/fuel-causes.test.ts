import { describe, expect, it } from 'vitest';
import * as causes from '../../../../core/wording/findings/fuel-causes.ts';

describe('the causes of a kiln that burns fuel', () => {
  const all = [...causes.SHORT_OF_HEAT, ...causes.STOPPED];

  it('are each named once, with a check of its own', () => {
    expect(new Set(all.map(({ cause }) => cause)).size).toBe(all.length);
    expect(new Set(all.map(({ tell }) => tell)).size).toBe(all.length);
  });

  it('send nobody into the gas train: what is to be looked at is looked at from outside', () => {
    const said = [causes.LOOK_AT_FIRE, ...all.map(({ tell }) => tell)].join(' ');
    expect(said).not.toMatch(/\b(unscrew|open the valve|take out|drill|relight|clean)\b/i);
    expect(causes.LOOK_AT_FIRE).toContain('from outside');
  });

  it('are called common practice where they stand', () => {
    expect(causes.COMMON_PRACTICE).toContain('common practice');
  });
});
