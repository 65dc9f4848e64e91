import { describe, expect, it } from 'vitest';
import { phasesIn } from '../../../../core/report/chart/phases.ts';
import { linearScale } from '../../../../core/report/chart/scale.ts';
import { exampleDocument } from '../../../fixtures/documents/load.ts';

describe('the ware’s phases', () => {
  const document = exampleDocument('good-firing');
  const plot = { left: 0, top: 0, width: 900, height: 300 };
  const time = linearScale(0, document.trace.durationSeconds, 0, 900);
  const names = document.bands.map(({ name }) => name);
  const height = linearScale(0, 1300, 300, 0);
  const { bands, labels } = phasesIn(document, names, plot, time, height, 10);

  it('lie on the side of the peak on which they happen', () => {
    const peakX = time(document.trace.peakAtSeconds);
    document.bands.forEach(({ direction }, index) => {
      const { left, width } = bands[index]!;
      expect(direction === 'heating' ? left : left + width).toBe(direction === 'heating' ? 0 : 900);
      expect(direction === 'heating' ? left + width : left).toBeCloseTo(peakX, 6);
    });
  });

  it('have their names inside the plot', () => {
    expect(labels.length).toBe(names.length);
    for (const { y } of labels) {
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(300);
    }
  });

  it('leave out what is about the peak and no phase of the ware', () => {
    const { peakC } = document.trace;
    const band = { ...document.bands[0]!, name: 'last-stretch', toC: peakC };
    const bare = { ...document, bands: [band] };
    expect(phasesIn(bare, ['last stretch'], plot, time, height, 10).bands).toEqual([]);
  });

  it('leave out a band that the plot does not reach', () => {
    const low = linearScale(0, 60, 300, 0);
    expect(phasesIn(document, names, plot, time, low, 10).bands).toEqual([]);
  });
});
