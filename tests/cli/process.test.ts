import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { sample } from './terminal.ts';

const PROGRAM = fileURLToPath(new URL('../../cli/afterfire.ts', import.meta.url));

interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly error: string;
}

/** Runs the program as its own process; `closeAfter` closes its output after so many bytes. */
const spawned = (args: readonly string[], closeAfter = Infinity): Promise<Ended> =>
  new Promise((resolve) => {
    const child = spawn(process.execPath, ['--import', 'tsx', PROGRAM, ...args]);
    let [out, error] = ['', ''];
    child.stdout.on('data', (chunk: Buffer) => {
      out += chunk.toString();
      if (out.length >= closeAfter) child.stdout.destroy();
    });
    child.stderr.on('data', (chunk: Buffer) => (error += chunk.toString()));
    child.on('close', (code) => {
      resolve({ code, out, error });
    });
  });

describe('the program', () => {
  it('ends with its status, its answer out and its errors aside', async () => {
    const ran = await spawned(['analyze', sample('decal.txt'), 'no-such-log.csv']);
    expect(ran.code).toBe(1);
    expect(ran.out).toMatch(/^Afterfire: decal\.txt\n/);
    expect(ran.error).toBe('cannot read no-such-log.csv: there is no such file\n');
  });

  it('ends with 2 on wrong usage', async () => {
    expect(await spawned(['analyze'])).toEqual({
      code: 2,
      out: '',
      error: "missing required argument 'log'\n",
    });
  });

  it('ends quietly when its reader goes away', async () => {
    const logs = Array.from({ length: 12 }, () => sample('decal.txt'));
    const ran = await spawned(['analyze', ...logs, '--format', 'html', '--out', '/dev/null/x'], 1);
    expect(ran.error).not.toMatch(/EPIPE|at .*:\d+/);
    const cut = await spawned(['inspect', ...logs, '--format', 'json'], 1);
    expect(cut.error).toBe('');
    expect(cut.code).toBe(0);
  });
});
