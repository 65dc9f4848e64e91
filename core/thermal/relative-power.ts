import type { AnalysisDocument } from '../model/document.ts';
import { fitPower, type KnownKiln, type NoFit } from './fit-kiln.ts';
import { courseOfDocument, type PowerCourse } from './power-course.ts';

/** Power over that of the reference firing, with an 80 % interval. */
export interface RelativePower {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export type RelativePowerResult =
  | {
      readonly relative: RelativePower;
      /** Heat capacity of ware and shelves over the reference firing's. */
      readonly relativeLoad: number;
      readonly reason: null;
    }
  | { readonly relative: null; readonly reason: NoFit | 'no-reference-fit' };

/** Half the width of an 80 % interval of the normal distribution, in standard deviations. */
const NORMAL_80 = 1.2816;
/**
 * What two firings of one kiln differ by in power as fitted where it was the same, as a standard
 * deviation: loads and their packing, supply, and all that the model leaves out. From the bench
 * `relative-power`; see this room's README.
 */
const BETWEEN_FIRINGS = 0.014;

/** What a firing's power was over that of another firing of the same kiln. */
export const relativePower = (
  course: PowerCourse | null,
  reference: KnownKiln | null,
): RelativePowerResult => {
  if (reference === null) return { relative: null, reason: 'no-reference-fit' };
  const { again, reason } = fitPower(course, reference);
  if (again === null) return { relative: null, reason };
  const value = again.power / reference.power;
  const deviation = Math.hypot(
    BETWEEN_FIRINGS,
    again.powerErrorGivenWall,
    reference.powerErrorGivenWall,
  );
  const factor = Math.exp(NORMAL_80 * deviation);
  return {
    relative: { value, low: value / factor, high: value * factor },
    relativeLoad: again.load.share / reference.load.share,
    reason: null,
  };
};

/** The same from two documents, for histories: the course is taken from the firing's curve. */
export const relativePowerOf = (
  firing: Pick<AnalysisDocument, 'curve' | 'trace' | 'elements'>,
  reference: Pick<AnalysisDocument, 'elements'>,
): RelativePowerResult => relativePower(courseOfDocument(firing), reference.elements?.fit ?? null);
