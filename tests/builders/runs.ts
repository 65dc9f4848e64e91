/** Two runs of one load as logs: made up, each the curve of a few corners. */
import type { Log } from '../../core/model/log.ts';
import type { Trace } from '../../core/model/trace.ts';
import { makeTrace } from '../../core/trace/make-trace.ts';
import { logOf } from './log.ts';
import { firing, traceFrom, type CurvePoint } from './trace.ts';

/** 1700 °F after six hours, when the power went; logged while the kiln cooled. */
export const CUT_SHORT = firing(
  20,
  { rateCPerHour: 150, toC: 927 },
  { rateCPerHour: 120, toC: 450 },
);

/** Run again the next day, to what a cone 04 takes. */
export const RUN_AGAIN = firing(
  60,
  { rateCPerHour: 100, toC: 560 },
  { rateCPerHour: 150, toC: 960 },
  { rateCPerHour: 60, toC: 1060 },
  { rateCPerHour: 130, toC: 150 },
);

export interface Run {
  readonly log: Log;
  readonly trace: Trace;
}

/** A run as its log and trace. */
export const runOf = (
  points: readonly CurvePoint[],
  startInstant: string | null,
  change: Partial<Log> = {},
): Run => {
  const { atSeconds, celsius } = traceFrom(points);
  const log = logOf({ atSeconds, celsius }, { startInstant, ...change });
  return { log, trace: makeTrace(log) };
};

/** The first run of a load and the second, a day later; the dates can be left out. */
export const twoRuns = (isDated = true): [Run, Run] => [
  runOf(CUT_SHORT, isDated ? '2026-03-01T08:00:00' : null),
  runOf(RUN_AGAIN, isDated ? '2026-03-02T08:00:00' : null),
];

/** A run as a logger would have written it, begun at eight on a day of March 2026. */
export const writtenRun = (points: readonly CurvePoint[], day: number): string => {
  const { trace } = runOf(points, null);
  const beganMs = Date.UTC(2026, 2, day, 8);
  const rows = [...trace.atSeconds].map((at, i) => {
    const stamp = new Date(beganMs + at * 1000).toISOString().slice(0, 19);
    return `${stamp},${trace.celsius[i]!.toFixed(1)}`;
  });
  return ['time,kiln C', ...rows, ''].join('\n');
};
