import { availableParallelism } from 'node:os';
import type { Worker } from 'node:worker_threads';
import type { Job, JobResult } from './job.ts';
import { runJob } from './run-job.ts';
import type { StartWorker } from './workers.ts';

/** Called for each log in the order in which the logs were given. */
export type Deliver = (result: JobResult, index: number) => Promise<void>;

const FAILED: JobResult = {
  error: {
    code: 'internal',
    message: 'working on this log took more memory than there is, or stopped the program',
  },
};

/** Runs one job in a worker; a worker that dies is a failed job, and is told apart by `alive`. */
const inWorker = (worker: Worker, job: Job): Promise<{ result: JobResult; alive: boolean }> =>
  new Promise((resolve) => {
    const settle = (result: JobResult, alive: boolean) => {
      worker.off('message', onMessage).off('error', onEnd).off('exit', onEnd);
      resolve({ result, alive });
    };
    const onMessage = (result: JobResult) => {
      settle(result, true);
    };
    const onEnd = () => {
      settle(FAILED, false);
    };
    worker.on('message', onMessage).on('error', onEnd).on('exit', onEnd);
    worker.postMessage(job);
  });

/** Gives results out in input order, holding back those that come too soon. */
const inOrder = (deliver: Deliver) => {
  const waiting = new Map<number, JobResult>();
  let next = 0;
  let last = Promise.resolve();
  return (result: JobResult, index: number): Promise<void> => {
    waiting.set(index, result);
    last = last.then(async () => {
      for (let ready = waiting.get(next); ready; ready = waiting.get(next)) {
        waiting.delete(next);
        await deliver(ready, next);
        next += 1;
      }
    });
    return last;
  };
};

/**
 * Works on all jobs, several at a time over the machine's cores, and delivers them in order. One job
 * is worked on right here: a worker would take longer to start than most logs take.
 */
export const runJobs = async (
  jobs: readonly Job[],
  startWorker: StartWorker,
  deliver: Deliver,
  onDone: (done: number) => void = () => undefined,
): Promise<void> => {
  const give = inOrder(deliver);
  const [only] = jobs;
  if (only && jobs.length === 1) return give(await runJob(only), 0);
  let taken = 0;
  let done = 0;
  const lane = async (): Promise<void> => {
    let worker = startWorker();
    for (let index = taken++; index < jobs.length; index = taken++) {
      const { result, alive } = await inWorker(worker, jobs[index]!);
      if (!alive) worker = startWorker();
      onDone(++done);
      await give(result, index);
    }
    await worker.terminate();
  };
  const lanes = Math.min(jobs.length, availableParallelism());
  await Promise.all(Array.from({ length: lanes }, lane));
};
