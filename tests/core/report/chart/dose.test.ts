import { describe, expect, it } from 'vitest';
import { doseChart } from '../../../../core/report/chart/dose.ts';
import { exampleDocument } from '../../../fixtures/documents/load.ts';

describe('the dose against time', () => {
  const chart = doseChart(exampleDocument('troubled-firing').heatWork!)!;

  it('marks the dose that brings the cone down above a firing that fell short', () => {
    const last = chart.line.split('L').at(-1)!;
    expect(Number(last.split(' ')[1])).toBeGreaterThan(chart.downY);
  });

  it('stays within its plot, with labels that have room', () => {
    const points = [...chart.line.matchAll(/([\d.]+) ([\d.]+)/g)];
    expect(points.length).toBeGreaterThan(5);
    for (const [, x] of points) {
      expect(Number(x)).toBeGreaterThanOrEqual(chart.plot.left);
      expect(Number(x)).toBeLessThanOrEqual(chart.plot.left + chart.plot.width);
    }
    const gaps = chart.timeTicks.slice(1).map(({ at }, index) => at - chart.timeTicks[index]!.at);
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(62);
    // All one step apart, and on moments that a clock has names for.
    const [step, ...rest] = chart.timeTicks
      .slice(1)
      .map(({ value }, index) => value - chart.timeTicks[index]!.value);
    expect(rest.every((other) => other === step)).toBe(true);
    expect(chart.timeTicks.every(({ value }) => value % step! === 0)).toBe(true);
    expect([300, 600, 900, 1800, 3600, 7200]).toContain(step);
  });

  it('is not drawn where nothing was done', () => {
    expect(doseChart({ accumulated: [] })).toBeNull();
  });
});
