import { standingOf, type Standing } from '../cones/position.ts';
import type { Trace } from '../model/trace.ts';
import {
  dosesWith,
  firingRecord,
  type FiringRecord,
  type HeatWorkQuestion,
} from './firing-record.ts';
import { bestErrorC, uncertaintyOf, type Uncertainty } from './uncertainty.ts';

/** A record that begins or ends closer under its top than this has not seen all the heat-work. */
const STARTS_HOT_BELOW_TOP_C = 150;
const ENDS_HOT_BELOW_TOP_C = 100;

/** The record, the error it is corrected by, and what came of it. */
export interface Measured {
  readonly record: FiringRecord;
  readonly uncertainty: Uncertainty;
  readonly errorC: number;
  readonly doses: readonly number[];
  readonly standing: Standing;
  readonly startsHot: boolean;
  readonly endsHot: boolean;
  /** Whether the kiln was near the top at the hole between two joined logs. */
  readonly joinsHot: boolean;
}

/** Whether the readings at either end of the hole between two logs lie near the top. */
const joinsHot = ({ smoothC, joinedAt }: Trace, topC: number): boolean => {
  if (joinedAt === undefined) return false;
  return Math.max(smoothC[joinedAt - 1]!, smoothC[joinedAt]!) > topC - ENDS_HOT_BELOW_TOP_C;
};

/** Reads the doses off a trace, corrected by witness cones where some were seen. */
export const measured = (trace: Trace, question: HeatWorkQuestion): Measured => {
  const record = firingRecord(trace, question);
  const uncertainty = uncertaintyOf(record, question.observedCones ?? []);
  const errorC = bestErrorC(uncertainty);
  const doses = dosesWith(record, errorC);
  const { topC } = record.top;
  const startC = trace.smoothC[0]!;
  const endC = trace.smoothC.at(-1)!;
  return {
    record,
    uncertainty,
    errorC,
    doses,
    standing: standingOf(record.cones, doses),
    startsHot: startC > topC - STARTS_HOT_BELOW_TOP_C,
    endsHot: question.recordEnds !== 'after-cooling' && endC > topC - ENDS_HOT_BELOW_TOP_C,
    joinsHot: joinsHot(trace, topC),
  };
};
