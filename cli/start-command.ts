import { parseArgs } from 'node:util';
import { firingFiles, type FiringFiles } from '../electron/host/firing-arguments.ts';

/** What `npm start` was asked for. */
export interface StartAsked {
  readonly files: FiringFiles;
  /** Whether the person wants their browser and not the desktop window. */
  readonly inBrowser: boolean;
}

const USAGE = `npm start -- [LOG…] [--schedule FILE] [--browser]

Opens the firing of a log in the window; a bundled sample where none is named.

  --schedule FILE  the schedule the kiln was to follow
  --browser        in your browser, not in a window of its own
`;

/** Reads the arguments of `npm start`; or gives what to print instead. */
export const parseStart = (
  args: readonly string[],
  where: string,
): StartAsked | { readonly print: string; readonly status: 0 | 2 } => {
  try {
    const { values } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        schedule: { type: 'string' },
        browser: { type: 'boolean', default: false },
        help: { type: 'boolean', short: 'h', default: false },
      },
    });
    if (values.help) return { print: USAGE, status: 0 };
    return { files: firingFiles(args, where), inBrowser: values.browser };
  } catch (cause) {
    const [what = ''] = (cause instanceof Error ? cause.message : '').split(/[.\n]/);
    return { print: `${what}\n\n${USAGE}`, status: 2 };
  }
};
