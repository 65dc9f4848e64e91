import { Worker } from 'node:worker_threads';

/** Starts a thread that works on the logs it is sent. */
export type StartWorker = () => Worker;

/**
 * Built, the worker stands beside the program. From source (development and tests, started in the
 * project's folder) a thread has first to be taught TypeScript: the loader of the main thread does
 * not reach it.
 *
 * @param program the address of the program's own file
 */
export const workersOf = (program: string): StartWorker => {
  if (!program.endsWith('.ts')) return () => new Worker(new URL('worker.js', program));
  const worker = JSON.stringify(new URL('worker.ts', program).href);
  const source = `import('tsx/esm/api').then(({ register }) => (register(), import(${worker})))`;
  return () => new Worker(source, { eval: true });
};
