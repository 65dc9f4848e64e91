import type { ConeKinetics } from '../cones/cone-kinetics.ts';
import { doseOf, movedTo, occupancyOf, topOf } from '../cones/occupancy.ts';
import { standingOf } from '../cones/position.ts';
import type { HeatWork } from '../model/document.ts';
import type { Trace } from '../model/trace.ts';
import { seconds } from '../units.ts';
import type { LegSpan } from './top-of-firing.ts';

/** Where the heat-work came from: each leg in time order, with its share of one cone's dose. */
export const partsOf = (
  trace: Trace,
  legs: readonly LegSpan[],
  cones: readonly ConeKinetics[],
  shareOf: ConeKinetics,
  toTruth: (readC: number) => number,
): HeatWork['parts'] => {
  const ordered = [...legs].sort((a, b) => a.startSeconds - b.startSeconds);
  const moments = [...new Set(ordered.flatMap((leg) => [leg.startSeconds, leg.endSeconds]))].sort(
    (a, b) => a - b,
  );
  const topC = topOf(trace.celsius);
  const sums = cones.map(() => 0);
  const cumulative = new Map<number, readonly number[]>();
  [...moments, Infinity].forEach((moment, index) => {
    const span = occupancyOf(trace, moments[index - 1] ?? -Infinity, moment, topC);
    const truth = movedTo(span, toTruth);
    cones.forEach((kinetics, i) => (sums[i] = sums[i]! + doseOf(kinetics, truth)));
    cumulative.set(moment, [...sums]);
  });
  const own = cones.indexOf(shareOf);
  const total = sums[own]!;
  return ordered.map(({ kind, startSeconds, endSeconds }) => {
    const [before, after] = [cumulative.get(startSeconds)!, cumulative.get(endSeconds)!];
    const [from, to] = [standingOf(cones, before), standingOf(cones, after)];
    const isPlaced = from.position !== null && to.position !== null;
    return {
      kind,
      fromSeconds: seconds(startSeconds),
      toSeconds: seconds(endSeconds),
      doseShare: total > 0 ? Math.min((after[own]! - before[own]!) / total, 1) : 0,
      positions: isPlaced ? to.position - from.position : null,
    };
  });
};
