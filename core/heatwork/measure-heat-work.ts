import { positionOfCone } from '../model/cone.ts';
import type { HeatWork } from '../model/document.ts';
import type { Trace } from '../model/trace.ts';
import { accumulatedDose } from './accumulated.ts';
import { assumptionsOf } from './assumptions.ts';
import { firingParts } from './firing-parts.ts';
import { truthOf, type HeatWorkQuestion } from './firing-record.ts';
import { equivalentOf, marginOf } from './margins.ts';
import { measured, type Measured } from './measured.ts';
import { partsOf } from './parts.ts';
import { coupleErrorOf } from './place-errors.ts';
import { remediesFor } from './remedies.ts';
import { coneOfInterest, targetOf } from './target.ts';
import { positionRange } from './uncertainty.ts';

export type { HeatWorkQuestion } from './firing-record.ts';

const coneOf = ({
  record,
  uncertainty,
  standing,
  startsHot,
  endsHot,
  joinsHot,
}: Measured): HeatWork['cone'] => {
  const { low, high } = positionRange(record, uncertainty, standing.position);
  const isBound = startsHot || endsHot || joinsHot || standing.beyond;
  return {
    label: standing.label,
    position: standing.position,
    lowPosition: low,
    highPosition: isBound ? null : high,
    bound: isBound ? 'at-least' : 'both-ways',
  };
};

const remediesOf = (
  all: Measured,
  cone: HeatWork['cone'],
  target: HeatWork['target'],
): HeatWork['remedies'] => {
  const { position, lowPosition, highPosition } = cone;
  if (target === null || target.verdict === 'within' || position === null) return [];
  // A record that stopped early cannot show what was missing.
  if (cone.bound === 'at-least') return [];
  const parts = firingParts(all);
  if (parts === null) return [];
  const coolest = all.record.cones[0]!.position;
  return remediesFor(parts, {
    cones: all.record.cones,
    target: positionOfCone(target.cone),
    direction: target.verdict === 'under' ? 'more' : 'less',
    offCones: Math.abs(position - positionOfCone(target.cone)),
    downCones: position - (lowPosition ?? coolest),
    upCones: (highPosition ?? position) - position,
  });
};

/**
 * Measures a firing's heat-work in cones: doses, position with its 80 % range, where it came from,
 * and what would have brought the target down. With witness cones the readings are first corrected
 * by the error that the cones imply, and everything is told of the corrected firing. Null for a trace
 * of fewer than two samples. See the README of this room for what the range holds.
 */
export const measureHeatWork = (trace: Trace, question: HeatWorkQuestion): HeatWork | null => {
  if (trace.atSeconds.length < 2) return null;
  const all = measured(trace, question);
  const { record, doses } = all;
  const cone = coneOf(all);
  const target = targetOf(all, question.target);
  const interest = coneOfInterest(all, question.target);
  const truth = truthOf(record, all.errorC);
  return {
    cone,
    equivalentC: equivalentOf(record.cones, all.standing),
    byCone: record.cones.map((kinetics, i) => ({
      cone: kinetics.cone,
      dose: doses[i]!,
      marginC: marginOf(kinetics, doses[i]!),
    })),
    target,
    accumulated: accumulatedDose(trace, interest, truth),
    parts: partsOf(trace, record.legs, record.cones, interest, truth),
    remedies: remediesOf(all, cone, target),
    coupleErrorC: coupleErrorOf(trace, question, all.uncertainty),
    assumptions: assumptionsOf(all, question.target),
  };
};
