import { expect, test } from 'vitest';
import { compareCooling } from '../../../core/history/cooling.ts';
import type { Band } from '../../../core/model/document.ts';
import { celsius, celsiusPerHour, seconds } from '../../../core/units.ts';
import { entry } from '../../builders/histories.ts';

const band = (name: string, rate: number, direction: Band['direction'] = 'cooling'): Band => ({
  name,
  fromC: celsius(600),
  toC: celsius(500),
  direction,
  seconds: seconds(3600),
  meanCPerHour: celsiusPerHour(rate),
  fastestCPerHour: celsiusPerHour(rate),
});
const cooled = (rate: number, isGood = true) =>
  entry(0, { bands: [band('dunting', -rate), band('drying', 90, 'heating')], isGood });

test('the last firing is held against the last good one, over stretches that both have', () => {
  const comparison = compareCooling([cooled(100), cooled(60, false), cooled(120)]);
  expect(comparison).toEqual({
    goodFiring: 0,
    bands: [
      {
        name: 'dunting',
        fromC: 600,
        toC: 500,
        lastCPerHour: -120,
        goodCPerHour: -100,
        fasterPercent: expect.closeTo(20, 6) as number,
      },
    ],
  });
});

test('there is nothing to compare without a good firing before, or without a cooling', () => {
  expect(compareCooling([])).toBeNull();
  expect(compareCooling([cooled(100)])).toBeNull();
  expect(compareCooling([cooled(100, false), cooled(100)])).toBeNull();
  expect(compareCooling([cooled(100), entry(1)])).toBeNull();
});
