import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import {
  clear,
  defineDetector,
  found,
  foundAny,
  type Detector,
  type Draft,
} from '../../../core/findings/detector.ts';
import { DETECTORS } from '../../../core/findings/detector-list.ts';
import { runDetectors } from '../../../core/findings/run-detectors.ts';
import { CHECK_REASONS } from '../../../core/wording/checks.ts';
import { zAnalysisDocument } from '../../../core/model/document.ts';
import type { FindingId, Severity } from '../../../core/model/finding.ts';
import { zCheck, zFinding } from '../../../core/model/finding.ts';
import { canHave } from '../../../core/model/heat-source.ts';
import { seconds } from '../../../core/units.ts';
import { anyFiring } from '../../builders/any-firing.ts';
import { facts, firingFacts, withConfidence, withoutSchedule } from '../../builders/facts.ts';

const draft = (severity: Severity, fromMinutes: number, toMinutes = fromMinutes): Draft => ({
  severity,
  evidence: [{ fromSeconds: seconds(fromMinutes * 60), toSeconds: seconds(toMinutes * 60) }],
  figures: { lateMinutes: 12 },
  thresholds: { lateMinutes: 10 },
  instead: ['log-gap'],
});

const finding = (id: FindingId, ...drafts: Draft[]): Detector =>
  defineDetector({ id, needs: ['trace'], detect: () => foundAny(drafts) });

describe('the runner', () => {
  test('hands a detector what it named and nothing else', () => {
    let seen: string[] = [];
    const nosy = defineDetector({
      id: 'log-gap',
      needs: ['trace'],
      wants: ['heatWork'],
      detect: (given) => {
        seen = Object.keys(given);
        return clear();
      },
    });
    runDetectors(facts(), [nosy]);
    expect(seen.sort()).toEqual(['heatWork', 'trace']);
  });

  test.each([
    ['schedule', 'no-schedule'],
    ['alignment', 'no-alignment'],
    ['heatWork', 'no-heat-work'],
    ['elements', 'fuel-fired'],
  ] as const)('does not call a detector that needs %s when there is none', (name, reason) => {
    const detector = defineDetector({
      id: 'ramp-slow',
      needs: ['trace', name],
      detect: () => {
        throw new Error('was called');
      },
    });
    expect(runDetectors(facts({ [name]: null }), [detector])).toEqual({
      findings: [],
      checks: [{ id: 'ramp-slow', outcome: 'not-applicable', reason }],
    });
  });

  test('calls a detector whose wanted fact is missing', () => {
    const detector = defineDetector({
      id: 'ramp-slow',
      needs: ['trace'],
      wants: ['heatWork'],
      detect: ({ heatWork }) => clear(heatWork === null ? 'ends-cool' : 'within-limits'),
    });
    expect(runDetectors(facts({ heatWork: null }), [detector]).checks[0]?.reason).toBe('ends-cool');
  });

  test('turns a throw into a failed check and goes on with the others', () => {
    const broken = defineDetector({
      id: 'ramp-fast',
      needs: ['trace'],
      detect: () => {
        throw new RangeError('off the end');
      },
    });
    const told: [FindingId, unknown][] = [];
    const { findings, checks } = runDetectors(
      facts(),
      [broken, finding('log-gap', draft('note', 5))],
      (id, cause) => told.push([id, cause]),
    );
    expect(checks).toEqual([
      { id: 'ramp-fast', outcome: 'failed', reason: 'detector-failed' },
      { id: 'log-gap', outcome: 'found', reason: 'measured' },
    ]);
    expect(findings.map(({ id }) => id)).toEqual(['log-gap']);
    expect(told).toEqual([['ramp-fast', new RangeError('off the end')]]);
  });

  test('fails a check whose figures are not finite, rather than write them down', () => {
    const detector = defineDetector({
      id: 'ramp-fast',
      needs: ['trace'],
      detect: () => found({ ...draft('note', 5), figures: { lateMinutes: 0 / 0 } }),
    });
    const { findings, checks } = runDetectors(facts(), [detector]);
    expect(findings).toEqual([]);
    expect(checks[0]?.outcome).toBe('failed');
  });

  test('puts the urgent first, then the earlier, then the order of the list', () => {
    const { findings } = runDetectors(facts(), [
      finding('log-gap', draft('note', 1)),
      finding('ramp-slow', draft('watch', 90), draft('act', 300)),
      finding('hold-short', draft('watch', 30)),
      finding('overshoot', draft('watch', 30)),
      finding('underfired', draft('act', 200)),
    ]);
    expect(findings.map(({ id, severity }) => `${severity} ${id}`)).toEqual([
      'act underfired',
      'act ramp-slow',
      'watch hold-short',
      'watch overshoot',
      'watch ramp-slow',
      'note log-gap',
    ]);
  });

  test('keeps evidence on the record', () => {
    const base = facts();
    const end = base.trace.durationSeconds;
    const { findings } = runDetectors(base, [
      finding('log-gap', draft('act', -5, 5), draft('watch', 9000, 9999), draft('note', 10, 5)),
    ]);
    expect(findings.map(({ evidence }) => evidence)).toEqual([
      [{ fromSeconds: 0, toSeconds: 300 }],
      [{ fromSeconds: end, toSeconds: end }],
      [{ fromSeconds: 600, toSeconds: 600 }],
    ]);
  });

  test('names nothing electric as what else it could be, where the kiln burns fuel', () => {
    const instead: FindingId[] = ['elements-weak', 'heavy-load', 'power-interrupted'];
    const slow = finding('ramp-slow', { ...draft('watch', 60), instead });
    const insteadOf = (heat: 'electric' | 'fuel' | null) => {
      const options = heat === null ? {} : { kiln: { heat } };
      return runDetectors({ ...facts(), options }, [slow]).findings[0]?.instead;
    };
    expect(insteadOf('fuel')).toEqual(['heavy-load']);
    expect(insteadOf('electric')).toEqual(instead);
    expect(insteadOf(null)).toEqual(instead);
  });

  test('puts the detector’s own id on what it finds', () => {
    const { findings } = runDetectors(facts(), [finding('hold-drift', draft('watch', 5))]);
    expect(findings).toEqual([
      {
        id: 'hold-drift',
        severity: 'watch',
        evidence: [{ fromSeconds: 300, toSeconds: 300 }],
        figures: { lateMinutes: 12 },
        thresholds: { lateMinutes: 10 },
        instead: ['log-gap'],
      },
    ]);
  });
});

