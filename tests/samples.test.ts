import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { analyze } from '../core/analyze.ts';
import { parseCone } from '../core/model/cone.ts';
import { zAnalysisDocument, type AnalysisDocument } from '../core/model/document.ts';
import { FINDING_IDS } from '../core/model/finding.ts';
import { readSchedule } from '../core/schedule/read-schedule.ts';

const FOLDER = path.join(import.meta.dirname, '..', 'sample-traces');

interface Sample {
  readonly log: string;
  readonly schedule: string;
  readonly mustFind: readonly string[];
  readonly cone: string;
}

/** The table of the README: what it promises of each file. */
const promised = (): Sample[] =>
  readFileSync(path.join(FOLDER, 'README.md'), 'utf8')
    .split('\n')
    .filter((line) => line.startsWith('|'))
    .slice(2)
    .map((line) => line.split('|').map((cell) => cell.trim()))
    .map(([, log = '', schedule = '', , mustFind = '', cone = '']) => ({
      log,
      schedule,
      mustFind: mustFind.split(',').map((id) => id.trim()),
      cone,
    }));

const documentOf = (sample: Sample): AnalysisDocument => {
  const schedule = readFileSync(path.join(FOLDER, sample.schedule), 'utf8');
  const bytes = new Uint8Array(readFileSync(path.join(FOLDER, sample.log)));
  return analyze(bytes, sample.log, { schedule: readSchedule(schedule, sample.schedule) }).document;
};

const samples = promised();

describe('the README of the samples', () => {
  it('promises at least ten, and every file of the folder is in it', () => {
    expect(samples.length).toBeGreaterThanOrEqual(10);
    const named = samples.flatMap((sample) => [sample.log, sample.schedule]);
    const present = readdirSync(FOLDER).filter((file) => file !== 'README.md');
    expect(named.sort()).toEqual(present.sort());
  });

  it('names findings and cones that there are', () => {
    for (const sample of samples) {
      expect(existsSync(path.join(FOLDER, sample.log))).toBe(true);
      expect(parseCone(sample.cone)).not.toBeNull();
      for (const id of sample.mustFind) {
        expect([...FINDING_IDS, 'none at act']).toContain(id);
      }
    }
  });
});

describe.each(samples.map((sample) => [sample.log, sample] as const))('%s', (_, sample) => {
  const document = documentOf(sample);

  it('is read without a row lost unaccounted for, into a document by its schema', () => {
    expect(zAnalysisDocument.safeParse(document).error).toBeUndefined();
    expect(document.source.rowsKept).toBeGreaterThan(1000);
    expect(document.checks.filter((check) => check.outcome === 'failed')).toEqual([]);
  });

  it('shows what the README promises', () => {
    const found = document.findings
      .filter((finding) => finding.severity !== 'note')
      .map((finding) => finding.id);
    if (sample.mustFind.includes('none at act')) {
      expect(document.findings.filter((finding) => finding.severity === 'act')).toEqual([]);
    } else {
      expect(found).toEqual(expect.arrayContaining([...sample.mustFind]));
    }
    expect(document.heatWork!.cone.label).toBe(sample.cone);
  });
});
