import { describe, expect, test } from 'vitest';
import { minutesFallen } from '../../../core/findings/falls.ts';
import { seconds } from '../../../core/units.ts';
import { traceFrom, type CurvePoint } from '../../builders/trace.ts';

const fallen = (...corners: CurvePoint[]): number =>
  minutesFallen(traceFrom(corners), {
    startSeconds: seconds(0),
    endSeconds: seconds(corners.at(-1)![0] * 60),
  });

describe('the time a climb lost to falling', () => {
  test('runs from where it fell to where that temperature was regained', () => {
    expect(fallen([0, 500], [60, 600], [100, 540], [130, 600], [200, 800])).toBeCloseTo(70, -0.5);
  });

  test('adds up over falls', () => {
    const corners: CurvePoint[] = [
      ...([
        [0, 500],
        [60, 600],
        [80, 560],
        [100, 600],
      ] as const),
      ...([
        [160, 700],
        [180, 660],
        [200, 700],
        [260, 800],
      ] as const),
    ];
    expect(fallen(...corners)).toBeCloseTo(80, -0.5);
  });

  test.each([
    [
      'a straight climb',
      [
        [0, 500],
        [100, 700],
      ],
    ],
    [
      'a dip of 10 °C',
      [
        [0, 500],
        [60, 600],
        [80, 590],
        [90, 600],
        [150, 700],
      ],
    ],
    [
      'a fall that was never made up for',
      [
        [0, 500],
        [60, 600],
        [120, 500],
      ],
    ],
  ] as [string, CurvePoint[]][])('is none in %s', (_, corners) => {
    expect(fallen(...corners)).toBe(0);
  });
});
