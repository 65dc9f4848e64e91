import { describe, expect, it } from 'vitest';
import { powerChart } from '../../../../core/report/chart/power.ts';
import { bottomOf } from '../../../../core/report/chart/scale.ts';
import { celsius, celsiusPerHour } from '../../../../core/units.ts';

const capability = [700, 800, 900, 1000, 1100].map((c, i) => ({
  celsius: celsius(c),
  heatingCPerHour: celsiusPerHour(170 - 20 * i),
  coolingCPerHour: celsiusPerHour(-110 - 15 * i),
  ...{ powerToLoss: 2.5 - 0.3 * i, low: 2.3 - 0.3 * i, high: 2.7 - 0.3 * i },
}));
const heights = (path: string) => [...path.matchAll(/[\d.]+ ([\d.]+)/g)].map(([, y]) => Number(y));

describe('power and loss as a picture', () => {
  const chart = powerChart({ capability, ceilingC: celsius(1250) }, 'C')!;

  it('draws heating falling and cooling rising towards heat, within the lane', () => {
    const heating = heights(chart.slopes.heating);
    const cooling = heights(chart.slopes.cooling);
    expect(heating).toHaveLength(5);
    // Down the page is less.
    expect(heating.at(-1)).toBeGreaterThan(heating[0]!);
    expect(cooling.at(-1)).toBeLessThan(cooling[0]!);
    for (const y of [...heating, ...cooling]) {
      expect(y).toBeGreaterThanOrEqual(chart.slopes.plot.top);
      expect(y).toBeLessThanOrEqual(bottomOf(chart.slopes.plot));
    }
  });

  it('lays the ratio’s line inside its range, all above the line where it is 1', () => {
    const line = heights(chart.ratio.line);
    const range = heights(chart.ratio.range);
    expect(range).toHaveLength(10);
    line.forEach((y, i) => {
      expect(y).toBeGreaterThan(range[i]!);
      expect(y).toBeLessThan(range[9 - i]!);
      expect(y).toBeLessThan(chart.ratio.oneY);
    });
  });

  it('marks a ceiling that is near, and leaves one out that is far', () => {
    expect(chart.ceilingX).toBeGreaterThan(chart.ratio.plot.left);
    expect(powerChart({ capability, ceilingC: celsius(1500) }, 'C')!.ceilingX).toBeNull();
    expect(powerChart({ capability, ceilingC: null }, 'C')!.ceilingX).toBeNull();
  });

  it('counts in the reader’s unit, and is not drawn of one temperature', () => {
    const values = powerChart({ capability, ceilingC: null }, 'F')!.temperatureTicks;
    expect(values.at(-1)!.value).toBeGreaterThan(1900);
    expect(powerChart({ capability: capability.slice(0, 1), ceilingC: null }, 'C')).toBeNull();
  });
});
