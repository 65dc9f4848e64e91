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

  it('reach from the last good sample to the next one', () => {
    expect(findNoReadings(atSeconds, [120, 180, 240, 420])).toEqual([
      { fromSeconds: 60, toSeconds: 300 },
      { fromSeconds: 360, toSeconds: 600 },
    ]);
  });

  it('are bounded by the record where no good sample follows', () => {
    expect(findNoReadings(atSeconds, [660, 720])).toEqual([{ fromSeconds: 600, toSeconds: 720 }]);
    expect(findNoReadings(Float64Array.of(120, 180), [0, 60])).toEqual([
      { fromSeconds: 0, toSeconds: 120 },
    ]);
  });
});
