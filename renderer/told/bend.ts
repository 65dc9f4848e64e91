import { clamped } from '../controls/number-text.ts';

/** A cone leans a little before it bends, so that it bends one way; the drawing leans it so. */
const LEAN_DEGREES = 8;
/** The tip is level with the base: the end point. */
export const DOWN_DEGREES = 90;
/** Bent further than this a cone lies flat, and how far past is no longer to be read (chosen). */
export const MOST_BENT_DEGREES = 105;
/** Below this no eye tells the cone from an upright one (chosen, as in the reckoning). */
const UPRIGHT_BELOW_DEGREES = 5;

export const clampedBend = (degrees: number): number =>
  clamped(Math.round(degrees), 0, MOST_BENT_DEGREES);

/**
 * The bend at which a drawn cone's tip points to a place, given from the cone's foot: to the right,
 * and upwards.
 */
export const bendTowards = (right: number, up: number): number => {
  const angle = (Math.atan2(right, up) * 180) / Math.PI;
  // Behind the cone's back: nearer to upright than to anything else.
  if (angle < -90) return clampedBend(MOST_BENT_DEGREES);
  if (angle >= DOWN_DEGREES) return clampedBend(angle);
  return clampedBend((angle - LEAN_DEGREES) / (1 - LEAN_DEGREES / DOWN_DEGREES));
};

/** How far a key moves the bend; null for a key that does not. */
export const bendByKey = (key: string, bend: number): number | null => {
  switch (key) {
    case 'ArrowUp':
    case 'ArrowRight':
      return clampedBend(bend + 1);
    case 'ArrowDown':
    case 'ArrowLeft':
      return clampedBend(bend - 1);
    case 'PageUp':
      return clampedBend(bend + 15);
    case 'PageDown':
      return clampedBend(bend - 15);
    case 'Home':
      return 0;
    case 'End':
      return DOWN_DEGREES;
    default:
      return null;
  }
};

/** A bend in the words a potter would use. */
export const bendWords = (degrees: number): string => {
  if (degrees < UPRIGHT_BELOW_DEGREES) return 'upright';
  if (degrees < DOWN_DEGREES) return `bent ${Math.round(degrees)}°`;
  return degrees > DOWN_DEGREES ? 'past down, flat' : 'down: tip level with its base';
};
