import { describe, expect, it } from 'vitest';
import { findLegs } from '../../../core/trace/legs.ts';
import { localSlopes } from '../../../core/trace/slopes.ts';
import { cornersAtSparseTop } from '../../../core/trace/sparse-top.ts';

type Reading = readonly [hours: number, celsius: number];

const readingsOf = (...readings: Reading[]) => ({
  atSeconds: Float64Array.from(readings, ([hours]) => 3600 * hours),
  celsius: Float64Array.from(readings, ([, celsius]) => celsius),
});

const legsOf = (...readings: Reading[]) => {
  const { atSeconds, celsius } = readingsOf(...readings);
  const slopes = localSlopes(atSeconds, celsius, 0, 7200);
  return findLegs({ atSeconds, celsius, noiseC: 0, ...slopes }).map(
    ({ kind, startSeconds, endSeconds, endC }) => [
      kind,
      startSeconds / 3600,
      endSeconds / 3600,
      endC,
    ],
  );
};

// Invented firings as one writes them down: a slowing climb, and a fall that slows down.
const CLIMB: Reading[] = [
  [0, 20],
  [2, 250],
  [4, 500],
  [6, 750],
  [8, 950],
  [10, 1120],
  [12, 1220],
];
const FALL: Reading[] = [
  [14, 1000],
  [16, 800],
];

describe('the legs of readings hours apart', () => {
  it('have their corner at the highest reading', () => {
    expect(legsOf(...CLIMB, ...FALL)).toEqual([
      ['ramp', 0, 12, 1220],
      ['cooling', 12, 16, 800],
    ]);
  });

  it('are a climb and a cooling however few they are', () => {
    expect(legsOf([0, 20], [4, 500], [8, 950], [12, 1220], [16, 800])).toEqual([
      ['ramp', 0, 12, 1220],
      ['cooling', 12, 16, 800],
    ]);
  });

  it('hold between the first and the last reading at the top', () => {
    expect(legsOf(...CLIMB, [13, 1218], ...FALL)).toEqual([
      ['ramp', 0, 12, 1220],
      ['hold', 12, 13, 1218],
      ['cooling', 13, 16, 800],
    ]);
  });

  it('are one climb where the record ends at the top', () => {
    expect(legsOf(...CLIMB)).toEqual([['ramp', 0, 12, 1220]]);
  });
});

describe('corners at the top', () => {
  const joints = [0, 38_000, 57_600];

  it('take the place of joints beside the highest reading', () => {
    const readings = readingsOf(...CLIMB, ...FALL);
    expect(cornersAtSparseTop(readings, joints)).toEqual([0, 43_200, 57_600]);
    expect(cornersAtSparseTop(readings, [0, 30_000, 57_600])).toEqual([0, 30_000, 43_200, 57_600]);
  });

  it('are left to the knees where readings stand close', () => {
    const atSeconds = Float64Array.from({ length: 961 }, (_, i) => 60 * i);
    const celsius = atSeconds.map((at) => 1220 - Math.abs(at - 43_200) / 36);
    expect(cornersAtSparseTop({ atSeconds, celsius }, joints)).toEqual(joints);
  });
});
