import { parentPort } from 'node:worker_threads';
import type { Job } from './job.ts';
import { runJob } from './run-job.ts';

/** Works on the logs it is sent, one after the other, until it is ended. */
parentPort?.on('message', (job: Job) => {
  void runJob(job).then((result) => parentPort?.postMessage(result));
});
