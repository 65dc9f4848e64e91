import { describe, expect, it } from 'vitest';
import { zHistory } from '../../core/model/history.ts';
import { inFolder, plainLog, run, sample, written } from './terminal.ts';

const GLAZES = [sample('good-glaze.csv'), sample('worn-elements.csv')];
const schedule = ['--schedule', sample('worn-elements.schedule.csv')];

interface Told {
  failed: { fileName: string; error: { code: string } }[];
  findings: { words: unknown }[];
}

describe('trend', () => {
  it('tells a kiln’s history, with cautions', async () => {
    const { status, out, error } = await run('trend', ...GLAZES, ...schedule, '--unit', 'F');
    expect([status, error]).toEqual([0, '']);
    expect(out).toMatch(/^Afterfire: The history of one kiln over 2 firings\n/);
    expect(out).toContain('good-glaze.csv');
    expect(out).toContain('not yet to be told');
    expect(out).toContain('Cautions');
    expect(out).not.toContain('°C');
  });

  it('gives the history as one line of JSON', async () => {
    const { status, out, error } = await run('trend', ...GLAZES, '--format', 'json');
    expect([status, error]).toEqual([0, '']);
    expect(out.match(/\n/g)).toHaveLength(1);
    const { failed, findings, ...rest } = JSON.parse(out) as Told;
    expect(failed).toEqual([]);
    const bare = findings.map(({ words: _, ...finding }) => finding);
    const history = zHistory.parse({ ...rest, findings: bare });
    expect(history.firings).toHaveLength(2);
  });

  it('leaves out a log that cannot be read, and says so', async () => {
    await inFolder(async (folder) => {
      const good = written(folder, 'good.csv', plainLog());
      const bad = written(folder, 'bad.csv', 'nothing here\n');
      const { status, out, error } = await run('trend', good, bad, '--format', 'json');
      expect(status).toBe(1);
      expect(error).toMatch(/^cannot read .*bad\.csv/);
      const { failed } = JSON.parse(out) as Told;
      expect(failed.map(({ fileName }) => fileName)).toEqual(['bad.csv']);
      const text = await run('trend', bad);
      expect([text.status, text.out]).toEqual([1, '']);
    });
  });

  it('ends with 2 where it is asked wrongly', async () => {
    expect((await run('trend')).status).toBe(2);
    expect((await run('trend', 'a.csv', '--format', 'html')).status).toBe(2);
  });
});
