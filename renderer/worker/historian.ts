import type { HistoryMessage, HistoryRequest, HistoryTold } from './history-protocol.ts';

/** As much of a Worker as is used, so that tests can bring their own. */
export interface HistoryWorkerLike {
  postMessage(message: HistoryRequest): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<HistoryMessage>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/** How a history ended: `superseded` by a later one or a stop, `failed` by a fault of the program. */
export type HistoryOutcome =
  | ({ readonly kind: 'told' } & HistoryTold)
  | { readonly kind: 'failed' }
  | { readonly kind: 'superseded' };

/** Has logs told as one kiln's history, off the page's thread; the last question wins. */
export interface Historian {
  ask(request: HistoryRequest, onDone: (done: number) => void): Promise<HistoryOutcome>;
  stop(): void;
}

/** A historian with a worker of its own for each history, which ends with it. */
export const createHistorian = (spawn: () => HistoryWorkerLike): Historian => {
  let finish: ((outcome: HistoryOutcome) => void) | null = null;

  const stop = (): void => finish?.({ kind: 'superseded' });

  return {
    ask: (request, onDone) => {
      stop();
      const worker = spawn();
      return new Promise((settle) => {
        const end = (outcome: HistoryOutcome): void => {
          // A worker that was ended may still have had something to say.
          if (finish !== end) return;
          finish = null;
          worker.terminate();
          settle(outcome);
        };
        finish = end;
        worker.onmessage = ({ data }) => {
          if (data.kind === 'progress') onDone(data.done);
          else end({ kind: 'told', ...data.told });
        };
        worker.onerror = (event) => {
          event.preventDefault();
          end({ kind: 'failed' });
        };
        worker.postMessage(request);
      });
    },
    stop,
  };
};
