import { describe, expect, it } from 'vitest';
import { overlayOf, type Overlay } from '../../../../core/report/chart/overlay.ts';
import { EXAMPLE_DOCUMENTS, exampleDocument } from '../../../fixtures/documents/load.ts';

const names = { bands: [], letters: ['A', 'B', 'C', 'D', 'E', 'F'] };
const xs = (path: string) => [...path.matchAll(/([\d.]+) [\d.]+/g)].map(([, x]) => Number(x));

describe.each([...EXAMPLE_DOCUMENTS])('the overlay of %s', (name) => {
  const document = exampleDocument(name);
  const overlay = overlayOf(document, 'F', names);

  it('keeps all lines inside the plot', () => {
    const { left, width } = overlay.layout.plot;
    for (const path of [overlay.actual, overlay.planned]) {
      for (const x of xs(path)) {
        expect(x).toBeGreaterThanOrEqual(left - 0.1);
        expect(x).toBeLessThanOrEqual(left + width + 0.1);
      }
    }
  });

  it('has round ticks of temperature in the reader’s unit', () => {
    const { temperatureTicks } = overlay;
    expect(temperatureTicks.length).toBeGreaterThanOrEqual(4);
    expect(temperatureTicks.every(({ value }) => value % 100 === 0)).toBe(true);
    const peakF = document.trace.peakC * 1.8 + 32;
    expect(temperatureTicks.at(-1)!.value).toBeGreaterThanOrEqual(peakF);
  });

  it('labels the clock with room between the labels', () => {
    const gaps = overlay.timeTicks.slice(1).map(({ at }, i) => at - overlay.timeTicks[i]!.at);
    expect(Math.min(...gaps)).toBeGreaterThan(45);
  });
});

describe('the overlay of a troubled firing', () => {
  const overlay: Overlay = overlayOf(exampleDocument('troubled-firing'), 'C', names);

  it('letters each finding at its place, apart from the others', () => {
    expect(overlay.letters.map(({ letter }) => letter)).toEqual(names.letters);
    overlay.letters.forEach((a, index) => {
      for (const b of overlay.letters.slice(index + 1)) {
        expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(18);
      }
    });
  });

  it('leaves the holes of the record open', () => {
    expect(overlay.holes).toHaveLength(2);
    expect(overlay.actual.split('M')).toHaveLength(4);
    for (const { left, width } of overlay.holes) {
      const inside = xs(overlay.actual).filter((x) => x > left + 0.1 && x < left + width - 0.1);
      expect(inside).toEqual([]);
    }
  });

  it('fills where the kiln was notably off, and on which side', () => {
    expect(overlay.fills.map(({ side }) => side)).toContain('cold');
    expect(overlay.fills.map(({ side }) => side)).toContain('hot');
    expect(overlayOf(exampleDocument('good-firing'), 'C', names).fills).toEqual([]);
  });

  it('has no difference without a plan', () => {
    const bare = overlayOf(exampleDocument('no-schedule'), 'C', names);
    expect(bare.difference).toBeNull();
    expect(bare.planned).toBe('');
  });
});
