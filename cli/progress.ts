import type { Io } from './io.ts';

/** A line that counts the logs done, shown only where someone is watching. */
export interface Progress {
  readonly count: (done: number) => void;
  readonly show: () => void;
  readonly hide: () => void;
}

const ERASE_LINE = '\r\u001b[2K';

/** Progress on several logs; one log is over too soon to count. */
export const progressOn = (io: Io, all: number): Progress => {
  const isShown = io.isWatched && all > 1;
  let done = 0;
  const show = () => {
    if (isShown) io.writeError(`${ERASE_LINE}${done} of ${all} logs`);
  };
  show();
  return {
    show,
    hide: () => {
      if (isShown) io.writeError(ERASE_LINE);
    },
    count: (now) => {
      done = now;
      show();
    },
  };
};
