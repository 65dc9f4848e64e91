import type { Load, Wall } from './wall-model.ts';

/**
 * What is known of small kilns before any log (chosen from usual figures): walls of 65 to 115 mm of
 * insulating brick, of diffusivity 0.2 to 0.5 mm²/s, remember for 2 to 18 hours; their conductivity
 * about doubles up to 1000 °C; ware and shelves hold about what the wall does; radiation at 1000 °C
 * is some 300 W/(m²·K) against the wall's 2; a few times a steady 1000 °C is what kilns are built for.
 *
 * The parameters are ln memory, rise, ln load, ln coupling and ln (power · memory), in this order.
 */
export const PRIOR_MEANS = [Math.log(6 * 3600), 0.8, 0, Math.log(150), Math.log(3000)] as const;
export const PRIOR_DEVIATIONS = [0.7, 0.5, 0.7, 0.5, 1] as const;

/** The wall that the first two parameters mean. */
export const wallOf = ([lnMemory = 0, rise = 0]: readonly number[]): Wall => ({
  memorySeconds: Math.exp(lnMemory),
  conductivityRise: rise,
});

/** A load by the logarithms of its share and its coupling. */
export const loadOf = (lnShare: number, lnCoupling: number): Load => ({
  share: Math.exp(lnShare),
  coupling: Math.exp(lnCoupling),
});

/** The power with cold elements, in °C/s; the prior knows it in steady °C across a cold wall. */
export const powerOf = (parameters: readonly number[]): number =>
  Math.exp(parameters[4]! - parameters[0]!);

/** How far parameters lie off what is known of them, in its deviations: residuals for a fit. */
export const offPrior = (
  parameters: readonly number[],
  means: readonly number[],
  deviations: readonly number[],
): number[] => parameters.map((value, i) => (value - means[i]!) / deviations[i]!);
