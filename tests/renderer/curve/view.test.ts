import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seconds } from '../../../core/units.ts';
import {
  about,
  between,
  isWhole,
  limitsOf,
  momentAt,
  panned,
  placeIn,
  within,
  zoomed,
  type View,
} from '../../../renderer/curve/view.ts';

const limits = limitsOf({ from: 0, to: 36_000 }, 60);
const span = (from: number, to: number) => ({ fromSeconds: seconds(from), toSeconds: seconds(to) });
const widthOf = ({ from, to }: View): number => to - from;

const anyView = fc
  .tuple(
    fc.double({ min: 0, max: 36_000, noNaN: true }),
    fc.double({ min: 0, max: 36_000, noNaN: true }),
  )
  .map(([a, b]) => within(limits, { from: Math.min(a, b), to: Math.max(a, b) }));

describe('how closely one can look', () => {
  it('is a few samples, and never less than a minute', () => {
    expect(limitsOf({ from: 0, to: 36_000 }, 60).leastSeconds).toBe(480);
    expect(limitsOf({ from: 0, to: 36_000 }, 0.1).leastSeconds).toBe(60);
  });

  it('is the whole of a record that is shorter than that', () => {
    expect(limitsOf({ from: 0, to: 30 }, 10).leastSeconds).toBe(30);
  });
});

describe('zooming', () => {
  it('keeps the moment under the pointer where it is', () => {
    const view = { from: 6000, to: 18_000 };
    const closer = zoomed(limits, view, 9000, 0.5);
    expect(widthOf(closer)).toBe(6000);
    expect(placeIn(closer, 800, 9000)).toBeCloseTo(placeIn(view, 800, 9000), 9);
  });

  it('stops at the closest and at the whole', () => {
    expect(widthOf(zoomed(limits, { from: 100, to: 1100 }, 600, 0.0001))).toBe(480);
    expect(zoomed(limits, { from: 6000, to: 18_000 }, 9000, 100)).toEqual(limits.whole);
  });

  it('never leaves what there is to see, whatever is asked', () => {
    fc.assert(
      fc.property(
        anyView,
        fc.double({ min: -50_000, max: 50_000, noNaN: true }),
        fc.double({ min: 0.001, max: 1000, noNaN: true }),
        (view, moment, factor) => {
          const next = zoomed(limits, view, moment, factor);
          expect(next.from).toBeGreaterThanOrEqual(-1e-6);
          expect(next.to).toBeLessThanOrEqual(36_000 + 1e-6);
          expect(widthOf(next)).toBeGreaterThanOrEqual(480 - 1e-6);
        },
      ),
    );
  });
});

describe('panning', () => {
  it('moves without changing the width, and stops at the ends', () => {
    expect(panned(limits, { from: 6000, to: 9000 }, 1000)).toEqual({ from: 7000, to: 10_000 });
    expect(panned(limits, { from: 6000, to: 9000 }, 1e6)).toEqual({ from: 33_000, to: 36_000 });
    expect(panned(limits, { from: 6000, to: 9000 }, -1e6)).toEqual({ from: 0, to: 3000 });
  });

  it('comes back to where it was, away from the ends', () => {
    fc.assert(
      fc.property(fc.double({ min: -2000, max: 2000, noNaN: true }), (by) => {
        const view = { from: 12_000, to: 15_000 };
        const back = panned(limits, panned(limits, view, by), -by);
        expect(back.from).toBeCloseTo(view.from, 6);
        expect(back.to).toBeCloseTo(view.to, 6);
      }),
    );
  });
});

describe('bringing stretches into view', () => {
  it('shows all of them with room about them', () => {
    const view = about(limits, [span(10_000, 12_000), span(15_000, 16_000)]);
    expect(view.from).toBeLessThan(10_000);
    expect(view.to).toBeGreaterThan(16_000);
    expect(widthOf(view)).toBeLessThan(36_000);
  });

  it('shows something about a single moment', () => {
    const view = about(limits, [span(20_000, 20_000)]);
    expect((view.from + view.to) / 2).toBeCloseTo(20_000, 6);
    expect(widthOf(view)).toBeGreaterThan(1000);
  });

  it('cuts the room at the ends and leaves the stretch whole', () => {
    const view = about(limits, [span(30_000, 36_000)]);
    expect(view.to).toBe(36_000);
    expect(view.from).toBeLessThan(30_000);
  });

  it('shows everything where there is no stretch', () => {
    expect(about(limits, [])).toEqual(limits.whole);
  });
});

describe('places across the plot', () => {
  it('go to moments and back', () => {
    fc.assert(
      fc.property(anyView, fc.double({ min: 0, max: 800, noNaN: true }), (view, place) => {
        expect(placeIn(view, 800, momentAt(view, 800, place))).toBeCloseTo(place, 6);
      }),
    );
  });

  it('know the whole, but for what no eye would miss', () => {
    expect(isWhole(limits, { from: 0, to: 36_000 })).toBe(true);
    expect(isWhole(limits, { from: 10, to: 35_990 })).toBe(true);
    expect(isWhole(limits, { from: 600, to: 36_000 })).toBe(false);
  });

  it('are reached on the way from one view to another', () => {
    const [from, to] = [
      { from: 0, to: 100 },
      { from: 50, to: 60 },
    ];
    expect(between(from, to, 0)).toEqual(from);
    expect(between(from, to, 0.5)).toEqual({ from: 25, to: 80 });
    expect(between(from, to, 1)).toEqual(to);
  });
});
