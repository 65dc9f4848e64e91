import { describe, expect, it } from 'vitest';
import { alignmentFirings } from './bench-firings.ts';

describe('the firings for the alignment bench', () => {
  const firings = alignmentFirings(14, 20);

  it('come out the same from the same seed, and the first ones whatever the count', () => {
    const again = alignmentFirings(2, 20);
    expect(again).toEqual(firings.slice(0, 2));
    expect(alignmentFirings(1, 21)[0]!.readingC).not.toEqual(firings[0]!.readingC);
  });

  it('cover five schedules and more, all kilns, waiting and not, and idle time', () => {
    const kinds = (of: (firing: (typeof firings)[number]) => unknown): number =>
      new Set(firings.map(of)).size;
    expect(kinds(({ schedule }) => schedule.name)).toBeGreaterThanOrEqual(5);
    expect(kinds(({ setup }) => setup.kiln.name)).toBe(3);
    expect(kinds(({ setup }) => setup.controller?.waits)).toBe(2);
    expect(kinds(({ setup }) => setup.logger?.intervalSeconds)).toBeGreaterThanOrEqual(4);
    const idle = firings.map(({ setup }) => setup.idleMinutes!);
    expect(Math.max(...idle) - Math.min(...idle)).toBeGreaterThan(30);
  });

  it('are healthy: every programme runs to its end, every reading is there', () => {
    for (const { truth, readingC, name } of firings) {
      expect(truth.ended, name).toBe('complete');
      expect(truth.faults).toEqual([]);
      expect(readingC.some(Number.isNaN)).toBe(false);
    }
  });

  it('have a leg for every ramp and every hold of the schedule, in order', () => {
    for (const { truth, schedule } of firings) {
      const wanted = schedule.segments.flatMap(({ holdMinutes = 0 }, segment) => [
        `${segment} ramp`,
        ...(holdMinutes > 0 ? [`${segment} hold`] : []),
      ]);
      expect(truth.legs.map(({ segment, kind }) => `${segment} ${kind}`)).toEqual(wanted);
    }
  });
});
