import { parseCone, positionOfCone, type Cone } from '../model/cone.ts';

/** Chosen: namesakes closer than this (01 and 1) cannot be told from an ordinary miss. */
const APART_CONES = 3;

/** The cone with the zero added or taken away, or null where there is none far enough off. */
export const namesakeOf = (cone: Cone): Cone | null => {
  const other = parseCone(cone.startsWith('0') ? cone.slice(1) : `0${cone}`);
  if (other === null) return null;
  return Math.abs(positionOfCone(other) - positionOfCone(cone)) < APART_CONES ? null : other;
};
