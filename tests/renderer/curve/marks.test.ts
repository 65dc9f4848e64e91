import { describe, expect, it } from 'vitest';
import { wording } from '../../../core/wording/wording.ts';
import { letterMarks } from '../../../renderer/curve/marks.ts';
import type { Scene } from '../../../renderer/curve/scene.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const document = exampleDocument('troubled-firing');
const { durationSeconds } = document.trace;
const trace = {
  atSeconds: Float64Array.of(0, durationSeconds),
  celsius: Float64Array.of(20, 1200),
};
const finding = document.findings[0]!;
/** Three findings of one moment, half way through the record. */
const middle = durationSeconds / 2;
const crowded = {
  ...document,
  findings: [0, 1, 2].map(() => ({
    ...finding,
    evidence: [{ fromSeconds: middle, toSeconds: middle }],
  })),
};
const scene = {
  ...{ document: crowded, trace },
  words: wording(document, 'C'),
} as unknown as Scene;
const view = { from: 0, to: durationSeconds };
const area = { width: 600, top: 0, bottom: 400, heightOf: (value: number) => 400 - value / 4 };

describe('letters on the curve', () => {
  it('of one moment stand apart, and each leads back to it', () => {
    const marks = letterMarks(scene, view, area, 12);
    expect(marks).toHaveLength(3);
    for (const { footX, footY } of marks) {
      expect(footX).toBeCloseTo(300, 6);
      expect(footY).toBeCloseTo(400 - 610 / 4, 6);
    }
    marks.forEach((mark, nth) =>
      marks.slice(nth + 1).forEach((other) => {
        expect(Math.hypot(mark.x - other.x, mark.y - other.y)).toBeGreaterThan(24);
      }),
    );
  });

  it('out of view are left out', () => {
    expect(letterMarks(scene, { from: 0, to: middle - 1 }, area, 12)).toEqual([]);
  });
});