test('the facts of the tests are ones a document could hold', () => {
  const { samples, ...measured } = facts();
  const zFacts = z.strictObject(zAnalysisDocument.shape).omit({
    ...{ schemaVersion: true, curve: true, findings: true, checks: true },
  });
  expect(zFacts.parse(measured)).toEqual(measured);
  expect(samples.summary).toEqual(measured.trace);
});

describe('all detectors', () => {
  /** What the invented glaze firing has not: a second couple, witness cones, carbon, an earlier one,
   * a stretch at full power. */
  const NOT_GIVEN: Readonly<Record<string, string>> = {
    'sensor-lag': 'no-second-place',
    'sensor-drift': 'no-witness-cones',
    'burnout-fast': 'ware-fired-before',
    'cooling-differs': 'no-reference',
    'elements-weak': 'no-reference',
    'element-lost': 'never-at-full-power',
    'heavy-load': 'no-reference',
    'ceiling-near': 'never-at-full-power',
    'zones-apart': 'no-second-place',
  };

  test('find nothing in a firing that went as planned, and all of them looked', () => {
    const { findings, checks } = runDetectors(facts());
    expect(findings).toEqual([]);
    expect(checks.map(({ id, outcome }) => [id, outcome])).toEqual(
      DETECTORS.map(({ id }) => [id, id in NOT_GIVEN ? 'not-applicable' : 'clear']),
    );
  });

  test('say which could not judge a firing without a schedule, and why', () => {
    const { checks } = runDetectors(withoutSchedule());
    const silent = checks.filter(({ outcome }) => outcome === 'not-applicable');
    const schedule = silent.filter(({ reason }) => reason === 'no-schedule');
    expect(schedule.map(({ id }) => id)).toEqual(
      // Whether power stuck on is told by the schedule or, where it was logged, the output.
      DETECTORS.filter(
        ({ id, needs }) => needs.includes('schedule') || id === 'power-stuck-on',
      ).map(({ id }) => id),
    );
    expect(schedule).toHaveLength(10);
    const rest = silent.filter(({ reason }) => reason !== 'no-schedule');
    expect(Object.fromEntries(rest.map(({ id, reason }) => [id, reason]))).toEqual(NOT_GIVEN);
  });

  test('write findings and checks that the document’s schema takes', () => {
    const { findings, checks } = runDetectors(
      firingFacts({
        lastRamp: { minutes: 280, toC: 1190, verdict: 'not-reached' },
        topHold: null,
      }),
    );
    expect(findings.map(({ id }) => id).sort()).toEqual(['peak-not-reached', 'ramp-slow']);
    findings.forEach((one) => expect(() => zFinding.parse(one)).not.toThrow());
    checks.forEach((one) => expect(() => zCheck.parse(one)).not.toThrow());
  });
});

