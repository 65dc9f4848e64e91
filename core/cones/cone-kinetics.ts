import { mean } from '../numeric/statistics.ts';
import { CONES, positionOfCone, type Cone, type ConeType } from '../model/cone.ts';
import { IRON_FREE_END_POINTS } from '../reference/end-points-iron-free.ts';
import { OLDER_LARGE_END_POINTS } from '../reference/end-points-older-large.ts';
import { SELF_SUPPORTING_END_POINTS } from '../reference/end-points-self-supporting.ts';
import { SMALL_END_POINTS } from '../reference/end-points-small.ts';
import type { EndPointTable } from '../reference/published-table.ts';
import type { Arrhenius } from './arrhenius.ts';
import { fitArrhenius, fitThreshold, type ChartedEndPoint } from './fit-arrhenius.ts';

/**
 * Where a cone's constants come from.
 * - `fitted`: E and threshold from this type's own chart, at two rates or more.
 * - `borrowed-activation`: the threshold from this type's chart, E from another cone or cone type,
 *   because the chart has one rate, or two that give no usable E.
 * - `between-neighbours`: the chart leaves the cone out; its end points are put midway by position.
 * - `borrowed-cone`: the chart ends before this cone; it is the self-supporting one.
 */
export type KineticsSource =
  'fitted' | 'borrowed-activation' | 'between-neighbours' | 'borrowed-cone';

export interface ConeKinetics extends Arrhenius {
  readonly cone: Cone;
  readonly position: number;
  readonly source: KineticsSource;
  /** Fitted minus charted end point per charted rate, in °C. */
  readonly residuals: readonly { readonly rateCPerHour: number; readonly residualC: number }[];
}

const TABLES: Readonly<Record<ConeType, EndPointTable>> = {
  'self-supporting': SELF_SUPPORTING_END_POINTS,
  large: OLDER_LARGE_END_POINTS,
  small: SMALL_END_POINTS,
  'iron-free': IRON_FREE_END_POINTS,
};

/**
 * Cones whose charted rates give no usable E, and the neighbour that lends its own. Between 60 and
 * 150 °C/h cone 022 is printed only 4 °C apart, where 021 has 17 and 020 has 12; no other low cone
 * comes near the E that this would mean.
 */
const LENDERS: Partial<Record<Cone, Cone>> = { '022': '020' };

const cellsOf = (table: EndPointTable, endPointsC: readonly (number | null)[]): ChartedEndPoint[] =>
  table.ratesCPerHour.flatMap((rateCPerHour, column) => {
    const endPointC = endPointsC[column] ?? null;
    return endPointC === null ? [] : [{ rateCPerHour, endPointC }];
  });

/** The printed cells of a cone, or null if the chart leaves it out. */
const printed = (table: EndPointTable, cone: Cone): ChartedEndPoint[] | null => {
  const row = table.rows.find(([name]) => name === cone);
  return row === undefined ? null : cellsOf(table, row[1]);
};

const nearestPrinted = (table: EndPointTable, cone: Cone, direction: 1 | -1) => {
  for (let at = CONES.indexOf(cone) + direction; ; at += direction) {
    const neighbour = CONES[at];
    if (neighbour === undefined) return null;
    const cells = printed(table, neighbour);
    if (cells !== null) return { cells, position: positionOfCone(neighbour) };
  }
};

/** End points of a cone that the chart leaves out between two that it prints; else null. */
const between = (table: EndPointTable, cone: Cone): ChartedEndPoint[] | null => {
  const cooler = nearestPrinted(table, cone, -1);
  const hotter = nearestPrinted(table, cone, 1);
  if (cooler === null || hotter === null) return null;
  const share = (positionOfCone(cone) - cooler.position) / (hotter.position - cooler.position);
  return cooler.cells.flatMap(({ rateCPerHour, endPointC }) => {
    const above = hotter.cells.find((cell) => cell.rateCPerHour === rateCPerHour);
    if (above === undefined) return [];
    return [{ rateCPerHour, endPointC: endPointC + share * (above.endPointC - endPointC) }];
  });
};

const fit = (
  cone: Cone,
  cells: readonly ChartedEndPoint[],
  source: KineticsSource,
  lentActivationK: number | null,
): ConeKinetics => {
  const { kinetics, residualsC } =
    lentActivationK === null ? fitArrhenius(cells) : fitThreshold(lentActivationK, cells);
  return {
    ...kinetics,
    cone,
    position: positionOfCone(cone),
    source,
    residuals: cells.map(({ rateCPerHour }, i) => ({ rateCPerHour, residualC: residualsC[i]! })),
  };
};

const selfSupporting = (): ConeKinetics[] => {
  const own = (cone: Cone): ConeKinetics =>
    fit(cone, printed(SELF_SUPPORTING_END_POINTS, cone)!, 'fitted', null);
  return CONES.map((cone) => {
    const lender = LENDERS[cone];
    if (lender === undefined) return own(cone);
    const cells = printed(SELF_SUPPORTING_END_POINTS, cone)!;
    return fit(cone, cells, 'borrowed-activation', own(lender).activationK);
  });
};

const ofOtherType = (coneType: ConeType): ConeKinetics[] => {
  const table = TABLES[coneType];
  return coneKinetics('self-supporting').map((lender) => {
    const { cone } = lender;
    const own = printed(table, cone);
    const cells = own ?? between(table, cone);
    if (cells === null) return { ...lender, source: 'borrowed-cone' };
    const lent = cells.length > 1 ? null : lender.activationK;
    if (own === null) return fit(cone, cells, 'between-neighbours', lent);
    return fit(cone, cells, lent === null ? 'fitted' : 'borrowed-activation', lent);
  });
};

const cache = new Map<ConeType, readonly ConeKinetics[]>();

/** The kinetics of every cone of a type, 022 to 14 in order; fitted on first use and kept. */
export const coneKinetics = (coneType: ConeType): readonly ConeKinetics[] => {
  const kept = cache.get(coneType);
  if (kept !== undefined) return kept;
  const made = coneType === 'self-supporting' ? selfSupporting() : ofOtherType(coneType);
  cache.set(coneType, made);
  return made;
};

/** The rates that a cone type is charted at, in ascending order, in °C/h. */
export const chartedRates = (coneType: ConeType): readonly number[] =>
  TABLES[coneType].ratesCPerHour;

/** The kinetics of one cone. */
export const kineticsOf = (coneType: ConeType, cone: Cone): ConeKinetics =>
  coneKinetics(coneType)[CONES.indexOf(cone)]!;

/**
 * How far the fitted end points lie from the self-supporting chart, as the root mean square over
 * its cells, cone 022 left out, in °C. Cones whose own cells leave the fit no freedom have no better
 * figure than this.
 */
export const chartScatterC = (): number => {
  const squares = coneKinetics('self-supporting')
    .filter((kinetics) => kinetics.source === 'fitted')
    .flatMap(({ residuals }) => residuals.map(({ residualC }) => residualC ** 2));
  return Math.sqrt(mean(squares));
};
