import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { firingFiles, namedFiles } from '../../../electron/host/firing-arguments.ts';

const HERE = resolve('here');

describe('the files of a command line', () => {
  test.each<[args: string[], logs: string[], schedule: string | null]>([
    [[], [], null],
    [['a.csv'], ['a.csv'], null],
    [['a.csv', '--schedule', 's.json'], ['a.csv'], 's.json'],
    [['--schedule=s.json', 'a.csv', 'b.csv'], ['a.csv', 'b.csv'], 's.json'],
    [['--allow-file-access-from-files', 'a.csv'], ['a.csv'], null],
    [['--original-process-start-time=13', 'a.csv'], ['a.csv'], null],
    [['a.csv', '--schedule'], ['a.csv'], null],
    [['--', '--odd.csv'], ['--odd.csv'], null],
  ])('%j', (args, logs, schedule) => {
    const from = (path: string) => resolve(HERE, path);
    expect(firingFiles(args, HERE)).toEqual({
      logs: logs.map(from),
      schedule: schedule === null ? null : from(schedule),
    });
  });

  test('may be either a log or a schedule, unless it is said', () => {
    expect(namedFiles({ logs: ['a'], schedule: 'b' })).toEqual([
      { path: 'a', role: 'unknown' },
      { path: 'b', role: 'schedule' },
    ]);
    expect(namedFiles({ logs: [], schedule: null })).toEqual([]);
  });
});
