import { describe, expect, it } from 'vitest';
import { answerHistory } from '../../../renderer/worker/answer-history.ts';
import type { HistoryLog } from '../../../renderer/worker/history-protocol.ts';

const surroundings = { sha256: () => Promise.resolve(null) };

/** A climb to `topC` and down again, on a day of January 2026. */
const climb = (fileName: string, day: number, topC: number): HistoryLog => {
  const rows = Array.from({ length: 400 }, (_, i) => {
    const at = new Date(Date.UTC(2026, 0, day, 6, i)).toISOString().slice(0, 16);
    return `${at},${(20 + (topC - 20) * Math.sin((i * Math.PI) / 399)).toFixed(0)}`;
  });
  const text = ['time,temperature °C', ...rows].join('\n');
  return { fileName, blob: new Blob([text]), own: {} };
};
const request = (logs: HistoryLog[]) => ({ logs, options: { cone: '06' } as const, rules: [] });

describe('the history in the worker', () => {
  it('tells the logs oldest first, each with its own document, and counts them', async () => {
    const [late, early] = [climb('late.csv', 9, 1000), climb('early.csv', 2, 1010)];
    const done: number[] = [];
    const told = await answerHistory(request([late, early]), surroundings, (n) => done.push(n));
    expect(done).toEqual([1, 2]);
    expect(told.history.order).toBe('by-date');
    expect(told.history.firings.map(({ fileName }) => fileName)).toEqual(['early.csv', 'late.csv']);
    expect(told.firings.map(({ place }) => place)).toEqual([1, 0]);
    const sources = told.firings.map(({ document }) => document.source.fileName);
    expect(sources).toEqual(['early.csv', 'late.csv']);
    expect(told.firings[0]!.document.options.cone).toBe('06');
  });

  it('leaves out what cannot be read and says why', async () => {
    const bad = { fileName: 'bad.csv', blob: new Blob(['nothing here\n']), own: {} };
    const told = await answerHistory(request([bad, climb('a.csv', 2, 900)]), surroundings, () => 0);
    expect(told.history.firings).toHaveLength(1);
    expect(told.leftOut).toHaveLength(1);
    expect(told.leftOut[0]).toMatchObject({ place: 0, line: 1 });
    expect(told.leftOut[0]!.message).not.toBe('');
  });

  it('counts the same log once, and says so', async () => {
    const hashing = {
      sha256: async (bytes: Uint8Array<ArrayBuffer>) =>
        Buffer.from(await crypto.subtle.digest('SHA-256', bytes)).toString('hex'),
    };
    const one = climb('a.csv', 2, 900);
    const told = await answerHistory(
      request([one, climb('b.csv', 3, 900), { ...one, fileName: 'copy.csv' }]),
      hashing,
      () => 0,
    );
    expect(told.history.firings.map(({ fileName }) => fileName)).toEqual(['a.csv', 'b.csv']);
    expect(told.leftOut).toMatchObject([{ place: 2, code: 'cannot-join' }]);
  });

  it('goes by what was told of one log alone', async () => {
    const log = { ...climb('a.csv', 2, 1000), own: { reading: { unit: 'F' as const } } };
    const told = await answerHistory(
      request([log, climb('b.csv', 3, 1000)]),
      surroundings,
      () => 0,
    );
    const peaks = told.firings.map(({ document }) => Math.round(document.trace.peakC));
    expect(peaks).toEqual([538, 1000]);
  });
});
