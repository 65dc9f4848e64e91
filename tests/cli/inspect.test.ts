import { describe, expect, it } from 'vitest';
import { zSource } from '../../core/model/source.ts';
import { zTraceSummary } from '../../core/model/trace.ts';
import { run, sample } from './terminal.ts';

describe('inspect', () => {
  it('says how a log was read', async () => {
    const { status, out, error } = await run('inspect', sample('good-glaze.csv'));
    expect([status, error]).toEqual([0, '']);
    expect(out).toMatch(/^good-glaze\.csv\n/);
    expect(out).toContain('parted by semicolons');
    expect(out).toMatch(/\d rows read/);
    expect(out).toContain('certainty');
  });

  it('gives source, trace and the file’s shape as one line of JSON for each log', async () => {
    const logs = [sample('good-glaze.csv'), sample('failing-couple.csv')];
    const { status, out } = await run('inspect', ...logs, '--format', 'json');
    expect(status).toBe(0);
    const lines = out.trim().split('\n');
    expect(lines).toHaveLength(2);
    for (const line of lines) {
      const { source, trace, shape, ...rest } = JSON.parse(line) as Record<string, unknown>;
      expect(rest).toEqual({});
      expect(shape).toMatch(/^delimited /);
      expect(zSource.parse(source).rowsRead).toBeGreaterThan(100);
      expect(zTraceSummary.parse(trace).samples).toBeGreaterThan(100);
    }
  });

  it('lists every rejected row', async () => {
    const { out } = await run('inspect', sample('failing-couple.csv'));
    expect(out.match(/^ {2}line \d+: no reading: /gm)!.length).toBeGreaterThan(10);
  });
});
