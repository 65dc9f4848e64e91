import { describe, expect, it } from 'vitest';
import { inFolder, plainLog, run, written } from './terminal.ts';

/** A plain sentence on one line: no stack, no name from inside the program. */
const expectPlain = (error: string): void => {
  expect(error).toMatch(/^cannot (read|use) [^\n]+: [^\n]+\n$/);
  expect(error).not.toMatch(
    /\bat \S+:\d+|Error\b|undefined|null|NaN|\bat async\b|\.ts\b|Refusal|zod|\[object/,
  );
};

const LOGS: readonly [what: string, name: string, content: string | Uint8Array, code: string][] = [
  ['empty', 'log.csv', '', 'empty'],
  ['blank', 'log.csv', ' \n\n', 'empty'],
  ['header only', 'log.csv', 'time,kiln °C\n', 'header-only'],
  ['binary', 'log.csv', Uint8Array.from({ length: 900 }, (_, i) => (i * 37) % 256), 'binary'],
  ['without time', 'log.csv', 'kiln °C,room °C\n20.5,19\n30.1,19\n44.0,20\n61.2,20\n', 'no-time'],
  [
    'without temperature',
    'log.csv',
    'time,output %\n2026-01-01 10:00:00,5\n2026-01-01 10:01:00,90\n2026-01-01 10:02:00,40\n',
    'no-temperature',
  ],
  ['one row', 'log.csv', 'time,kiln °C\n2026-01-01 10:00:00,20.5\n', 'too-few-rows'],
  ['broken JSON', 'log.json', '{"readings": [', 'not-readable'],
];

describe.each(LOGS)('a log that is %s', (_, name, content, code) => {
  it('is refused in one plain sentence, and nothing else is printed', async () => {
    await inFolder(async (folder) => {
      const path = written(folder, name, content);
      for (const command of ['analyze', 'inspect']) {
        const { status, out, error } = await run(command, path);
        expect([status, out]).toEqual([1, '']);
        expectPlain(error);
        expect(error.startsWith(`cannot read ${path}`)).toBe(true);
      }
    });
  });

  it('is one line of JSON with a plain code', async () => {
    await inFolder(async (folder) => {
      const path = written(folder, name, content);
      const { status, out } = await run('analyze', path, '--format', 'json');
      expect(status).toBe(1);
      const { fileName, error } = JSON.parse(out) as { fileName: string; error: { code: string } };
      expect(fileName).toBe(name);
      expect(error.code).toBe(code);
    });
  });
});

const SCHEDULES: readonly [what: string, content: string, line: number | null][] = [
  ['unreadable', 'not a schedule at all\n', 1],
  ['empty', '', null],
  ['broken JSON', '{ "segments": [\n  { "ratePerHour": 100,\n', null],
  ['a negative rate', 'rate_per_hour,target,hold_minutes\n100,500,0\n-60,900,0\n', 3],
  ['a negative rate in JSON', '{"segments":[{"ratePerHour":-5,"target":900}]}', null],
  ['an unknown cone', '# cone: 99\nrate_per_hour,target,hold_minutes\n100,500,0\n', 1],
  ['no segment', 'rate_per_hour,target,hold_minutes\n', null],
];

describe.each(SCHEDULES)('a schedule that is or has %s', (_, content, line) => {
  it('is refused with its own name and line, once, and nothing else is printed', async () => {
    await inFolder(async (folder) => {
      const log = written(folder, 'log.csv', plainLog());
      const schedule = written(folder, 'plan.csv', content);
      const { status, out, error } = await run('analyze', log, '--schedule', schedule);
      expect([status, out]).toEqual([1, '']);
      expectPlain(error);
      expect(error.startsWith(`cannot read ${schedule}`)).toBe(true);
      if (line !== null) expect(error).toContain(`, line ${line}: `);
    });
  });
});

describe('other things that cannot be used', () => {
  it('an unknown cone', async () => {
    await inFolder(async (folder) => {
      const log = written(folder, 'log.csv', plainLog());
      const { status, out, error } = await run('analyze', log, '--cone', '66');
      expect([status, out]).toEqual([1, '']);
      expect(error).toMatch(/^cannot use --cone 66: there is no such cone; cones run from 022/);
      const asJson = await run('analyze', log, '--cone', '66', '--format', 'json');
      expect(JSON.parse(asJson.out)).toMatchObject({ error: { code: 'unknown-cone' } });
    });
  });

  it('a missing file, a folder, a missing schedule', async () => {
    await inFolder(async (folder) => {
      const log = written(folder, 'log.csv', plainLog());
      const missing = await run('analyze', `${folder}/nothing.csv`);
      expect(missing.error).toBe(`cannot read ${folder}/nothing.csv: there is no such file\n`);
      const dir = await run('inspect', folder);
      expect(dir.error).toBe(`cannot read ${folder}: this is a folder, not a file\n`);
      const plan = await run('analyze', log, '--schedule', `${folder}/plan.json`);
      expect(plan.error).toBe(`cannot read ${folder}/plan.json: there is no such file\n`);
      expect([missing.status, dir.status, plan.status]).toEqual([1, 1, 1]);
    });
  });

  it('a name that would command the terminal', async () => {
    const { error } = await run('analyze', 'log\u001b[2J.csv');
    expect(error).toBe('cannot read log\ufffd[2J.csv: there is no such file\n');
  });

  it('do not keep the other logs from their answers', async () => {
    await inFolder(async (folder) => {
      const good = written(folder, 'good.csv', plainLog());
      const { status, out, error } = await run('analyze', `${folder}/none.csv`, good);
      expect(status).toBe(1);
      expect(out).toMatch(/^Afterfire: good\.csv\n/);
      expectPlain(error);
    });
  });
});
