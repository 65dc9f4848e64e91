import type { CoupleClass, CoupleType, Options } from '../model/options.ts';
import { ASTM_E230_TOLERANCES } from '../reference/tolerances-astm-e230.ts';
import { IEC_60584_TOLERANCES, type ToleranceRow } from '../reference/tolerances-iec-60584.ts';

export type CoupleAssumption =
  /** No couple was named: ordinary type K wire, class 2. */
  | 'couple-type-assumed'
  /** A type without its class, or with a class that is not published for it: class 2. */
  | 'couple-class-assumed';

/** How far a new couple of a class may read from the truth, plus or minus. */
export interface CoupleTolerance {
  /** In °C at a temperature. */
  readonly toleranceC: (atC: number) => number;
  /** Where the published class ends. */
  readonly upToC: number;
  readonly assumptions: readonly CoupleAssumption[];
}

/** Common practice: most kilns carry ordinary type K, and class 2 is what is sold unasked. */
const ORDINARY_TYPE: CoupleType = 'K';
const ORDINARY_CLASS: CoupleClass = 'class-2';

const published = (type: CoupleType, grade: CoupleClass): ToleranceRow | null =>
  [...IEC_60584_TOLERANCES, ...ASTM_E230_TOLERANCES].find(
    (row) => row.class === grade && row.types.includes(type),
  ) ?? null;

/** Inside the class's range as printed; outside it the nearest formula is carried on. */
const toleranceAt = ({ ranges }: ToleranceRow, atC: number): number => {
  const range = ranges.find(({ toC }) => atC <= toC) ?? ranges.at(-1)!;
  return range.constantC + range.perDegree * (Math.max(atC, range.sinceC) - range.sinceC);
};

/** The tolerance of the couple that was named, or of an ordinary one. */
export const coupleTolerance = (couple: Options['couple']): CoupleTolerance => {
  const named = couple?.class === undefined ? null : published(couple.type, couple.class);
  const row = named ?? published(couple?.type ?? ORDINARY_TYPE, ORDINARY_CLASS)!;
  const assumptions: CoupleAssumption[] = [];
  if (couple === undefined) assumptions.push('couple-type-assumed');
  else if (named === null) assumptions.push('couple-class-assumed');
  return {
    toleranceC: (atC) => toleranceAt(row, atC),
    upToC: row.ranges.at(-1)!.toC,
    assumptions,
  };
};
