import { describe, expect, it } from 'vitest';
import { zAnalysisDocument } from '../../core/model/document.ts';
import { CUT_SHORT, RUN_AGAIN, writtenRun } from '../builders/runs.ts';
import { inFolder, run, written } from './terminal.ts';

describe('analyze --joined', () => {
  it('takes two logs of one load as one firing', async () => {
    await inFolder(async (folder) => {
      const first = written(folder, 'first.csv', writtenRun(CUT_SHORT, 1));
      const second = written(folder, 'second.csv', writtenRun(RUN_AGAIN, 2));
      const args = ['analyze', first, '--joined', second, '--cone', '04'];
      const said = await run(...args);
      expect([said.status, said.error]).toEqual([0, '']);
      expect(said.out).toMatch(/^Afterfire: first\.csv and second\.csv\n/);
      expect(said.out.replace(/\s+/g, ' ')).toContain('the first gave less than a thousandth');
      const json = await run(...args, '--format', 'json');
      const { findings, ...rest } = JSON.parse(json.out) as { findings: { words: unknown }[] };
      const bare = findings.map(({ words: _, ...finding }) => finding);
      expect(zAnalysisDocument.parse({ ...rest, findings: bare }).joined!.isGapKnown).toBe(true);
    });
  });

  it('refuses logs that ran at the same time, and says which file is missing', async () => {
    await inFolder(async (folder) => {
      const first = written(folder, 'first.csv', writtenRun(CUT_SHORT, 1));
      const other = written(folder, 'other.csv', writtenRun(RUN_AGAIN, 1));
      const refused = await run('analyze', first, '--joined', other, '--format', 'json');
      expect(refused.status).toBe(1);
      expect(JSON.parse(refused.out)).toMatchObject({ error: { code: 'cannot-join' } });
      expect(refused.error).toContain('same time');
      const missing = await run('analyze', first, '--joined', `${folder}/none.csv`);
      expect(missing.status).toBe(1);
      expect(missing.error).toContain('none.csv');
    });
  });

  it('goes with one log only', async () => {
    const { status, error } = await run('analyze', 'a.csv', 'b.csv', '--joined', 'c.csv');
    expect(status).toBe(2);
    expect(error).toContain('--joined');
  });
});
