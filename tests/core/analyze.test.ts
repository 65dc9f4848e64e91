import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { analyze, analyzeTrace } from '../../core/analyze.ts';
import { DETECTORS } from '../../core/findings/detector-list.ts';
import { readLog } from '../../core/log/read-log.ts';
import { zAnalysisDocument } from '../../core/model/document.ts';
import type { Options } from '../../core/model/options.ts';
import { Refusal } from '../../core/model/refusal.ts';
import { readSchedule } from '../../core/schedule/read-schedule.ts';
import { makeTrace } from '../../core/trace/make-trace.ts';
import { AS_PLANNED, STONEWARE } from '../builders/alignment.ts';
import { firing, traceFrom, type Stretch } from '../builders/trace.ts';

/** The bytes of a plain log of a course, as a logger would write it. */
const logBytes = (stretches: readonly Stretch[], startC = 20): Uint8Array => {
  const { atSeconds, celsius } = traceFrom(firing(startC, ...stretches), {
    intervalSeconds: 60,
    noiseC: 0.3,
  });
  const rows = Array.from(atSeconds, (at, i) => `${at},${celsius[i]!.toFixed(1)}`);
  return new TextEncoder().encode(['seconds,temperature (°C)', ...rows, ''].join('\n'));
};

const schedule = readSchedule(STONEWARE, 'stoneware.csv');
const documentOf = (stretches: readonly Stretch[], options: Options = {}, startC = 20) =>
  analyze(logBytes(stretches, startC), 'kiln 2.csv', options).document;

describe('a firing analysed', () => {
  const { document, trace } = analyze(
    logBytes(AS_PLANNED),
    'kiln 2.csv',
    { schedule, cone: '7' },
    { sha256: 'ab' },
  );

  it('is a document by its own schema', () => {
    expect(zAnalysisDocument.parse(document)).toEqual(document);
    expect(zAnalysisDocument.parse(JSON.parse(JSON.stringify(document)))).toEqual(document);
  });

  it('bears the file’s name and hash, and the options as they were used', () => {
    expect(document.source).toMatchObject({
      fileName: 'kiln 2.csv',
      sha256: 'ab',
      rowsRejected: 0,
    });
    expect(document.options.cone).toBe('7');
    expect(document.schedule).toEqual(schedule);
  });

  it('asks every detector, and one that fails would be seen', () => {
    expect(document.checks.map((check) => check.id).sort()).toEqual(
      DETECTORS.map((detector) => detector.id).sort(),
    );
    expect(document.checks.filter((check) => check.outcome === 'failed')).toEqual([]);
  });

  it('finds nothing to act on in a firing that went as planned', () => {
    expect(document.findings.filter((finding) => finding.severity !== 'note')).toEqual([]);
    expect(document.heatWork!.target).toMatchObject({ cone: '7', verdict: 'within' });
  });

  it('is the same from a log that has been read already, whatever is told next', () => {
    const log = readLog(logBytes(AS_PLANNED), 'kiln 2.csv');
    const read = makeTrace(log);
    expect(analyzeTrace(log, read, { cone: '4' }).heatWork?.target?.verdict).toBe('over');
    expect(analyzeTrace(log, read, { schedule, cone: '7' }, { sha256: 'ab' })).toEqual(document);
  });

  it('begins when its first reading was taken, though the newest row comes first', () => {
    const file = new URL('../fixtures/logs/newest-first.csv', import.meta.url);
    const { summary } = analyze(new Uint8Array(readFileSync(file)), 'x').trace;
    // The file's last row, as printed there.
    expect(summary.startInstant).toBe('2024-03-14T06:30:00');
  });

  it('gives the full columns beside the thinned curve', () => {
    expect(trace.celsius).toHaveLength(document.source.rowsKept);
    expect(document.curve.atSeconds.length).toBeLessThanOrEqual(3000);
    expect(document.curve.differenceC!.filter((value) => value !== null).length).toBeGreaterThan(
      100,
    );
  });
});

describe('what is not known', () => {
  it('is null without a schedule, and the checks say so', () => {
    const document = documentOf(AS_PLANNED);
    expect(zAnalysisDocument.safeParse(document).success).toBe(true);
    expect(document).toMatchObject({
      schedule: null,
      alignment: null,
      elements: { limited: [], fit: null, fitReason: 'never-at-full-power' },
      load: { state: 'cannot-tell' },
    });
    expect(document.curve.differenceC).toBeNull();
    expect(document.heatWork!.target).toBeNull();
    expect(document.checks.find((check) => check.id === 'ramp-slow')).toMatchObject({
      outcome: 'not-applicable',
      reason: 'no-schedule',
    });
  });

  it('is a bound where the record ends hot', () => {
    const document = documentOf(AS_PLANNED.slice(0, 3), { schedule, cone: '6' });
    expect(document.heatWork!.cone.bound).toBe('at-least');
    expect(document.trace.offSeconds).toBeNull();
    expect(document.findings.map((finding) => finding.id)).toContain('log-ends-early');
  });

  it('is not asked of a fuel-fired kiln’s elements', () => {
    expect(documentOf(AS_PLANNED, { schedule, kiln: { heat: 'fuel' } }).elements).toBeNull();
  });
});

describe('options', () => {
  it('change the answer: the cone that is meant', () => {
    expect(documentOf(AS_PLANNED, { cone: '9' }).heatWork!.target!.verdict).toBe('under');
    expect(documentOf(AS_PLANNED, { cone: '2' }).heatWork!.target!.verdict).toBe('over');
    expect(
      documentOf(AS_PLANNED, { schedule: { ...schedule, cone: '6' } }).heatWork!.target!.cone,
    ).toBe('6');
  });

  it('change the answer: witness cones narrow the range and tell of the couple', () => {
    const blind = documentOf(AS_PLANNED, { cone: '6' }).heatWork!;
    const seen = documentOf(AS_PLANNED, {
      cone: '6',
      observedCones: [{ cone: '8', place: 'middle shelf', bendDegrees: 90 }],
    }).heatWork!;
    const width = ({ cone }: typeof seen) => cone.highPosition! - cone.lowPosition!;
    expect(width(seen)).toBeLessThan(width(blind));
    expect(seen.coupleErrorC!.estimate).toBeLessThan(0);
  });

  it('change the answer: a better class of couple', () => {
    const range = (options: Options) => {
      const { cone } = documentOf(AS_PLANNED, options).heatWork!;
      return cone.highPosition! - cone.lowPosition!;
    };
    expect(range({ couple: { type: 'S', class: 'class-1' } })).toBeLessThan(
      range({ couple: { type: 'K', class: 'class-2' } }),
    );
  });
});

describe('what cannot be used', () => {
  it.each([
    ['nothing', ''],
    ['names without rows', 'time,temperature\n'],
    ['one row', 'seconds,temperature\n0,20\n'],
    ['no times', 'temperature\n20\n30\n40\n'],
    ['words', 'This is not a log.\nIt is a letter.\n'],
  ])('is refused in plain words: %s', (_, text) => {
    expect(() => analyze(new TextEncoder().encode(text), 'x.csv')).toThrow(Refusal);
    try {
      analyze(new TextEncoder().encode(text), 'x.csv');
    } catch (error) {
      expect((error as Refusal).message).toMatch(/^[a-z“"].{15,}/);
      expect((error as Refusal).message).not.toMatch(/undefined|NaN|Error|\bat \//);
    }
  });
});
