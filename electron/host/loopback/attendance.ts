import type { ServerResponse } from 'node:http';

/** How long to wait for the page to come back, in milliseconds. */
export interface Patience {
  /** After it said that it leaves: long enough for a reload (chosen). */
  readonly afterLeavingMs: number;
  /** After its connection was lost without a word: a browser put to sleep comes back (chosen). */
  readonly afterLossMs: number;
  /** Between signs of life on a quiet connection (chosen). */
  readonly heartbeatMs: number;
}

export const PATIENCE: Patience = {
  afterLeavingMs: 4000,
  afterLossMs: 60_000,
  heartbeatMs: 15_000,
};

/**
 * Knows whether a page is open: each holds one stream of events. Calls `onDeserted` once the last
 * page has gone and none has come back in time. Before the first page there is no limit.
 */
export const attendance = (patience: Patience, onDeserted: () => void) => {
  const present = new Map<ServerResponse, NodeJS.Timeout>();
  let saidGoodbye = false;
  let isOver = false;
  let waiting: NodeJS.Timeout | undefined;

  const waitForReturn = () => {
    clearTimeout(waiting);
    const { afterLeavingMs, afterLossMs } = patience;
    waiting = setTimeout(onDeserted, saidGoodbye ? afterLeavingMs : afterLossMs);
  };

  const depart = (stream: ServerResponse) => {
    clearInterval(present.get(stream));
    present.delete(stream);
    if (present.size === 0 && !isOver) waitForReturn();
  };

  return {
    /** A page opens its stream; it counts as present until the stream closes. */
    arrive: (stream: ServerResponse): void => {
      clearTimeout(waiting);
      saidGoodbye = false;
      stream.write(': welcome\n\n');
      const beat = setInterval(() => stream.write(': still here\n\n'), patience.heartbeatMs);
      present.set(stream, beat);
      stream.on('close', () => {
        depart(stream);
      });
    },
    /** A page says that it is being closed or left; this may come before or after its stream ends. */
    leave: (): void => {
      saidGoodbye = true;
      if (present.size === 0 && !isOver) waitForReturn();
    },
    /** Tells every page that the server ends, and ends their streams. */
    dismiss: (): void => {
      isOver = true;
      clearTimeout(waiting);
      for (const [stream, beat] of present) {
        clearInterval(beat);
        stream.end('event: gone\ndata:\n\n');
      }
    },
  };
};
