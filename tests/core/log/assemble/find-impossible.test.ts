import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  findImpossible,
  refuseBeyondReadings,
} from '../../../../core/log/assemble/find-impossible.ts';

const climb = Array.from({ length: 200 }, (_, i) => 20 + 5 * i + (i % 3) * 0.4);
const withAt = (rows: readonly number[], value: number): Float64Array =>
  Float64Array.from(climb, (reading, row) => (rows.includes(row) ? value : reading));
const found = (values: Float64Array): number[] => [...findImpossible(values)];

describe('a number that stands for a missing reading', () => {
  // Codes of loggers and limits of couple types and whole numbers: common practice.
  test.each([-999, -9999, -200, -127, 9999, 32767, 1372, 2300, 0, -1, 6553.5, 1e9])(
    '%d',
    (value) => {
      // 50 and 51 stand near 270 °C, far from each of these.
      expect(found(withAt([50, 51, 90], value))).toEqual([value]);
    },
  );

  test('may be any deep number that is repeated exactly', () => {
    expect(found(withAt([50, 51, 90], -173.4))).toEqual([-173.4]);
  });

  test('may be the whole log', () => {
    expect(found(new Float64Array(50).fill(-200))).toEqual([-200]);
    expect(found(new Float64Array(50).fill(9999))).toEqual([9999]);
  });

  test('may stand at the beginning or the end', () => {
    expect(found(withAt([197, 198, 199], 0))).toEqual([0]);
    expect(found(withAt([0, 1], 1372))).toEqual([1372]);
  });
});

describe('a reading is not taken for one', () => {
  test('where the kiln passes such a number', () => {
    expect(found(Float64Array.from({ length: 300 }, (_, i) => 900 + i * 2))).toEqual([]);
    expect(found(Float64Array.from({ length: 60 }, (_, i) => Math.max(0, 30 - i)))).toEqual([]);
    expect(found(new Float64Array(50).fill(799))).toEqual([]);
  });

  test('where readings are few and far apart', () => {
    expect(found(Float64Array.of(20, 300, 600, 999, 1222))).toEqual([]);
    expect(found(Float64Array.of(0, 200, 480, 800, 1000))).toEqual([]);
  });

  test('where a single reading dips without being a code', () => {
    expect(found(withAt([50], 133.7))).toEqual([]);
  });

  test('in any smooth course', () => {
    const steps = fc.array(fc.double({ min: -8, max: 8, noNaN: true }), {
      minLength: 20,
      maxLength: 120,
    });
    fc.assert(
      fc.property(steps, fc.integer({ min: 0, max: 1200 }), (moves, start) => {
        let value = start;
        const course = Float64Array.from(moves, (move) => (value = Math.max(-20, value + move)));
        expect(found(course)).toEqual([]);
      }),
      { numRuns: 1000 },
    );
  });
});

test('voltages have bounds of their own', () => {
  const microvolts = Float64Array.from({ length: 60 }, (_, i) => 5 + i * 800);
  expect([...findImpossible(microvolts, 'uV')]).toEqual([]);
  const millivolts = [0.1, 0.4, 0.9, 99.99, 1.4, 2.1, 30, 30.4, 0, 30.9, 31.2, -32768];
  expect([...findImpossible(Float64Array.from(millivolts), 'mV')].sort()).toEqual([
    -32768, 0, 99.99,
  ]);
});

test('a couple that comes off and stays at the limit of its type is no peak', () => {
  const open = [...climb.slice(0, 190), ...Array<number>(9).fill(1372)];
  const fast = open.map((value, row) => (row < 190 ? 20 + row * 5.3 : value));
  expect(found(Float64Array.from(fast))).toEqual([1372]);
  const coarse = [20, 170, 320, 470, 640, 790, 930, 1080, 1230, 1300, 1300, 1300, 1300];
  expect(found(Float64Array.from(coarse))).toEqual([]);
  // Steps of 20 °C, and the limit 350 °C above the last reading.
  const steep = Array.from({ length: 60 }, (_, i) => (i > 50 ? 1372 : 20 + 20 * i + (i % 3) * 0.7));
  expect(found(Float64Array.from(steep))).toEqual([1372]);
});

describe('a code among readings that come seldom', () => {
  const seldom = Array.from({ length: 40 }, (_, i) => 20 + 43 * i * (i < 28 ? 1 : 0) + (i % 3));
  const course = seldom.map((c, i) => (i < 28 ? c : 1200 * Math.exp(-0.09 * (i - 27))));
  const marked = (isGone: (row: number) => boolean, value: number): Float64Array =>
    Float64Array.from(course, (c, row) => (isGone(row) ? value : c));

  test('is one across a gap in which the kiln went on climbing', () => {
    expect(found(marked((row) => row >= 8 && row < 14, 0))).toEqual([0]);
    expect(found(marked((row) => row >= 8 && row < 14, 1023.75))).toEqual([1023.75]);
  });

  test('is one where it comes again and again, once near a reading', () => {
    expect(found(marked((row) => row % 7 === 3, 0))).toEqual([0]);
  });

  test('is one at the end where no reading stays', () => {
    expect(found(marked((row) => row > 32, 1023.75))).toEqual([1023.75]);
  });
});

test('readings far beyond every couple are refused, and marks beyond them are not', () => {
  const tenths = Float64Array.from(climb, (c) => 10 * c);
  expect(() => {
    refuseBeyondReadings(tenths);
  }).toThrow(/run from 200 to 10154.*tenths/);
  refuseBeyondReadings(withAt([3, 4, 5], 32_767));
  refuseBeyondReadings(new Float64Array(50).fill(9999));
});
