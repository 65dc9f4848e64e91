import type { Io } from './io.ts';

/** A reader that went away (a pipe closed early) ends the program quietly; nothing else does. */
const endQuietlyOnClosedPipe = (stream: NodeJS.WriteStream): void => {
  stream.on('error', (cause: NodeJS.ErrnoException) => {
    if (cause.code !== 'EPIPE') throw cause;
    process.exit();
  });
};

/** The process's own streams. Ctrl-C leaves the terminal's line clean. */
export const processIo = (): Io => {
  const { stdout, stderr } = process;
  endQuietlyOnClosedPipe(stdout);
  endQuietlyOnClosedPipe(stderr);
  process.once('SIGINT', () => {
    if (stderr.isTTY) stderr.write('\r\u001b[2K');
    process.exit(130);
  });
  return {
    writeOut: (text) =>
      new Promise((resolve) => {
        stdout.write(text, () => {
          resolve();
        });
      }),
    writeError: (text) => {
      stderr.write(text);
    },
    isWatched: stderr.isTTY,
  };
};
