import { describe, expect, it } from 'vitest';
import { overlayLayout } from '../../../../core/report/chart/overlay-layout.ts';
import { ribbonLegs } from '../../../../core/report/chart/ribbon.ts';
import { linearScale } from '../../../../core/report/chart/scale.ts';
import { exampleDocument } from '../../../fixtures/documents/load.ts';

describe('the ribbon', () => {
  const document = exampleDocument('troubled-firing');
  const layout = overlayLayout(true, 2);
  const time = linearScale(0, document.trace.durationSeconds, 64, 946);
  const legs = ribbonLegs(document, layout, time, 11);

  it('shows lateness as a sideways shift', () => {
    const climb = (row: string) =>
      legs.filter((leg) => leg.row === row && leg.kind === 'ramp').at(-1)!;
    const end = ({ box }: ReturnType<typeof climb>) => box.left + box.width;
    expect(end(climb('actual'))).toBeGreaterThan(end(climb('planned')));
  });

  it('marks the legs that depart, and leaves out what was only to begin', () => {
    expect(legs.filter(({ departs }) => departs)).toHaveLength(2);
    expect(legs.filter(({ row, kind }) => row === 'planned' && kind === 'cooling')).toEqual([]);
  });

  it('numbers a leg only where the number fits', () => {
    for (const { box, label } of legs) if (label !== null) expect(box.width).toBeGreaterThan(10);
    expect(legs.some(({ label }) => label === null)).toBe(true);
  });

  it('shows the trace’s own legs where there is no plan', () => {
    const bare = exampleDocument('no-schedule');
    const own = ribbonLegs(bare, overlayLayout(false, 1), time, 11);
    expect(own).toHaveLength(bare.trace.legs.length);
    expect(own.every(({ row }) => row === 'actual')).toBe(true);
  });
});
