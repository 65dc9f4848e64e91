import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { analyze, analyzeTrace } from '../../core/analyze.ts';
import { analyzeJoined, analyzeJoinedTraces } from '../../core/analyze-joined.ts';
import { zAnalysisDocument } from '../../core/model/document.ts';
import type { Options } from '../../core/model/options.ts';
import { celsius, celsiusPerHour } from '../../core/units.ts';
import { CUT_SHORT, RUN_AGAIN, runOf, twoRuns } from '../builders/runs.ts';
import { firing } from '../builders/trace.ts';

const schedule: NonNullable<Options['schedule']> = {
  name: 'invented 04',
  cone: '04',
  segments: [
    { rateCPerHour: celsiusPerHour(100), minutes: null, targetC: celsius(560), holdMinutes: 0 },
    { rateCPerHour: celsiusPerHour(150), minutes: null, targetC: celsius(960), holdMinutes: 0 },
    { rateCPerHour: celsiusPerHour(60), minutes: null, targetC: celsius(1060), holdMinutes: 0 },
  ],
};
const DAY = 86_400;
const [first, second] = twoRuns();

describe('two logs of one load', () => {
  const { document, trace } = analyzeJoinedTraces(first, second, { schedule });

  test('make one document that its schema takes', () => {
    expect(zAnalysisDocument.parse(document)).toEqual(document);
    expect(trace.atSeconds.length).toBe(document.trace.samples);
  });

  test('say where the hole is, and add up to the whole', () => {
    const { gap, isGapKnown, parts } = document.joined!;
    expect([gap.toSeconds, isGapKnown]).toEqual([DAY, true]);
    expect(document.trace.gaps).toContainEqual(gap);
    expect(parts[0].doseShare + parts[1].doseShare).toBeCloseTo(1, 9);
    expect(parts[0].doseShare).toBeLessThan(0.001);
    expect(parts.map(({ peakC }) => Math.round(peakC))).toEqual([927, 1060]);
    expect(document.heatWork!.assumptions).toContain('logs-joined');
  });

  test('lay the schedule on the second alone, as if it had been given alone', () => {
    const alone = analyzeTrace(second.log, second.trace, { schedule });
    const legs = document.alignment!.legs;
    expect(legs.map(({ verdict }) => verdict)).toEqual(
      alone.alignment!.legs.map(({ verdict }) => verdict),
    );
    expect(legs[0]!.actual!.startSeconds).toBe(
      DAY + alone.alignment!.legs[0]!.actual!.startSeconds,
    );
    expect(document.alignment!.planned[0]!.atSeconds).toBeGreaterThanOrEqual(DAY);
    const before = document.curve.atSeconds.findIndex((at) => at >= DAY);
    expect(document.curve.differenceC!.slice(0, before).every((one) => one === null)).toBe(true);
  });

  test('are the same firing whichever is named first', () => {
    const turned = analyzeJoinedTraces(second, first, { schedule }).document;
    expect(turned).toEqual(document);
  });

  test('give the doses of both added, of every cone that counts', () => {
    // A dose is an integral over time: two records' doses add, whatever lies between.
    const run = fc.record({
      rate: fc.integer({ min: 40, max: 250 }),
      toC: fc.integer({ min: 950, max: 1250 }),
      cooling: fc.integer({ min: 60, max: 300 }),
    });
    const made = ({ rate, toC, cooling }: { rate: number; toC: number; cooling: number }) =>
      runOf(firing(20, { rateCPerHour: rate, toC }, { rateCPerHour: cooling, toC: 200 }), null);
    fc.assert(
      fc.property(run, run, (a, b) => {
        fc.pre(a.toC !== b.toC);
        const [one, other] = [made(a), made(b)];
        const alone = [one, other].map((each) => analyzeTrace(each.log, each.trace).heatWork!);
        const both = analyzeJoinedTraces(one, other).document.heatWork!;
        both.byCone.forEach(({ dose }, i) => {
          const sum = alone[0]!.byCone[i]!.dose + alone[1]!.byCone[i]!.dose;
          if (sum > 1e-3) expect(Math.abs(dose / sum - 1)).toBeLessThan(1e-3);
        });
        expect(both.cone.position! + 1e-6).toBeGreaterThanOrEqual(
          Math.max(...alone.map(({ cone }) => cone.position ?? -Infinity)),
        );
      }),
      { numRuns: 25 },
    );
  });

  test('are measured at least so hot where the kiln was near its top in between', () => {
    const broken = runOf(firing(20, { rateCPerHour: 150, toC: 1040 }), '2026-03-01T08:00:00');
    const { heatWork, load } = analyzeJoinedTraces(broken, second, { cone: '03' }).document;
    expect(heatWork!.cone.bound).toBe('at-least');
    expect(heatWork!.cone.highPosition).toBeNull();
    expect(load.state).toBe('cannot-tell');
    expect(document.heatWork!.cone.bound).toBe('both-ways');
  });

  test('tell of a hole that no date measures that it is not known', () => {
    const [one, other] = twoRuns(false);
    const { joined, heatWork } = analyzeJoinedTraces(one, other, { schedule }).document;
    expect(joined!.isGapKnown).toBe(false);
    expect(heatWork!.cone).toEqual(document.heatWork!.cone);
  });

  test('know when the second began hot', () => {
    const warm = runOf(firing(400, { rateCPerHour: 60, toC: 1060 }), '2026-03-02T00:00:00');
    expect(analyzeJoinedTraces(first, warm).document.joined!.startSeconds).toBeNull();
    expect(document.joined!.startSeconds).toBeGreaterThanOrEqual(DAY);
  });
});

describe('two log files of one load', () => {
  const written = (points: typeof CUT_SHORT, day: number) => {
    const { trace } = runOf(points, null);
    const stamp = (at: number) =>
      new Date(Date.UTC(2026, 2, day, 8) + at * 1000).toISOString().slice(0, 19);
    const rows = [...trace.atSeconds].map(
      (at, i) => `${stamp(at)},${trace.celsius[i]!.toFixed(1)}`,
    );
    return new TextEncoder().encode(['time,kiln C', ...rows, ''].join('\n'));
  };

  test('are read, joined and known by their hashes', () => {
    const files = [
      { bytes: written(CUT_SHORT, 1), fileName: 'first.csv', host: { sha256: 'aa' } },
      { bytes: written(RUN_AGAIN, 2), fileName: 'second.csv', host: { sha256: 'bb' } },
    ] as const;
    const { document } = analyzeJoined(...files, { cone: '04' });
    expect([document.source.fileName, document.source.sha256]).toEqual(['first.csv', 'aa']);
    const { source } = document.joined!;
    expect([source.fileName, source.sha256]).toEqual(['second.csv', 'bb']);
    const alone = analyze(files[1].bytes, 'second.csv', { cone: '04' }).document;
    expect(document.heatWork!.cone.position).toBeCloseTo(alone.heatWork!.cone.position!, 3);
  });
});
