import { describe, expect, test } from 'vitest';
import { ITS90_CHECK_VALUES } from '../../../core/reference/its90-check-values.ts';
import { againstShared, pairsOf } from './shared-reference.ts';

const rows = Object.entries(ITS90_CHECK_VALUES).flatMap(([type, pairs]) =>
  pairs.map(([atC, millivolts]) => `${type},${atC},${millivolts}`),
);

describe('the printed ITS-90 values', () => {
  againstShared('are those of the copy', 'thermocouple_check.csv', (csv) => {
    const copied = csv.trim().split('\n').slice(1);
    const normal = copied.map((line) => {
      const [type, atC, millivolts] = line.split(',');
      return `${type},${Number(atC)},${Number(millivolts)}`;
    });
    expect([...rows].sort()).toEqual([...normal].sort());
  });

  test('rise with temperature, from 100 °C on for type B', () => {
    for (const pairs of Object.values(ITS90_CHECK_VALUES)) {
      for (const [cooler, hotter] of pairsOf(pairs)) expect(hotter[1]).toBeGreaterThan(cooler[1]);
    }
  });

  test('hold the values that copies most often get wrong (trade.md: K 1000, S 1200, R 1000)', () => {
    expect(rows).toContain('K,1000,41.276');
    expect(rows).toContain('S,1200,11.951');
    expect(rows).toContain('R,1000,10.506');
  });
});
