import { describe, expect, it } from 'vitest';
import { spreadOf } from '../../../core/thermal/spread.ts';

const COVARIANCE = [
  [0.04, 0, 0, 0, 0],
  [0, 0.01, 0, 0, 0],
  [0, 0, 1, 0, 0],
  [0, 0, 0, 1, 0],
  [0, 0, 0, 0, 0.0144],
];
const FIT = {
  wall: { memorySeconds: 20_000, conductivityRise: 0.8 },
  load: { share: 1, coupling: 150 },
  power: 0.15,
  powerErrorGivenWall: 0.01,
  misfitShare: 0.01,
  covariance: COVARIANCE,
};

describe('the spread of a quantity of the fit', () => {
  it('of power times memory is its own error and the model’s', () => {
    const { value, low, high } = spreadOf(FIT, ({ wall, power }) =>
      Math.log(power * wall.memorySeconds),
    );
    expect(value).toBeCloseTo(Math.log(3000), 9);
    // 0.12 from the fit with 0.05 of the model, times 1.2816 for 80 % (normal tables).
    expect(high - value).toBeCloseTo(1.2816 * Math.hypot(0.12, 0.05), 4);
    expect(value - low).toBeCloseTo(high - value, 9);
  });

  it('of the conductivity’s rise alone knows nothing of the power', () => {
    const { value, high } = spreadOf(FIT, ({ wall }) => wall.conductivityRise);
    expect(high - value).toBeCloseTo(1.2816 * 0.1, 6);
  });
});
