import { describe, expect, it } from 'vitest';
import { leastSquares, solveLinear } from '../../../core/numeric/least-squares.ts';

/**
 * NIST Statistical Reference Datasets, nonlinear regression, Misra1a (lower difficulty): volume
 * against pressure of monomolecular adsorption, y = b1·(1 − exp(−b2·x)). Data and certified values
 * from memory of the published file.
 */
const MISRA1A: readonly (readonly [y: number, x: number])[] = [
  [10.07, 77.6],
  [14.73, 114.9],
  [17.94, 141.1],
  [23.93, 190.8],
  [29.61, 239.9],
  [35.18, 289.0],
  [40.02, 332.8],
  [44.82, 378.4],
  [50.76, 434.8],
  [55.05, 477.3],
  [61.01, 536.8],
  [66.4, 593.1],
  [75.47, 689.1],
  [81.78, 760.0],
];

describe('least squares', () => {
  it('meets the certified values of a published nonlinear problem from its first start', () => {
    const { parameters, covariance, squares } = leastSquares(
      ([lnB1 = 0, lnB2 = 0]) =>
        MISRA1A.map(([y, x]) => y - Math.exp(lnB1) * (1 - Math.exp(-Math.exp(lnB2) * x))),
      [Math.log(500), Math.log(1e-4)],
    );
    const [b1 = NaN, b2 = NaN] = parameters.map(Math.exp);
    expect(b1).toBeCloseTo(238.94212918, 2);
    expect(b2).toBeCloseTo(5.5015643181e-4, 8);
    expect(squares).toBeCloseTo(0.12455138894, 6);
    // Certified standard deviation of b1: 2.7070075241, with 12 degrees of freedom.
    const deviation = b1 * Math.sqrt((covariance[0]![0]! * squares) / 12);
    expect(deviation).toBeCloseTo(2.7070075241, 1);
  });

  it('gives a line through three points and its covariance as worked out by hand', () => {
    // y = a + b·x at x = 0, 1, 2: JᵀJ = [[3, 3], [3, 5]], whose inverse is [[5, −3], [−3, 3]] / 6.
    const { parameters, covariance, squares } = leastSquares(
      ([a = 0, b = 0]) => [1 - a, 2 - (a + b), 4 - (a + 2 * b)],
      [0, 0],
    );
    expect(parameters[0]).toBeCloseTo(5 / 6, 5);
    expect(parameters[1]).toBeCloseTo(3 / 2, 5);
    expect(squares).toBeCloseTo(1 / 6, 8);
    expect(covariance.flat().map((value) => value * 6)).toEqual(
      [5, -3, -3, 3].map((value) => expect.closeTo(value, 4) as number),
    );
  });

  it('solves a linear system that needs its rows exchanged', () => {
    expect(
      solveLinear(
        [
          [0, 2],
          [3, 1],
        ],
        [4, 5],
      ),
    ).toEqual([1, 2]);
  });
});
