import type { Alignment, Elements } from '../model/document.ts';
import type { ConeType } from '../model/cone.ts';
import type { Trace } from '../model/trace.ts';
import { measureCapability } from './capability.ts';
import { findCeiling, hottestConeAt60 } from './ceiling.ts';
import { fitKiln } from './fit-kiln.ts';
import { findLimited } from './limited.ts';
import { courseOfTrace } from './power-course.ts';
import { relativePower } from './relative-power.ts';
import type { Reference } from './reference.ts';

/**
 * What a firing says of the kiln's power and losses: its stretches at full power, how it heats and
 * cools against temperature, where it can go no hotter, and its power against a reference firing's.
 */
export const measureElements = (
  trace: Trace,
  alignment: Alignment | null,
  coneType: ConeType,
  reference: Reference,
): Elements => {
  const limited = findLimited(trace, alignment);
  const course = courseOfTrace(trace, limited);
  const { fit, reason } = fitKiln(course);
  const known = {
    limited,
    fit: fit && {
      wall: fit.wall,
      load: fit.load,
      power: fit.power,
      powerErrorGivenWall: fit.powerErrorGivenWall,
      misfitShare: fit.misfitShare,
    },
    fitReason: reason,
    ...relativeTo(reference, course),
  };
  if (fit === null || course === null) {
    return {
      ...known,
      capability: [],
      ...{ ceilingC: null, ceilingRange: null, hottestCone: null },
      // At its peak it had power for its losses, while its walls took up heat as well.
      ceilingAtLeastC: trace.summary.peakC,
    };
  }
  const ceiling = findCeiling(fit, course.roomC);
  return {
    ...known,
    capability: measureCapability(trace, course, fit),
    ceilingC: ceiling?.ceilingC ?? null,
    ceilingRange: ceiling?.range ?? null,
    ceilingAtLeastC: null,
    hottestCone: hottestConeAt60(course, fit, coneType),
  };
};

const relativeTo = (
  reference: Reference,
  course: ReturnType<typeof courseOfTrace>,
): Pick<Elements, 'relativePower' | 'relativePowerReason' | 'relativeLoad'> => {
  if (reference.known === null) {
    return { relativePower: null, relativePowerReason: reference.reason, relativeLoad: null };
  }
  const told = relativePower(course, reference.known);
  return {
    relativePower: told.relative,
    relativePowerReason: told.reason,
    relativeLoad: told.relative === null ? null : told.relativeLoad,
  };
};
