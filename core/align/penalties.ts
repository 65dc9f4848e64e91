/**
 * The shapes of penalty that the search adds up. Each is in units of half a squared standard
 * deviation, as a negative log-likelihood is, so that different kinds of misfit can be weighed.
 */

/** A squared misfit that stops growing at `most`: beyond it, "not at all" is all that is said. */
export const capped = (deviation: number, scale: number, most: number): number =>
  Math.min(0.5 * (deviation / scale) ** 2, most);

/**
 * A misfit that goes on growing, but slowly once it is past `knee`: an interruption in mid-leg costs
 * much, without making every other arrangement look good.
 */
export const tempered = (cost: number, knee: number): number => knee * Math.log1p(cost / knee);
