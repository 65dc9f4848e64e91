import { existsSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import type { ExitStatus, Io } from './io.ts';
import { main } from './main.ts';
import type { StartWorker } from './workers.ts';

/** The sample that is shown where no log is given: a firing with something to tell. */
const SAMPLE = 'underfired-glaze';
const SAMPLES = 'sample-traces';

/** The project's own folder: the first one upwards that holds the samples. */
export const projectFolder = (from: string): string => {
  for (let folder = from; ; folder = dirname(folder)) {
    if (existsSync(join(folder, SAMPLES)) || folder === dirname(folder)) return folder;
  }
};

/** Paths are meant from where the person stands, which is not where npm runs its scripts. */
const fromWhereTheyStand = (args: readonly string[], where: string): string[] =>
  args.map((arg, index) => {
    const isPath = !arg.startsWith('-') && !['--cone', '--unit'].includes(args[index - 1] ?? '');
    return isPath ? resolve(where, arg) : arg;
  });

const sampleArgs = (project: string): string[] => {
  const sample = join(project, SAMPLES, SAMPLE);
  return [`${sample}.txt`, '--schedule', `${sample}.schedule.json`];
};

/**
 * What `npm start` does: prints the verdict on a log (a bundled sample where none is given), writes
 * its HTML report and says where.
 *
 * @param where the folder that the person stands in
 */
export const startPage = async (
  args: readonly string[],
  io: Io,
  startWorker: StartWorker,
  project: string,
  where: string,
): Promise<ExitStatus> => {
  const given = args.length === 0 ? sampleArgs(project) : fromWhereTheyStand(args, where);
  if (args.length === 0) {
    await io.writeOut(
      'A bundled sample, from a studio that does not exist. Your own: npm start -- LOG [--schedule FILE]\n\n',
    );
  }
  const status = await main(['analyze', ...given], io, startWorker);
  if (status !== 0) return status;
  await io.writeOut('\nThe same with its curve, to open in a browser or print:\n');
  const report = ['--format', 'html', '--out', join(project, 'reports')];
  return main(['analyze', ...given, ...report], io, startWorker);
};
