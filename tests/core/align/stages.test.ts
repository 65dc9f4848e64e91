import { describe, expect, it } from 'vitest';
import { plannedClock } from '../../../core/align/clock.ts';
import { stagesOf } from '../../../core/align/stages.ts';
import { AS_PLANNED, searched, traceOfStretches } from '../../builders/alignment.ts';
import type { Stretch } from '../../builders/trace.ts';

const { grid, legs } = searched(traceOfStretches([{ holdMinutes: 60 }, ...AS_PLANNED]));
const stages = stagesOf(grid, legs, plannedClock(legs));
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
    expect(stages[1]!.cost(held, at(180))).toBeGreaterThan(15);
    expect(stages[2]!.cost(peak, at(660))).toBeGreaterThan(30);
  });

  it('is dear where a leg is left out of a record that shows its beginning', () => {
    expect(stages[0]!.skip(0)).toBeGreaterThan(15);
  });

  it('is next to nothing for legs below the first reading of a record that begins hot', () => {
    const hot = searched(traceOfStretches(AS_PLANNED.slice(2), 600));
    expect(stagesOf(hot.grid, hot.legs, plannedClock(hot.legs))[0]!.skip(0)).toBeLessThan(2);
    expect(stagesOf(hot.grid, hot.legs, plannedClock(hot.legs))[2]!.skip(0)).toBeGreaterThan(15);
  });
});

describe('disagreement', () => {
  it('is the cost of a leg that ran through', () => {
    expect(stages[2]!.disagreement(held, turned)).toBeCloseTo(stages[2]!.cost(held, turned), 6);
  });

  it('counts an interruption once, however long', () => {
    const stopped = (minutes: number) => {
      const pause = { holdMinutes: minutes };
      const course = [
        ...AS_PLANNED.slice(0, 2),
        { rateCPerHour: 180, toC: 600 },
        pause,
        ...AS_PLANNED.slice(2),
      ];
      const cut = searched(traceOfStretches(course));
      const legEnd = cut.grid.celsius.findIndex((value) => value >= 1099);
      const legStart = cut.grid.celsius.findIndex((value) => value >= 122);
      const stage = stagesOf(cut.grid, cut.legs, plannedClock(cut.legs))[2]!;
      return {
        cost: stage.cost(legStart, legEnd),
        disagreement: stage.disagreement(legStart, legEnd),
      };
    };
    expect(stopped(120).cost).toBeGreaterThan(40);
    expect(stopped(120).disagreement).toBeLessThan(25);
  });
});

describe('a hold that the kiln climbs out of', () => {
  // 80 min to 100 °C, 15 min there, then up with all the power there is, or at a set rate.
  const course: Stretch[] = [
    { rateCPerHour: 60, toC: 100 },
    { holdMinutes: 15 },
    { rateCPerHour: 900, toC: 250 },
    { rateCPerHour: 300, toC: 1205 },
  ];
  const costs = (rate: string) => {
    const schedule = `rate_per_hour,target,hold_minutes\n60,100,15\n${rate},1205,0\n`;
    const found = searched(traceOfStretches(course), schedule);
    const hold = stagesOf(found.grid, found.legs, plannedClock(found.legs))[1]!;
    const point = (minutes: number) => found.grid.atSeconds.findIndex((at) => at >= 60 * minutes);
    return { kept: hold.cost(point(80), point(95)), climbing: hold.cost(point(93), point(103)) };
  };

  it('may have been run away from where the programme goes on at a set rate', () => {
    expect(costs('300').climbing).toBeLessThan(40);
  });

  it('has ended where it goes on at full power, which looks the same', () => {
    const { kept, climbing } = costs('full');
    expect(kept).toBeLessThan(3);
    expect(climbing).toBeGreaterThan(40);
  });
});
