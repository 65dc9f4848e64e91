import { describe, expect, it } from 'vitest';
import { idleCost, naturalCoolingCost, stagesOf } from '../../../core/align/stages.ts';
import { AS_PLANNED, searched, traceOfStretches } from '../../builders/alignment.ts';

const { grid, legs } = searched(traceOfStretches([{ holdMinutes: 60 }, ...AS_PLANNED]));
const stages = stagesOf(grid, legs);
const at = (minutes: number) => grid.atSeconds.findIndex((time) => time >= 60 * minutes);
// After an hour at rest: 60 min to 120 °C, 30 min hold, 326⅔ min to 1100 °C, 120 min to 1220 °C, 15 min.
const [start, top, held, turned, peak, over] = [
  at(60),
  at(120),
  at(150),
  at(476.7),
  at(596.7),
  at(611.7),
];

describe('what legs cost', () => {
  it('is little where they ran', () => {
    expect(stages[0]!.cost(start, top)).toBeLessThan(8);
    expect(stages[1]!.cost(top, held)).toBeLessThan(3);
    expect(stages[2]!.cost(held, turned)).toBeLessThan(3);
    expect(stages[3]!.cost(turned, peak)).toBeLessThan(3);
    expect(stages[4]!.cost(peak, over)).toBeLessThan(5);
  });

  it('is more where the target is missed, the rate is wrong, or a hold climbs', () => {
    expect(stages[2]!.cost(held, at(430))).toBeGreaterThan(20);
    expect(stages[3]!.cost(held, peak)).toBeGreaterThan(20);
    expect(stages[1]!.cost(held, at(180))).toBeGreaterThan(20);
    expect(stages[2]!.cost(peak, at(660))).toBeGreaterThan(30);
  });

  it('is dear where a leg is left out of a record that shows its beginning', () => {
    expect(stages[0]!.skip(0)).toBeGreaterThan(15);
  });

  it('is next to nothing for legs below the first reading of a record that begins hot', () => {
    const hot = searched(traceOfStretches(AS_PLANNED.slice(2), 600));
    expect(stagesOf(hot.grid, hot.legs)[0]!.skip(0)).toBeLessThan(2);
    expect(stagesOf(hot.grid, hot.legs)[2]!.skip(0)).toBeGreaterThan(15);
  });
});

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
