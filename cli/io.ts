/** What a command may do to the outside: write, and ask whether someone is watching. */
export interface Io {
  /** Resolves once the text has been taken, so that a slow reader is waited for. */
  readonly writeOut: (text: string) => Promise<void>;
  readonly writeError: (text: string) => void;
  /** Whether errors go to a terminal, where progress can be shown. */
  readonly isWatched: boolean;
}

/** 0 all logs analysed, 1 at least one could not be, 2 wrong usage. */
export type ExitStatus = 0 | 1 | 2;
