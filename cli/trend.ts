import { basename } from 'node:path';
import { entriesOf, type Fired } from '../core/history/entries.ts';
import { historyOf } from '../core/history/history.ts';
import type { Options } from '../core/model/options.ts';
import { historyReport } from '../core/report/history-report.ts';
import { historyWords } from '../core/wording/history.ts';
import { speechIn } from '../core/wording/speech.ts';
import type { Asked } from './command.ts';
import { errorLine } from './error-line.ts';
import type { ExitStatus, Io } from './io.ts';
import type { Job, JobError, JobResult } from './job.ts';
import { runJobs } from './pool.ts';
import { progressOn } from './progress.ts';
import type { StartWorker } from './workers.ts';

interface Failed {
  readonly fileName: string;
  readonly error: JobError;
}

/** Analyses every log, and keeps the documents of those that could be. */
const documentsOf = async (
  { logs, unit }: Asked,
  options: Options,
  io: Io,
  startWorker: StartWorker,
): Promise<{ documents: Fired[]; failed: Failed[] }> => {
  const jobs = logs.map((path): Job => ({
    command: 'analyze',
    path,
    joined: null,
    options,
    format: 'json',
    unit,
  }));
  const documents: Fired[] = [];
  const failed: Failed[] = [];
  const progress = progressOn(io, jobs.length);
  const take = (result: JobResult, index: number): Promise<void> => {
    const path = logs[index] ?? '';
    if ('error' in result) {
      progress.hide();
      io.writeError(errorLine(path, result.error));
      failed.push({ fileName: basename(path), error: result.error });
    } else {
      // The worker has just written it from a document.
      documents.push(JSON.parse(result.output) as Fired);
    }
    return Promise.resolve();
  };
  await runJobs(jobs, startWorker, take, progress.count);
  progress.hide();
  return { documents, failed };
};

/** Takes the logs as one kiln's history and tells it; a log that failed is told and left out. */
export const tellTrend = async (
  asked: Asked,
  options: Options,
  io: Io,
  startWorker: StartWorker,
): Promise<ExitStatus> => {
  const { documents, failed } = await documentsOf(asked, options, io, startWorker);
  const history = historyOf(entriesOf(documents));
  const words = historyWords(history, speechIn(asked.unit));
  if (asked.format === 'json') {
    const findings = history.findings.map((finding, i) => ({
      ...finding,
      words: words.findings[i],
    }));
    await io.writeOut(`${JSON.stringify({ ...history, findings, failed })}\n`);
  } else if (documents.length > 0) await io.writeOut(historyReport(words));
  return failed.length === 0 ? 0 : 1;
};
