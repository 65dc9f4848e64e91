import { coneKinetics, type ConeKinetics } from '../cones/cone-kinetics.ts';
import { doseOf, movedTo, occupancyOf, topOf, type Occupancy } from '../cones/occupancy.ts';
import { standingOf, type Standing } from '../cones/position.ts';
import type { Cone, ConeType } from '../model/cone.ts';
import type { ObservedCone, Options } from '../model/options.ts';
import type { Trace } from '../model/trace.ts';
import { coupleTolerance, type CoupleTolerance } from './couple-tolerance.ts';
import { topOfFiring, type LegSpan, type TopOfFiring } from './top-of-firing.ts';

/** What is asked of a trace, and what is known besides it. */
export interface HeatWorkQuestion {
  /** The cone that was meant. */
  readonly target: Cone | null;
  /** Self-supporting unless told. */
  readonly coneType?: ConeType | undefined;
  readonly couple?: Options['couple'];
  readonly observedCones?: readonly ObservedCone[] | undefined;
  /** The stretches to divide the heat-work among: the alignment's, or the trace's own. */
  readonly legs: readonly LegSpan[];
  /**
   * Whether the record goes on until the heat-work was over. Left out, or `while-hot`, the record's
   * last temperature decides.
   */
  readonly recordEnds?: 'after-cooling' | 'while-hot' | undefined;
}

/** A firing ready to be measured: its hours at temperature as read, and how to correct them. */
export interface FiringRecord {
  readonly trace: Trace;
  readonly legs: readonly LegSpan[];
  readonly coneType: ConeType;
  readonly cones: readonly ConeKinetics[];
  readonly top: TopOfFiring;
  readonly occupancy: Occupancy;
  readonly tolerance: CoupleTolerance;
  /** The couple's tolerance at the top. */
  readonly topToleranceC: number;
}

/** Takes a trace apart once, for everything that is asked of it. */
export const firingRecord = (trace: Trace, question: HeatWorkQuestion): FiringRecord => {
  const coneType = question.coneType ?? 'self-supporting';
  const top = topOfFiring(trace, question.legs);
  const tolerance = coupleTolerance(question.couple);
  return {
    trace,
    legs: question.legs,
    coneType,
    cones: coneKinetics(coneType),
    top,
    occupancy: occupancyOf(trace),
    tolerance,
    topToleranceC: tolerance.toleranceC(top.topC),
  };
};

/**
 * The truth behind a reading, if the couple errs by `errorC` at the top: the error runs with
 * temperature as the couple's tolerance does, in proportion where the class is a percentage.
 */
export const truthOf = (
  { tolerance, topToleranceC }: FiringRecord,
  errorC: number,
): ((readC: number) => number) => {
  if (errorC === 0) return (readC) => readC;
  return (readC) => readC - (errorC * tolerance.toleranceC(readC)) / topToleranceC;
};

/** Doses of every cone if the readings err by `errorC` at the top. */
export const dosesWith = (record: FiringRecord, errorC: number): number[] => {
  const truth = movedTo(record.occupancy, truthOf(record, errorC));
  return record.cones.map((kinetics) => doseOf(kinetics, truth));
};

/** Where the firing stands if the readings err by `errorC` at the top. */
export const standingWith = (record: FiringRecord, errorC: number): Standing =>
  standingOf(record.cones, dosesWith(record, errorC));

/** Doses of every cone, as read, that the holds near the top gave. */
export const holdDoses = ({ trace, legs, cones, top }: FiringRecord): number[] => {
  const topC = topOf(trace.celsius);
  const holds = legs
    .filter(({ kind, startSeconds }) => kind === 'hold' && startSeconds >= top.rampFromSeconds)
    .map(({ startSeconds, endSeconds }) => occupancyOf(trace, startSeconds, endSeconds, topC));
  return cones.map((kinetics) => holds.reduce((sum, hold) => sum + doseOf(kinetics, hold), 0));
};
