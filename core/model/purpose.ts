import { positionOfCone, type Cone } from './cone.ts';
import type { AnalysisDocument } from './document.ts';
import type { Options } from './options.ts';

export type Purpose = NonNullable<Options['purpose']>;

/** What a firing was for, and whether a person said so rather than its cone. */
export interface FiringPurpose {
  readonly purpose: Purpose;
  readonly isTold: boolean;
}

/** Words by which a schedule says what it is for. */
const NAMED: readonly [word: RegExp, purpose: Purpose][] = [
  [/bis(que|cuit|k\b)/i, 'bisque'],
  [/gla[zs]|glost/i, 'glaze'],
  [/decal|lustre|luster|enamel/i, 'other'],
];

/**
 * Common practice: from cone 1 up ware is glazed and was fired before; cones 010 to 01 are bisque (or
 * low glazes, which take what a bisque takes); cooler ones are for decals and lustres.
 */
const purposeByCone = (cone: Cone): Purpose => {
  const position = positionOfCone(cone);
  if (position >= positionOfCone('1')) return 'glaze';
  return position >= positionOfCone('010') ? 'bisque' : 'other';
};

/**
 * What a firing was for: as told, as the schedule's name says, else by the cone that was meant or, for
 * want of one, reached. Null where nothing shows it.
 */
export const purposeOf = ({
  options,
  schedule,
  heatWork,
}: Pick<AnalysisDocument, 'options' | 'schedule' | 'heatWork'>): FiringPurpose | null => {
  if (options.purpose !== undefined) return { purpose: options.purpose, isTold: true };
  const named = NAMED.find(([word]) => word.test(schedule?.name ?? ''));
  if (named !== undefined) return { purpose: named[1], isTold: true };
  const cone = heatWork?.target?.cone ?? schedule?.cone ?? heatWork?.cone.label ?? null;
  return cone === null ? null : { purpose: purposeByCone(cone), isTold: false };
};
