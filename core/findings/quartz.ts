import type { Options } from '../model/options.ts';
import { limitFor } from './ware.ts';

/** Quartz inverts at 573 °C (reference notes, seen); within this stretch all ware passes it. */
export const QUARTZ = { highC: 600, lowC: 550, keptC: 25 } as const;

/** Cristobalite changes at 220–226 °C (reference notes, seen); ware dunts from 250 to 200. */
export const CRISTOBALITE = { highC: 250, lowC: 200, keptC: 25 } as const;

/**
 * Ordinary ware (chosen: everyday glaze firings climb through at up to 180 °C/h, and industry goes
 * faster). By the square of the thickness it comes at 16 mm to the 50 °C/h that a published text on
 * sanitary ware advises for large pieces …
 */
const ORDINARY_C_PER_HOUR = 200;
/** … than which no text seen asks for less. */
const SLOWEST_C_PER_HOUR = 50;

/** The fastest rate, either way, at which ware of a thickness goes through a sudden change of size. */
export const quartzLimit = (ware: Options['ware']): number =>
  Math.max(SLOWEST_C_PER_HOUR, limitFor(ORDINARY_C_PER_HOUR, ware));
