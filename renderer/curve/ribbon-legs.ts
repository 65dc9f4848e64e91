import type { AnalysisDocument } from '../../core/model/document.ts';
import { isCutByRecord } from '../../core/model/unseen-legs.ts';
import type { Span } from '../../core/model/scalars.ts';

/** One leg on the ribbon, planned or driven. */
export interface RibbonLeg extends Span {
  /** As in the table of legs, from 1. */
  readonly number: number;
  readonly row: 'planned' | 'driven';
  readonly kind: 'ramp' | 'hold' | 'cooling';
  readonly departs: boolean;
}

/** The legs on the clock, planned and driven; without a plan those that the trace shows. */
export const ribbonLegs = ({ alignment, trace }: AnalysisDocument): RibbonLeg[] => {
  const legs: RibbonLeg[] =
    alignment === null
      ? trace.legs.map(({ kind, startSeconds, endSeconds }, index) => ({
          ...{ number: index + 1, row: 'driven', kind, departs: false },
          ...{ fromSeconds: startSeconds, toSeconds: endSeconds },
        }))
      : alignment.legs.flatMap(({ kind, planned, actual, verdict }, index): RibbonLeg[] => {
          const number = index + 1;
          const span = (course: {
            startSeconds: Span['fromSeconds'];
            endSeconds: Span['toSeconds'];
          }) => ({
            fromSeconds: course.startSeconds,
            toSeconds: course.endSeconds,
          });
          const isCut = isCutByRecord(alignment.legs, index, trace);
          const departs = verdict !== 'as-planned' && !isCut;
          return [
            { number, row: 'planned', kind, departs: false, ...span(planned) },
            ...(actual ? [{ number, row: 'driven' as const, kind, departs, ...span(actual) }] : []),
          ];
        });
  return legs.filter(({ fromSeconds, toSeconds }) => toSeconds > fromSeconds);
};
