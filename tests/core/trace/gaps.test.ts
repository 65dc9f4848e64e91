import { describe, expect, it } from 'vitest';
import { findGaps, findNoReadings } from '../../../core/trace/gaps.ts';

describe('gaps', () => {
  const atSeconds = Float64Array.from([0, 60, 120, 180, 1200, 1260, 1380, 1440]);

  it('are pauses much longer than the interval; a lost sample is none', () => {
    expect(findGaps(atSeconds, 60)).toEqual([{ fromSeconds: 180, toSeconds: 1200 }]);
  });

  it('are none in readings taken by hand every half hour', () => {
    expect(findGaps(Float64Array.of(0, 1800, 3000, 6000), 1800)).toEqual([]);
  });
});

describe('stretches without a reading', () => {
  const atSeconds = Float64Array.from([0, 60, 300, 360, 600]);

  it('are as long as the rows that stand for them', () => {
    expect(findNoReadings(atSeconds, [120, 180, 240, 420], 60)).toEqual([
      { fromSeconds: 90, toSeconds: 270 },
      { fromSeconds: 390, toSeconds: 450 },
    ]);
  });

  it('are parted by a single good reading', () => {
    const spans = findNoReadings(Float64Array.of(0, 120, 240), [60, 180], 60);
    expect(spans.map(({ fromSeconds, toSeconds }) => toSeconds - fromSeconds)).toEqual([60, 60]);
  });

  it('do not reach into the samples beside them, nor past the record', () => {
    expect(findNoReadings(Float64Array.of(0, 50, 100), [60], 60)).toEqual([
      { fromSeconds: 50, toSeconds: 90 },
    ]);
    expect(findNoReadings(atSeconds, [660, 720], 60)).toEqual([
      { fromSeconds: 630, toSeconds: 720 },
    ]);
  });

  it('begin with the record where its first rows had no reading', () => {
    const beforeIt = [-120, -60, 20];
    expect(findNoReadings(atSeconds, beforeIt, 60)).toEqual([{ fromSeconds: 0, toSeconds: 50 }]);
    expect(findNoReadings(atSeconds, [-120, -60], 60)).toEqual([]);
  });
});
