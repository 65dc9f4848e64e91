import { describe, expect, it } from 'vitest';
import { removeOutliers } from '../../../core/trace/outliers.ts';
import { celsiusDelta } from '../../../core/units.ts';

const times = (count: number, step = 60) =>
  Float64Array.from({ length: count }, (_, i) => step * i);
const remove = (celsius: Float64Array, step = 60) =>
  removeOutliers(times(celsius.length, step), celsius, celsiusDelta(0.4), step);

describe('spikes', () => {
  it.each([1, 2, 3])('of %s samples are taken out and listed', (length) => {
    const celsius = times(100).map((at) => 20 + at / 30);
    for (let k = 50; k < 50 + length; k++) celsius[k]! += 60;
    const cleaned = remove(celsius);
    expect(cleaned.removed).toHaveLength(length);
    expect(cleaned.keep).toHaveLength(100 - length);
    expect(cleaned.repairs).toMatchObject([{ kind: 'spike', fromSeconds: 3000, samples: length }]);
  });

  it.each([
    [-200, -200],
    [200, 200],
    [-150, 180],
  ])('one by one, of %s and %s °C, take nothing between them with them', (first, second) => {
    const celsius = times(200).map((at) => 20 + at / 36);
    celsius[60]! += first;
    celsius[90]! += second;
    const cleaned = remove(celsius);
    expect(cleaned.removed.map((sample) => sample.atSeconds / 60)).toEqual([60, 90]);
  });

  it('that follow on each other are taken out one and all', () => {
    const celsius = times(200).map((at) => 20 + at / 36);
    for (const [k, by] of [
      [60, 90],
      [61, -70],
      [62, 120],
      [64, -80],
      [66, 60],
    ] as const)
      celsius[k]! += by;
    const cleaned = remove(celsius);
    expect(cleaned.removed.map((sample) => sample.atSeconds / 60)).toEqual([60, 61, 62, 64, 66]);
  });

  it('are not seen in a sharp peak: a fast climb that turns to free fall', () => {
    const celsius = Float64Array.from({ length: 100 }, (_, i) =>
      i <= 50 ? 900 + 6 * i : 1200 - 14 * (i - 50),
    );
    expect(remove(celsius, 120).removed).toEqual([]);
  });

  it('are not looked for in readings taken by hand', () => {
    const celsius = Float64Array.from({ length: 30 }, (_, i) => (i === 15 ? 500 : 20 + 10 * i));
    expect(remove(celsius, 1800).removed).toEqual([]);
  });
});

describe('dropouts', () => {
  it('of ten minutes with an impossible fall and return are taken out', () => {
    const celsius = times(200).map((at) => 20 + at / 18);
    for (let k = 100; k < 110; k++) celsius[k] = 25;
    const cleaned = remove(celsius);
    expect(cleaned.repairs).toMatchObject([
      { kind: 'dropout', fromSeconds: 6000, toSeconds: 6540, samples: 10 },
    ]);
  });

  it('are not seen where the lid was opened: a fast fall that does not come back', () => {
    const celsius = times(200).map((_, i) => (i < 100 ? 300 : 300 - Math.min(150, 35 * (i - 100))));
    expect(remove(celsius).removed).toEqual([]);
  });
});

describe('impossible values', () => {
  it('are taken out even from a handful of readings', () => {
    const cleaned = remove(Float64Array.of(20, 32767, 100, -999, 200));
    expect([...cleaned.keep]).toEqual([0, 2, 4]);
    expect(cleaned.repairs.map((repair) => repair.kind)).toEqual(['out-of-range', 'out-of-range']);
  });
});
