import { basename } from 'node:path';
import { analyze } from '../core/analyze.ts';
import { analyzeJoined, type LogFile } from '../core/analyze-joined.ts';
import { readLog } from '../core/log/read-log.ts';
import { shapeOfFile } from '../core/log/rules.ts';
import type { AnalysisDocument } from '../core/model/document.ts';
import { Refusal } from '../core/model/refusal.ts';
import { htmlReport } from '../core/report/html-report.ts';
import { readingReport, textReport } from '../core/report/text-report.ts';
import { chooseFiring } from '../core/trace/choose-firing.ts';
import { makeTrace } from '../core/trace/make-trace.ts';
import { readingWords } from '../core/wording/reading.ts';
import { speechIn } from '../core/wording/speech.ts';
import { wording } from '../core/wording/wording.ts';
import { guessEncoding } from '../electron/host/encoding.ts';
import { readLogFile } from '../electron/host/files.ts';
import { sha256 } from '../electron/host/hash.ts';
import type { Job, JobError, JobResult } from './job.ts';

/** The document as one line of JSON, with the words of the chosen unit beside each finding. */
const documentJson = (document: AnalysisDocument, unit: Job['unit']): string => {
  const words = wording(document, unit).findings;
  const findings = document.findings.map((finding, index) => ({ ...finding, words: words[index] }));
  return `${JSON.stringify({ ...document, findings })}\n`;
};

const logFile = (path: string, bytes: Uint8Array): Required<LogFile> => ({
  bytes,
  fileName: basename(path),
  host: { sha256: sha256(bytes), guessEncoding },
});

/** The second log of a load; what is wrong with the file is told under its own name. */
const joinedFile = async (path: string): Promise<LogFile> => {
  try {
    return logFile(path, await readLogFile(path));
  } catch (cause) {
    if (!(cause instanceof Refusal)) throw cause;
    throw new Refusal(cause.code, `${basename(path)}: ${cause.message}`, cause.line);
  }
};

const analysed = async (job: Job, bytes: Uint8Array): Promise<string> => {
  const { path, joined, options, format, unit } = job;
  const file = logFile(path, bytes);
  const { document } =
    joined === null
      ? analyze(file.bytes, file.fileName, options, file.host)
      : analyzeJoined(file, await joinedFile(joined), options);
  if (format === 'json') return documentJson(document, unit);
  return format === 'html' ? htmlReport(document, unit) : textReport(wording(document, unit));
};

const inspected = ({ path, options, format, unit }: Job, bytes: Uint8Array): string => {
  const log = chooseFiring(
    readLog(bytes, basename(path), options.reading, { guessEncoding }),
    options.reading?.firing,
  );
  const source = { ...log.source, sha256: sha256(bytes) };
  const trace = makeTrace(log).summary;
  if (format === 'json') {
    const shape = shapeOfFile(bytes, { guessEncoding });
    return `${JSON.stringify({ source, trace, shape })}\n`;
  }
  return readingReport(source.fileName, readingWords({ source, trace }, speechIn(unit)));
};

/** An error of ours as it is told; anything else is a fault of the program and is told as one. */
export const jobError = (cause: unknown): JobError => {
  if (cause instanceof Refusal) {
    const { code, message, line } = cause;
    return line === null ? { code, message } : { code, message, line };
  }
  return {
    code: 'internal',
    message: 'this log brought the program to a fault of its own; please report it with the log',
  };
};

/** Works on one log; every failure becomes a result, so that the other logs go on. */
export const runJob = async (job: Job): Promise<JobResult> => {
  try {
    const bytes = await readLogFile(job.path);
    const isInspected = job.command === 'inspect';
    return { output: isInspected ? inspected(job, bytes) : await analysed(job, bytes) };
  } catch (cause) {
    return { error: jobError(cause) };
  }
};
