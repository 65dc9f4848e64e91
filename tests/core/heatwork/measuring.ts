/** Short ways to measure synthetic firings. */
import type { HeatWorkQuestion } from '../../../core/heatwork/firing-record.ts';
import { firingRecord, type FiringRecord } from '../../../core/heatwork/firing-record.ts';
import { measureHeatWork } from '../../../core/heatwork/measure-heat-work.ts';
import type { HeatWork } from '../../../core/model/document.ts';
import type { Trace } from '../../../core/model/trace.ts';
import {
  firing,
  traceFrom,
  type CurvePoint,
  type Stretch,
  type TraceOptions,
} from '../../builders/trace.ts';

type Asked = Partial<HeatWorkQuestion>;

export const ramp = (rateCPerHour: number, toC: number): Stretch => ({ rateCPerHour, toC });
export const hold = (holdMinutes: number): Stretch => ({ holdMinutes });

const ask = (trace: Trace, asked: Asked): HeatWorkQuestion => ({
  target: null,
  legs: trace.summary.legs,
  ...asked,
});

/** The heat-work of a curve; a sample every 20 s unless told, so that corners are met. */
export const measure = (
  points: readonly CurvePoint[],
  asked: Asked = {},
  options: TraceOptions = {},
): HeatWork => {
  const trace = traceFrom(points, { intervalSeconds: 20, ...options });
  return measureHeatWork(trace, ask(trace, asked))!;
};

export const record = (
  points: readonly CurvePoint[],
  asked: Asked = {},
  options: TraceOptions = {},
): FiringRecord => {
  const trace = traceFrom(points, { intervalSeconds: 20, ...options });
  return firingRecord(trace, ask(trace, asked));
};

/** Cone 6 as it is usually fired: 60 °C/h over the last stretch, then heat off. */
export const cone6 = (topC = 1215, minutes = 0): CurvePoint[] =>
  firing(
    20,
    ramp(150, 1100),
    ramp(60, topC),
    ...(minutes > 0 ? [hold(minutes)] : []),
    ramp(250, 300),
  );
