import { describe, expect, it } from 'vitest';
import { purposeOf } from '../../../core/model/purpose.ts';
import type { Cone } from '../../../core/model/cone.ts';
import { facts, heatWorkAt } from '../../builders/facts.ts';

const { schedule } = facts();
const named = (name: string, cone: Cone | null = null) => ({
  options: {},
  schedule: { ...schedule!, name, cone },
  heatWork: null,
});

describe('the purpose of a firing', () => {
  it('is what was told, whatever the cone', () => {
    const told = { ...named('Glaze', '6'), options: { purpose: 'bisque' as const } };
    expect(purposeOf(told)).toEqual({ purpose: 'bisque', isTold: true });
  });

  it.each([
    ['Slow bisque', 'bisque'],
    ['biscuit, raw clay', 'bisque'],
    ['Stoneware glaze', 'glaze'],
    ['Decal and lustre', 'other'],
  ])('is what its schedule calls itself: %s', (name, purpose) => {
    expect(purposeOf(named(name))).toEqual({ purpose, isTold: true });
  });

  // Common practice: bisque between cones 010 and 01, stoneware above, decals below.
  it.each([
    ['018', 'other'],
    ['010', 'bisque'],
    ['04', 'bisque'],
    ['1', 'glaze'],
    ['10', 'glaze'],
  ] as const)('is taken from cone %s otherwise: %s', (cone, purpose) => {
    expect(purposeOf(named('Programme 3', cone))).toEqual({ purpose, isTold: false });
  });

  it('is taken from the cone that was reached where none was meant, and else is not known', () => {
    const reached = {
      ...heatWorkAt(6, null),
      cone: { ...heatWorkAt(6).cone, label: '6' as const },
    };
    expect(purposeOf({ options: {}, schedule: null, heatWork: reached })?.purpose).toBe('glaze');
    expect(purposeOf({ options: {}, schedule: null, heatWork: null })).toBeNull();
  });
});
