import { z } from 'zod';

/**
 * The names of pyrometric cones in order of heat-work, as the trade writes them: 022 is the coolest,
 * then down to 01, then 1 upwards. The leading zero is part of the name, so a cone is never a number.
 * Half cones are written 05.5 and 5.5.
 */
export const CONES = [
  ...['022', '021', '020', '019', '018', '017', '016', '015', '014', '013', '012', '011', '010'],
  ...['09', '08', '07', '06', '05.5', '05', '04', '03', '02', '01'],
  ...['1', '2', '3', '4', '5', '5.5', '6', '7', '8', '9', '10', '11', '12', '13', '14'],
] as const;

export type Cone = (typeof CONES)[number];

export const zCone = z.enum(CONES);

/** The kinds of cone whose end points are published separately. */
export const CONE_TYPES = ['self-supporting', 'large', 'small', 'iron-free'] as const;
export type ConeType = (typeof CONE_TYPES)[number];
export const zConeType = z.enum(CONE_TYPES);

/**
 * Where a cone stands on the scale on which one whole cone is 1: cone 1 is at 1, cone 01 at 0,
 * cone 06 at −5, cone 05½ at −4.5 and cone 5½ at 5.5.
 */
export const positionOfCone = (cone: Cone): number => {
  if (!cone.startsWith('0')) return Number(cone);
  // 05½ lies between 06 and 05: its half counts towards the hotter neighbour.
  return 1 - Number(cone.slice(1));
};

/**
 * Reads a cone as people write it: `06`, `^6`, `cone 6`, `Δ05½`, `5 1/2`, `05.5`. Returns null for
 * anything that is not one of {@link CONES}.
 */
export const parseCone = (text: string): Cone | null => {
  const bare = text
    .trim()
    .toLowerCase()
    .replace(/^(cone|[\^▲△∆δ])\s*/u, '')
    .replace(/\s*(½|\s1\/2|,5)$/u, '.5')
    .replace(/\s+/g, '');
  return CONES.find((cone) => cone === bare) ?? null;
};

/** How the trade prints a cone's name: `05½`, `6`. */
export const printedCone = (cone: Cone): string => cone.replace('.5', '½');

/** The cone `steps` hotter (or cooler, if negative) in the list of made cones, or null past its end. */
export const coneBeside = (cone: Cone, steps: number): Cone | null =>
  CONES[CONES.indexOf(cone) + steps] ?? null;
