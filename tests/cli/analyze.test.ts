import { describe, expect, it } from 'vitest';
import { zAnalysisDocument } from '../../core/model/document.ts';
import { sha256 } from '../../electron/host/hash.ts';
import { readFileSync } from 'node:fs';
import { inFolder, plainLog, run, sample, written } from './terminal.ts';

interface Worded {
  findings: { id: string; words: { title: { text: string }; caution: string | null } }[];
}

describe('analyze', () => {
  it('reads out the verdict, in the reader’s unit', async () => {
    const log = sample('underfired-glaze.txt');
    const args = [log, '--schedule', sample('underfired-glaze.schedule.json'), '--unit', 'F'];
    const { status, out, error } = await run('analyze', ...args);
    expect(status).toBe(0);
    expect(error).toBe('');
    expect(out).toMatch(/^Afterfire: underfired-glaze\.txt\n/);
    expect(out).toContain('where cone 6 was meant');
    expect(out).toContain('°F');
    expect(out.replace(/“[^”]*”/g, '')).not.toContain('°C');
  });

  it('gives the whole document as one line, with words beside each finding', async () => {
    const path = sample('overshoot.csv');
    const schedule = ['--schedule', sample('overshoot.schedule.json')];
    const { status, out, error } = await run('analyze', path, ...schedule, '--format', 'json');
    expect([status, error]).toEqual([0, '']);
    expect(out.match(/\n/g)).toHaveLength(1);
    const { findings, ...rest } = JSON.parse(out) as Worded;
    expect(findings.map(({ id }) => id)).toContain('overshoot');
    for (const { words } of findings) expect(words.title.text).toMatch(/\.$/);
    const bare = findings.map(({ words: _, ...finding }) => finding);
    const document = zAnalysisDocument.parse({ ...rest, findings: bare });
    expect(document.source.sha256).toBe(sha256(readFileSync(path)));
  });

  it('lets the unit change words and never numbers', async () => {
    const args = ['analyze', sample('overshoot.csv'), '--cone', '6', '--format', 'json'];
    const [inC, inF] = [await run(...args), await run(...args, '--unit', 'F')];
    const withoutWords = (text: string) => {
      const document = JSON.parse(text) as Worded;
      return { ...document, findings: document.findings.map(({ words: _, ...rest }) => rest) };
    };
    expect(withoutWords(inF.out)).toEqual(withoutWords(inC.out));
    expect(inF.out).not.toBe(inC.out);
  });

  it('writes one HTML report to standard output', async () => {
    const { status, out } = await run('analyze', sample('decal.txt'), '--format', 'html');
    expect(status).toBe(0);
    expect(out).toMatch(/^<!doctype html>/);
    expect(out).toContain('</html>');
  });

  it('takes a cone as people write it', async () => {
    const { out } = await run('analyze', sample('good-bisque.csv'), '--cone', '^04');
    expect(out).toContain('cone 04 as meant');
  });

  it('works on several logs at once and answers in the order they were given', async () => {
    const names = [
      'good-glaze.csv',
      'decal.txt',
      'overshoot.csv',
      'missing.csv',
      'good-bisque.csv',
    ];
    const { status, out, error } = await run(
      'analyze',
      ...names.map(sample),
      ...['--format', 'json'],
    );
    expect(status).toBe(1);
    const lines = out.trim().split('\n');
    const nameOf = (line: string) => {
      const read = JSON.parse(line) as { fileName?: string; source?: { fileName: string } };
      return read.source?.fileName ?? read.fileName;
    };
    expect(lines.map(nameOf)).toEqual(names);
    expect(JSON.parse(lines[3]!)).toEqual({
      fileName: 'missing.csv',
      error: { code: 'file-missing', message: 'there is no such file' },
    });
    expect(error).toBe(`cannot read ${sample('missing.csv')}: there is no such file\n`);
  });

  it('gives the same answer in a worker as in this process', async () => {
    const alone = await run('analyze', sample('decal.txt'), '--format', 'json');
    const among = await run(
      ...['analyze', sample('decal.txt'), sample('good-bisque.csv'), '--format', 'json'],
    );
    expect(among.out.split('\n')[0]).toBe(alone.out.trimEnd());
  });

  it('parts the texts of several logs', async () => {
    await inFolder(async (folder) => {
      const [a, b] = ['a.csv', 'b.csv'].map((name) => written(folder, name, plainLog()));
      const { out } = await run('analyze', a!, b!);
      expect(out.split(`\n${'='.repeat(88)}\n`)).toHaveLength(2);
    });
  });
});
