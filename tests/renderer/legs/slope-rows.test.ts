import { describe, expect, it } from 'vitest';
import { wording } from '../../../core/wording/wording.ts';
import { bandRows, traceLegRows } from '../../../renderer/legs/slope-rows.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const document = exampleDocument('two-zones');

describe('bandRows', () => {
  it('parts the way up from the way down and loses none', () => {
    const words = wording(document, 'F');
    const up = bandRows(document, words, 'heating');
    const down = bandRows(document, words, 'cooling');
    expect(up.length + down.length).toBe(document.bands.length);
    expect(up.every(({ cells }) => cells[0]?.startsWith('up,'))).toBe(true);
    expect(down.every(({ cells }) => cells[0]?.startsWith('down,'))).toBe(true);
    expect(down.length).toBeGreaterThan(0);
  });
});

describe('traceLegRows', () => {
  it('says each leg of the curve with its slope in the reader’s unit, a hold without one', () => {
    const rows = traceLegRows(document, 'F');
    expect(rows).toHaveLength(document.trace.legs.length);
    document.trace.legs.forEach((leg, index) => {
      const slope = rows[index]!.cells[2];
      if (leg.kind === 'hold') expect(slope).toBe('–');
      else expect(slope).toMatch(/^[\d.]+ °F\/h$/);
    });
  });
});
