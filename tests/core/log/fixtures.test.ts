import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { readLog } from '../../../core/log/read-log.ts';
import type { Log } from '../../../core/model/log.ts';
import { zSource } from '../../../core/model/source.ts';

const FOLDER = new URL('../../fixtures/logs/', import.meta.url);

/** What a careful reader finds in a fixture; see the folder's README. */
interface Truth {
  odd: string;
  rowsRead: number;
  rowsKept: number;
  startInstant: string | null;
  lastSeconds: number;
  firstC: number;
  lastC: number;
  peakC: number;
  unit: string;
  reasons?: Record<string, number>;
  assumptions?: string[];
  noReadings?: number;
  hasSetpoint?: boolean;
  hasOutput?: boolean;
  zones?: number;
}

const truths = JSON.parse(readFileSync(new URL('truth.json', FOLDER), 'utf8')) as Record<
  string,
  Truth
>;
const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(new URL(name, FOLDER)));

/** A log without what its name changes, for comparing two readings. */
const nameless = (log: Log): unknown => ({ ...log, source: { ...log.source, fileName: '' } });

const reasonsOf = (log: Log): Record<string, number> => {
  const counts: Record<string, number> = {};
  for (const { reason } of log.source.rejected) counts[reason] = (counts[reason] ?? 0) + 1;
  return counts;
};

describe.each(Object.entries(truths))('%s', (name, truth) => {
  const bytes = bytesOf(name);
  const log = readLog(bytes, name);
  const { source } = log;

  test(`is read as it is meant: ${truth.odd}`, () => {
    expect(source.rowsRead).toBe(truth.rowsRead);
    expect(source.rowsKept).toBe(truth.rowsKept);
    expect(log.celsius).toHaveLength(truth.rowsKept);
    expect(log.startInstant).toBe(truth.startInstant);
    expect(log.atSeconds[0]).toBe(0);
    expect(log.atSeconds.at(-1)).toBeCloseTo(truth.lastSeconds, 3);
    expect(log.celsius[0]).toBeCloseTo(truth.firstC, 3);
    expect(log.celsius.at(-1)).toBeCloseTo(truth.lastC, 3);
    expect(Math.max(...log.celsius)).toBeCloseTo(truth.peakC, 3);
    expect(source.decisions.find(({ what }) => what === 'unit')?.choice).toBe(truth.unit);
  });

  test('has an account that adds up and fits the schema', () => {
    expect(zSource.safeParse(source).error).toBeUndefined();
    expect(reasonsOf(log)).toEqual(truth.reasons ?? {});
    expect(log.noReadingSeconds).toHaveLength(truth.noReadings ?? 0);
    if (truth.assumptions) expect(source.time.assumptions).toEqual(truth.assumptions);
    if (truth.hasSetpoint) expect(log.setpointC).toHaveLength(truth.rowsKept);
    if (truth.hasOutput) expect(log.outputPercent).toHaveLength(truth.rowsKept);
    if (truth.zones !== undefined) expect(log.zones).toHaveLength(truth.zones);
  });

  test('is read the same under a meaningless name and ending', () => {
    expect(nameless(readLog(bytes, 'download (3).xyz'))).toEqual(nameless(log));
  });

  test('is read the same with care and fast', () => {
    expect(readLog(bytes, name, {}, { isCareful: true })).toEqual(log);
  });
});

test('every file of the folder has its truth and its row in the README', () => {
  const files = readdirSync(fileURLToPath(FOLDER)).filter(
    (file) => file !== 'README.md' && file !== 'truth.json',
  );
  expect(files.sort()).toEqual(Object.keys(truths).sort());
  const readme = readFileSync(new URL('README.md', FOLDER), 'utf8');
  expect(files.filter((file) => !readme.includes(`\`${file}\``))).toEqual([]);
});
