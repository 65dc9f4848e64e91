import { basename, relative } from 'node:path';
import { clean } from '../core/report/clean.ts';
import { makeFolder } from '../electron/host/make-folder.ts';
import { whyNotWritten } from '../electron/host/not-written.ts';
import { writeWhole } from '../electron/host/write-whole.ts';
import { parseCommand, type Asked } from './command.ts';
import { errorLine } from './error-line.ts';
import type { ExitStatus, Io } from './io.ts';
import type { Job, JobError, JobResult } from './job.ts';
import { toldOptions } from './options.ts';
import { outNames } from './out-files.ts';
import { runJobs } from './pool.ts';
import { progressOn } from './progress.ts';
import { tellTrend } from './trend.ts';
import type { StartWorker } from './workers.ts';

const errorJson = (path: string, error: JobError): string =>
  `${JSON.stringify({ fileName: basename(path), error })}\n`;

/** Nothing can be analysed: said once, and with JSON once for every log as well. */
const refuseAll = async (asked: Asked, of: string, error: JobError, io: Io): Promise<1> => {
  io.writeError(errorLine(of, error));
  if (asked.format === 'json') {
    for (const log of asked.logs) await io.writeOut(errorJson(log, error));
  }
  return 1;
};

/** Writes one answer to its file and says where; what cannot be written is a failure too. */
const writtenTo = async (path: string, output: string): Promise<JobError | null> => {
  try {
    await writeWhole(path, output);
    return null;
  } catch (cause) {
    const message = `${path} could not be written: ${whyNotWritten(cause)}`;
    return { code: 'cannot-write', message };
  }
};

/** Why there is no folder to write to, or null once there is. */
const whyNoFolder = (path: string): string | null => {
  try {
    makeFolder(path);
    return null;
  } catch (cause) {
    return whyNotWritten(cause);
  }
};

const delivery = (asked: Asked, io: Io) => {
  const { format, out, logs } = asked;
  const inputs = [...logs, asked.schedule, asked.joined].filter((path) => path !== null);
  const nameFor = out === null ? null : outNames(out, format, inputs);
  const fail = async (log: string, error: JobError): Promise<false> => {
    io.writeError(
      error.code === 'cannot-write' ? `${clean(error.message)}\n` : errorLine(log, error),
    );
    if (format === 'json') await io.writeOut(errorJson(log, error));
    return false;
  };
  let isFirst = true;
  const print = async (output: string): Promise<true> => {
    await io.writeOut(isFirst || format !== 'text' ? output : `\n${'='.repeat(88)}\n\n${output}`);
    isFirst = false;
    return true;
  };
  return async (result: JobResult, index: number): Promise<boolean> => {
    const log = logs[index] ?? '';
    if ('error' in result) return fail(log, result.error);
    if (nameFor === null) return print(result.output);
    const path = await nameFor(log);
    const error = await writtenTo(path, result.output);
    if (error !== null) return fail(log, error);
    if (format !== 'json') await io.writeOut(`${relative('', path) || path}\n`);
    return true;
  };
};

/** Does what the arguments ask for; tells how it went. */
export const main = async (
  args: readonly string[],
  io: Io,
  startWorker: StartWorker,
): Promise<ExitStatus> => {
  const parsed = parseCommand(args);
  if ('print' in parsed) {
    if (parsed.status === 0) await io.writeOut(parsed.print);
    else io.writeError(parsed.print);
    return parsed.status;
  }
  const { asked } = parsed;
  const told = await toldOptions(asked);
  if ('error' in told) return refuseAll(asked, told.of, told.error, io);
  const { options } = told;
  if (asked.command === 'trend') return tellTrend(asked, options, io, startWorker);
  const { command, joined, format, unit, out } = asked;
  // Before any work: whoever waits for many logs is not told at the end.
  const why = out === null ? null : whyNoFolder(out);
  if (why !== null) {
    return refuseAll(asked, `--out ${out}`, { code: 'cannot-write', message: why }, io);
  }
  const jobs = asked.logs.map((path): Job => ({ command, path, joined, options, format, unit }));
  const progress = progressOn(io, jobs.length);
  const deliver = delivery(asked, io);
  let status: ExitStatus = 0;
  await runJobs(
    jobs,
    startWorker,
    async (result, index) => {
      progress.hide();
      if (!(await deliver(result, index))) status = 1;
      progress.show();
    },
    progress.count,
  );
  progress.hide();
  return status;
};
