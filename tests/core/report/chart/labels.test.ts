import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeLabels, placeMarks, textWidth } from '../../../../core/report/chart/labels.ts';

describe('labels', () => {
  it('stay where they want to be if there is room', () => {
    const labels = [
      { text: 'drying', x: 0, y: 100, anchor: 'start' as const },
      { text: 'quartz', x: 0, y: 150, anchor: 'start' as const },
    ];
    expect(placeLabels(labels, 10, 0, 300)).toEqual(labels);
  });

  it('never cover each other, and stay within the plot', () => {
    const label = fc.record({
      text: fc.constantFrom('drying', 'quartz', 'bound water', 'burnout'),
      x: fc.integer({ min: 0, max: 200 }),
      y: fc.integer({ min: 20, max: 180 }),
      anchor: fc.constantFrom('start' as const, 'end' as const),
    });
    fc.assert(
      fc.property(fc.array(label, { maxLength: 12 }), (labels) => {
        const placed = placeLabels(labels, 10, 10, 190);
        const boxes = placed.map(({ text, x, y, anchor }) => {
          const width = textWidth(text, 10);
          return { left: anchor === 'start' ? x : x - width, width, y };
        });
        boxes.forEach((a, index) => {
          expect(a.y).toBeGreaterThanOrEqual(10);
          expect(a.y).toBeLessThanOrEqual(190);
          for (const b of boxes.slice(index + 1)) {
            const apart = a.left + a.width <= b.left || b.left + b.width <= a.left;
            expect(apart || Math.abs(a.y - b.y) >= 10).toBe(true);
          }
        });
      }),
    );
  });
});

describe('marks', () => {
  const room = { left: 0, top: 10, width: 900, height: 310 };

  it('never cover each other while there is room, and stay inside', () => {
    const mark = fc.record({
      x: fc.integer({ min: 0, max: 900 }),
      y: fc.integer({ min: 0, max: 300 }),
    });
    fc.assert(
      fc.property(fc.array(mark, { maxLength: 10 }), (marks) => {
        const placed = placeMarks(marks, 10, room);
        expect(placed).toHaveLength(marks.length);
        placed.forEach((a, index) => {
          expect(a.y).toBeGreaterThanOrEqual(10);
          expect(a.y).toBeLessThanOrEqual(320);
          for (const b of placed.slice(index + 1)) {
            expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThanOrEqual(20);
          }
        });
      }),
    );
  });

  it('go up before they go aside, and aside before they cover the curve', () => {
    const peak = { x: 400, y: 30 };
    const placed = placeMarks([peak, peak, peak, peak], 10, room);
    expect(placed.slice(0, 2).map(({ x }) => x)).toEqual([400, expect.any(Number)]);
    expect(placed.every(({ y }) => y <= 30)).toBe(true);
    expect(new Set(placed.map(({ x }) => x)).size).toBeGreaterThan(1);
  });
});
