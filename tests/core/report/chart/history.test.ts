import { describe, expect, it } from 'vitest';
import { historyOf } from '../../../../core/history/history.ts';
import { historyChart } from '../../../../core/report/chart/history.ts';
import { bottomOf, rightOf } from '../../../../core/report/chart/scale.ts';
import { entry, ofPowers } from '../../../builders/histories.ts';

const SIZE = { width: 800, type: 14 };
const worn = historyOf(
  ofPowers([1, 0.995, 0.985, null, 0.96, 0.955, 0.94, 0.93, 0.92, 0.91], () => ({
    lastRampPower: 0.8,
  })),
);

describe('a history as a picture', () => {
  const chart = historyChart(worn, SIZE);

  it('keeps every mark within its lane, a firing that cannot tell without power', () => {
    for (const { x, power, coneY } of chart.firings) {
      expect(x).toBeGreaterThan(chart.power.left);
      expect(x).toBeLessThan(rightOf(chart.power));
      expect(coneY).toBeGreaterThanOrEqual(chart.cones.top);
      expect(coneY).toBeLessThanOrEqual(bottomOf(chart.cones));
      for (const y of power === null ? [] : [power.highY, power.lowY]) {
        expect(y).toBeGreaterThanOrEqual(chart.power.top);
        expect(y).toBeLessThanOrEqual(bottomOf(chart.power));
      }
    }
    expect(chart.firings.map(({ power }) => power === null).indexOf(true)).toBe(3);
  });

  it('draws the trend from the first firing to the last, falling towards its limit', () => {
    const { trend, firings, limitY } = chart;
    expect(trend).toMatchObject({ x1: firings[0]!.x, x2: firings.at(-1)!.x });
    expect(trend!.y2).toBeGreaterThan(trend!.y1);
    expect(limitY).toBeGreaterThan(trend!.y2);
    expect(limitY).toBeLessThan(bottomOf(chart.power));
  });

  it('names cones and counts firings no closer than their labels need', () => {
    const many = historyChart(historyOf(ofPowers(Array<number>(90).fill(1))), SIZE);
    for (const ticks of [chart.coneTicks, many.numberTicks, chart.percentTicks]) {
      const gaps = ticks.slice(1).map(({ at }, index) => Math.abs(at - ticks[index]!.at));
      expect(Math.min(...gaps)).toBeGreaterThanOrEqual(SIZE.type);
    }
    expect(many.numberTicks.length).toBeGreaterThan(10);
    expect(chart.coneTicks.map(({ value }) => value)).toContain('6');
  });

  it('draws one firing that tells nothing, without trend or limit', () => {
    const bare = historyChart(historyOf([entry(0, { conePosition: null })]), SIZE);
    expect(bare).toMatchObject({ trend: null, limitY: null, steps: [] });
    expect(bare.firings).toEqual([{ x: expect.any(Number) as number, power: null, coneY: null }]);
  });

  it('puts a step between the firing before it and the one after', () => {
    const stepped = historyOf(ofPowers([1, 1.005, 0.995, 1, 0.84, 0.845, 0.835, 0.84]));
    const { steps, firings } = historyChart(stepped, SIZE);
    expect(steps.map(({ kind }) => kind)).toEqual(['lost']);
    expect(steps[0]!.x).toBeCloseTo((firings[3]!.x + firings[4]!.x) / 2);
  });
});
