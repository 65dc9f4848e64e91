/** Firings of the test kiln, logged and analysed: what detectors and benches are tried on. */
import { analyzeTrace } from '../../core/analyze.ts';
import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Log } from '../../core/model/log.ts';
import type { Options } from '../../core/model/options.ts';
import type { Trace } from '../../core/model/trace.ts';
import { readSchedule } from '../../core/schedule/read-schedule.ts';
import { chooseFiring } from '../../core/trace/choose-firing.ts';
import { makeTrace } from '../../core/trace/make-trace.ts';
import { fire } from '../kiln/fire.ts';
import type { Firing, ScheduleFile, Setup } from '../kiln/types.ts';
import { logOf } from './log.ts';

export interface Fired {
  readonly firing: Firing;
  readonly trace: Trace;
  readonly document: AnalysisDocument;
}

/** What of a firing the logger writes besides the temperature, and what is told of it. */
export interface Told {
  readonly options?: Omit<Options, 'schedule'>;
  /** The schedule that is given with the log; the one that was run where left out. */
  readonly schedule?: ScheduleFile | null;
  readonly withOutput?: boolean;
  readonly withSetpoint?: boolean;
  /** What became of the record before it was read: a clock moved, a piece lost, two logs in one. */
  readonly changed?: (record: Recorded) => Recorded;
}

/** A log's two columns. */
export interface Recorded {
  readonly atSeconds: Float64Array;
  readonly celsius: Float64Array;
}

const traceOf = (firing: Firing, { withOutput, withSetpoint }: Told): Trace => {
  const { atSeconds, readingC, zoneReadingsC } = firing;
  const isRead = (_: number, i: number) => Number.isFinite(readingC[i]);
  const kept = (column: Float64Array) => column.filter(isRead);
  const zones = zoneReadingsC.map((column, i) => ({
    channel: `place ${i + 2}`,
    celsius: kept(column),
  }));
  return makeTrace(
    logOf(
      { atSeconds: kept(atSeconds), celsius: kept(readingC) },
      {
        outputPercent: withOutput ? kept(firing.outputPercent) : null,
        setpointC: withSetpoint ? kept(firing.setpointC) : null,
        zones,
        noReadingSeconds: atSeconds.filter((at, i) => !isRead(at, i)),
      },
    ),
  );
};

/** The log of a changed record, narrowed to one firing as the analysis of a file does it. */
const changedLog = (firing: Firing, changed: NonNullable<Told['changed']>): Log => {
  const kept = (_: number, i: number) => Number.isFinite(firing.readingC[i]);
  const record = {
    atSeconds: firing.atSeconds.filter(kept),
    celsius: firing.readingC.filter(kept),
  };
  return chooseFiring(logOf(changed(record)));
};

/** Fires the test kiln and analyses its log. */
export const fired = (setup: Setup, told: Told = {}): Fired => {
  const firing = fire(setup);
  const changed = told.changed && changedLog(firing, told.changed);
  const trace = changed ? makeTrace(changed) : traceOf(firing, told);
  const file = told.schedule === undefined ? setup.schedule : told.schedule;
  const schedule = file && readSchedule(JSON.stringify(file), 'schedule.json');
  const log = changed ?? logOf({ atSeconds: trace.atSeconds, celsius: trace.celsius });
  const options = { ...told.options, ...(schedule && { schedule }) };
  return { firing, trace, document: analyzeTrace(log, trace, options) };
};
