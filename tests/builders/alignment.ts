import { align } from '../../core/align/align.ts';
import { gridOf } from '../../core/align/grid.ts';
import { startOfPlan } from '../../core/align/anchor.ts';
import type { Alignment } from '../../core/model/document.ts';
import type { Trace } from '../../core/model/trace.ts';
import { intendedLegs } from '../../core/schedule/intended-curve.ts';
import { readSchedule } from '../../core/schedule/read-schedule.ts';
import { makeTrace } from '../../core/trace/make-trace.ts';
import { logOf } from './log.ts';
import { firing, traceFrom, type CurvePoint, type Stretch, type TraceOptions } from './trace.ts';

/** An invented stoneware schedule with every kind of leg. */
export const STONEWARE = `rate_per_hour,target,hold_minutes
100,120,30
180,1100,0
60,1220,15
150,1000,20
`;

/** The same as it would run if the kiln did just as it was told, then cooled by itself. */
export const AS_PLANNED: readonly Stretch[] = [
  { rateCPerHour: 100, toC: 120 },
  { holdMinutes: 30 },
  { rateCPerHour: 180, toC: 1100 },
  { rateCPerHour: 60, toC: 1220 },
  { holdMinutes: 15 },
  { rateCPerHour: 150, toC: 1000 },
  { holdMinutes: 20 },
  { rateCPerHour: 180, toC: 600 },
  { rateCPerHour: 90, toC: 200 },
];

/** A trace made the real way, from a log of a piecewise-linear course with a logger's noise. */
export const loggedTrace = (points: readonly CurvePoint[], options: TraceOptions = {}): Trace =>
  makeTrace(logOf(traceFrom(points, { intervalSeconds: 30, noiseC: 0.4, ...options })));

export const traceOfStretches = (stretches: readonly Stretch[], startC = 20): Trace =>
  loggedTrace(firing(startC, ...stretches));

export const alignTo = (trace: Trace, schedule = STONEWARE): Alignment =>
  align(trace, readSchedule(schedule, 'stoneware.csv'));

/** The legs of an alignment in short: segment, kind and verdict, and when each ended, in minutes. */
export const inShort = (alignment: Alignment): string[] =>
  alignment.legs.map(({ segment, kind, verdict, actual }) => {
    const end = actual === null ? 'never' : String(Math.round(actual.endSeconds / 60));
    return `${segment ?? 'off'} ${kind} ${verdict} ${end}`;
  });

/** A schedule's legs and the grid they are searched on. */
export const searched = (trace: Trace, schedule = STONEWARE) => {
  const legs = intendedLegs(readSchedule(schedule, 'stoneware.csv'), startOfPlan(trace));
  return { legs, grid: gridOf(trace, legs) };
};
