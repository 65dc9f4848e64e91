import { describe, expect, it } from 'vitest';
import { seconds } from '../../../../core/units.ts';
import { mergedHoles, unbrokenRuns } from '../../../../core/report/chart/holes.ts';

const span = (from: number, to: number) => ({ fromSeconds: seconds(from), toSeconds: seconds(to) });

it('holes that touch or overlap are one', () => {
  const holes = [span(50, 60), span(0, 10), span(5, 20), span(20, 30), span(52, 55)];
  expect(mergedHoles(holes)).toEqual([span(0, 30), span(50, 60)]);
});

describe('unbroken runs', () => {
  const times = [0, 10, 20, 30, 40, 50];

  it('are one where there is no hole', () => {
    expect(unbrokenRuns(times, [])).toEqual([[0, 6]]);
  });

  it('are parted by each hole, whether or not it meets the samples', () => {
    expect(unbrokenRuns(times, [span(20, 30)])).toEqual([
      [0, 3],
      [3, 6],
    ]);
    expect(unbrokenRuns(times, [span(22, 28), span(41, 49)])).toEqual([
      [0, 3],
      [3, 5],
    ]);
  });

  it('do not mind the holes’ order, nor holes beyond the samples', () => {
    expect(unbrokenRuns(times, [span(70, 80), span(32, 38), span(12, 18)])).toEqual([
      [0, 2],
      [2, 4],
      [4, 6],
    ]);
  });

  it('are none where there is nothing to draw', () => {
    expect(unbrokenRuns([], [])).toEqual([]);
    expect(unbrokenRuns([5], [])).toEqual([]);
  });
});