describe('whatever the firing was', () => {
  test('no detector fails, and what is found can be written down and marked', () => {
    fc.assert(
      fc.property(anyFiring, (firing) => {
        const { findings, checks } = runDetectors(firing, DETECTORS, (_id, cause) => {
          throw cause;
        });
        expect(checks).toHaveLength(DETECTORS.length);
        expect(checks.filter(({ reason }) => !(reason in CHECK_REASONS))).toEqual([]);
        for (const one of findings) {
          zFinding.parse(one);
          expect(one.evidence.length).toBeGreaterThan(0);
          for (const { fromSeconds, toSeconds } of one.evidence) {
            expect(fromSeconds).toBeGreaterThanOrEqual(0);
            expect(toSeconds).toBeGreaterThanOrEqual(fromSeconds);
            expect(toSeconds).toBeLessThanOrEqual(firing.trace.durationSeconds);
          }
          // Each threshold is one that a figure of the same name is held against.
          const unheld = Object.keys(one.thresholds).filter((name) => !(name in one.figures));
          expect(['shortCones', 'fromNamesakeCones', 'wanderDeltaC']).toEqual(
            expect.arrayContaining(unheld),
          );
        }
      }),
      { numRuns: 300 },
    );
  });

  test('nothing electric is found or named in a kiln that burns fuel', () => {
    fc.assert(
      fc.property(anyFiring, (firing) => {
        const options = { ...firing.options, kiln: { heat: 'fuel' as const } };
        const { findings, checks } = runDetectors({ ...firing, options, elements: null });
        const named = findings.flatMap(({ id, instead }) => [id, ...instead]);
        expect(named.filter((id) => !canHave('fuel', id))).toEqual([]);
        const electric = checks.filter(({ id }) => !canHave('fuel', id));
        expect(electric.length).toBeGreaterThan(3);
        expect(new Set(electric.map(({ reason }) => reason))).toEqual(new Set(['fuel-fired']));
      }),
      { numRuns: 100 },
    );
  });

  test('nothing that rests on an alignment of little confidence asks for action', () => {
    const scheduled = new Set(
      DETECTORS.filter(({ needs }) => needs.includes('alignment')).map(({ id }) => id),
    );
    fc.assert(
      fc.property(
        anyFiring,
        fc.double({ min: 0, max: 0.49, noNaN: true }),
        (firing, confidence) => {
          const { findings } = runDetectors(withConfidence(firing, confidence));
          const urgent = findings.filter(
            ({ id, severity }) => severity === 'act' && scheduled.has(id),
          );
          expect(urgent).toEqual([]);
        },
      ),
      { numRuns: 200 },
    );
  });
});
