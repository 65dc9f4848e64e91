import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { build } from 'vite';
import { writeJsonSchedule } from '../../core/schedule/write-schedule.ts';
import { medianMsOf, type Table } from './bench.ts';
import { BIG_LOG_SCHEDULE } from './big-log.ts';
import { memoryOf } from './memory.ts';

const ROOT = path.resolve(import.meta.dirname, '../..');

const PAPAPARSE_ALONE = `
  import { readFileSync } from 'node:fs';
  import Papa from 'papaparse';
  const { data } = Papa.parse(readFileSync(process.argv[1], 'utf8'), { skipEmptyLines: true });
  process.stdout.write(String(data.length));
`;

const run = (args: readonly string[]): void => {
  const { status, stderr } = spawnSync(process.execPath, args, {
    cwd: ROOT,
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
  });
  if (status !== 0) throw new Error(`node ${args.join(' ')} failed: ${stderr}`);
};

/**
 * Builds the command line and times it on the same bytes as papaparse, each as a whole process;
 * then has it read long logs of several shapes and tells its memory.
 */
export const wholeProcesses = async (bytes: Uint8Array, rounds: number): Promise<Table[]> => {
  await build({ root: ROOT, configFile: path.join(ROOT, 'vite.cli.config.ts'), logLevel: 'error' });
  const folder = mkdtempSync(path.join(tmpdir(), 'bench-'));
  const log = path.join(folder, 'big.csv');
  const schedule = path.join(folder, 'schedule.json');
  writeFileSync(log, bytes);
  writeFileSync(schedule, writeJsonSchedule(BIG_LOG_SCHEDULE, 'C'));
  const afterfire = path.join(ROOT, 'dist/cli/afterfire.js');
  try {
    const ms = await medianMsOf(rounds, {
      papaparse: () => run(['--input-type=module', '-e', PAPAPARSE_ALONE, log]),
      inspect: () => run([afterfire, 'inspect', log, '--format', 'json']),
      analyze: () => run([afterfire, 'analyze', log, '--schedule', schedule, '--format', 'json']),
    });
    const row = (what: string, taken: number) => [what, taken, taken / ms.papaparse];
    const times: Table = {
      title: 'The same bytes from the disk, as whole processes',
      columns: ['process', 'ms', 'against papaparse'],
      rows: [
        row('papaparse alone: file to rows of strings, no typing', ms.papaparse),
        row('afterfire inspect --format json', ms.inspect),
        row('afterfire analyze --schedule FILE --format json', ms.analyze),
      ],
      notes: [`Medians of ${rounds} rounds; each from starting Node to its end.`],
    };
    return [times, memoryOf(folder)];
  } finally {
    rmSync(folder, { recursive: true });
  }
};
