import { expect, it } from 'vitest';
import { celsius, seconds } from '../../../core/units.ts';
import { deskPlotShape } from '../../../renderer/desk/desk-plot-shape.ts';

const CURVE = {
  atSeconds: [0, 3600, 7200].map(seconds),
  celsius: [20, 1000, 500].map(celsius),
};
const shapeOf = (unit: 'C' | 'F') => deskPlotShape(CURVE, unit);

it('the curve stands within its axes, in the reader’s unit', () => {
  const shape = shapeOf('C');
  expect(shape.temperatureTicks.map(({ value }) => value)).toEqual([0, 500, 1000]);
  expect(shape.timeTicks.at(-1)).toEqual({ value: 7200, at: 624 });
  expect(shape.line).toMatch(/^M44 \d/);
  expect(shape.line.split('L')).toHaveLength(3);
  expect(shapeOf('F').temperatureTicks.at(-1)!.value).toBe(2000);
});
