import { describe, expect, it } from 'vitest';
import { idleCost, naturalCoolingCost } from '../../../core/align/outside.ts';
import { AS_PLANNED, searched, traceOfStretches } from '../../builders/alignment.ts';

const { grid } = searched(traceOfStretches([{ holdMinutes: 60 }, ...AS_PLANNED]));
const at = (minutes: number) => grid.atSeconds.findIndex((time) => time >= 60 * minutes);
const [start, held] = [at(60), at(150)];

describe('rest before heating', () => {
  it('costs nothing until heating begins and more the longer it is taken to last', () => {
    const idle = idleCost(grid);
    expect(idle[Math.max(0, start - 3)]).toBeLessThan(1);
    expect(idle[at(100)]).toBeGreaterThan(20);
  });
});

describe('natural cooling', () => {
  it('costs nothing from where it began and much from before a hold', () => {
    const cooling = naturalCoolingCost(grid);
    const off = at(60 + 60 + 30 + 326.7 + 120 + 15 + 88 + 20);
    expect(cooling[off + 2]).toBeLessThan(1);
    expect(cooling[off - 15]!).toBeGreaterThan(cooling[off + 2]! + 5);
    expect(cooling[held]).toBeGreaterThan(100);
  });
});
