import type { AnalysisDocument } from '../model/document.ts';
import { hotPowerFactor } from '../thermal/hot-wire.ts';
import { courseOfDocument } from '../thermal/power-course.ts';
import { requiredPower } from '../thermal/wall-model.ts';
import { SECONDS_PER_HOUR } from '../units.ts';

/** The cone chart's rates are those over the last 100 °C. */
const LAST_RAMP_DELTA_C = 100;
/** The chart's middle rate, for a firing without a schedule. */
const CHART_C_PER_HOUR = 60;

type Fired = Pick<AnalysisDocument, 'curve' | 'trace' | 'elements' | 'schedule'>;

/** The last climb as the schedule asks for it; without one, the chart's to where the kiln got. */
const lastClimb = ({ schedule, trace }: Fired): { toC: number; rateCPerHour: number } | null => {
  if (schedule === null) return { toC: trace.peakC, rateCPerHour: CHART_C_PER_HOUR };
  const { segments } = schedule;
  const topC = Math.max(...segments.map(({ targetC }) => targetC));
  const last = segments.findIndex(({ targetC }) => targetC === topC);
  const segment = segments[last];
  if (segment === undefined) return null;
  const { rateCPerHour, minutes } = segment;
  if (typeof rateCPerHour === 'number') return { toC: topC, rateCPerHour };
  const fromC = segments[last - 1]?.targetC;
  if (minutes === null || fromC === undefined) return null;
  return { toC: topC, rateCPerHour: ((topC - fromC) * 60) / minutes };
};

/**
 * The share of this firing's own full power that its last ramp needed at its end, the kiln being as it
 * was fitted and loaded: the record as it ran up to 100 °C under the top, and the ramp from there. Null
 * where the kiln could not be fitted, never came so far, or the schedule asks for no rate there.
 */
export const lastRampShare = (document: Fired): number | null => {
  const fit = document.elements?.fit ?? null;
  const course = courseOfDocument(document);
  const climb = lastClimb(document);
  if (fit === null || course === null || climb === null) return null;
  const from = course.celsius.findIndex((value) => value >= climb.toC - LAST_RAMP_DELTA_C);
  if (from < 0) return null;
  const stepC = (climb.rateCPerHour * course.intervalSeconds) / SECONDS_PER_HOUR;
  const startC = course.celsius[from]!;
  const steps = Math.ceil((climb.toC - startC) / stepC);
  if (!(steps > 0)) return null;
  const celsius = new Float64Array(from + 1 + steps);
  celsius.set(course.celsius.subarray(0, from + 1));
  for (let k = 1; k <= steps; k++) celsius[from + k] = Math.min(climb.toC, startC + k * stepC);
  const required = requiredPower({ ...course, celsius }, fit.wall, fit.load);
  // The last step may be cut short; the one before it is the ramp's own.
  const end = Math.max(from + 1, celsius.length - 2);
  return required[end]! / (fit.power * hotPowerFactor(celsius[end]!));
};
