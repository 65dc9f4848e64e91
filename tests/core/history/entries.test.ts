import { describe, expect, test } from 'vitest';
import { analyzeJoinedTraces } from '../../../core/analyze-joined.ts';
import { analyzeTrace } from '../../../core/analyze.ts';
import { entriesOf } from '../../../core/history/entries.ts';
import { historyOf } from '../../../core/history/history.ts';
import { readSchedule } from '../../../core/schedule/read-schedule.ts';
import { makeTrace } from '../../../core/trace/make-trace.ts';
import { seconds } from '../../../core/units.ts';
import { dayAt } from '../../builders/histories.ts';
import { logOf } from '../../builders/log.ts';
import { twoRuns } from '../../builders/runs.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';
import { fire } from '../../kiln/fire.ts';
import { THIN_BRICK } from '../../kiln/kilns.ts';
import { FAST_GLAZE } from '../../kiln/schedules.ts';

/** A kiln fired with its elements ever more worn, and with loads of another weight each time. */
const wearing = (wears: readonly number[]) =>
  wears.map((elementWear, i) => {
    const { atSeconds, readingC } = fire({
      seed: 40 + i,
      kiln: THIN_BRICK,
      schedule: FAST_GLAZE,
      loadKg: 35 + ((7 * i) % 15),
      roomC: 18,
      elementWear,
      logger: { intervalSeconds: 60 },
    });
    const log = logOf({ atSeconds, celsius: readingC }, { startInstant: dayAt(3 * i) });
    const schedule = readSchedule(JSON.stringify(FAST_GLAZE), 'fast.json');
    return analyzeTrace(log, makeTrace(log), { schedule });
  });

describe('a kiln of the test bench that wears', () => {
  const documents = wearing([1, 1.02, 1.04, 1.08, 1.12, 1.16]);
  const history = historyOf(entriesOf(documents));

  test('loses power as its resistance rises', () => {
    // Against the first three, whose mean resistance is 1.02: 1.02 / 1.16 = 0.879 at the last.
    const last = history.firings.at(-1)!;
    expect(history.firings.every(({ relativePower }) => relativePower !== null)).toBe(true);
    expect(Math.abs(last.relativePower! - 1.02 / 1.16)).toBeLessThan(0.04);
    expect(history.trend!.perFiringPercent).toBeLessThan(-1.5);
    expect(history.trend!.perFiringPercent).toBeGreaterThan(-4);
  });

  test('is told how much its last ramp needs', () => {
    expect(history.forecast.limitKind).toBe('last-ramp');
    expect(history.forecast.limitPower).toBeLessThan(0.95);
  });
});

describe('what a history takes from a document', () => {
  test('is what the document holds, and a reason for what it does not', () => {
    const document = exampleDocument('good-firing');
    const [entry] = entriesOf([{ ...document, elements: null }]);
    expect(entry).toMatchObject({
      fileName: document.source.fileName,
      startInstant: document.trace.startInstant,
      peakC: document.trace.peakC,
      conePosition: document.heatWork!.cone.position,
      power: null,
      powerReason: 'fuel-fired',
      coupleError: null,
    });
    expect(entriesOf([])).toEqual([]);
  });

  test('calls a firing good only if nothing was to be acted on and the load is as meant', () => {
    const good = { ...exampleDocument('good-firing'), elements: null };
    const isGood = (change: Partial<typeof good>) => entriesOf([{ ...good, ...change }])[0]!.isGood;
    expect(isGood({ load: { state: 'as-meant', refireTo: null }, findings: [] })).toBe(true);
    expect(isGood({ load: { state: 'short', refireTo: null }, findings: [] })).toBe(false);
    const { findings } = exampleDocument('troubled-firing');
    const acted = findings.map((finding) => ({ ...finding, severity: 'act' as const }));
    expect(isGood({ load: { state: 'as-meant', refireTo: null }, findings: acted })).toBe(false);
  });

  test('counts of two logs the heating in the one that shows the peak, never the hole between', () => {
    const [first, second] = twoRuns();
    const { document } = analyzeJoinedTraces(first, second, {});
    const { trace, joined } = document;
    const [entry] = entriesOf([document]);
    // The second log begins a day after the first one and peaks within hours of its own start.
    expect(entry!.heatingSeconds).toBe(trace.peakAtSeconds - joined!.startSeconds!);
    expect(entry!.heatingSeconds!).toBeLessThan(86_400 / 2);
    expect(entry!.peakAtSeconds).toBe(trace.peakAtSeconds);

    const change = (to: Partial<NonNullable<typeof joined>>) =>
      entriesOf([{ ...document, joined: { ...joined!, ...to } }])[0]!;
    expect(change({ startSeconds: null }).heatingSeconds).toBeNull();
    expect(change({ isGapKnown: false }).peakAtSeconds).toBeNull();

    const hotterBefore = { ...document.trace, peakAtSeconds: seconds(30_000) };
    expect(entriesOf([{ ...document, trace: hotterBefore }])[0]!.heatingSeconds).toBe(
      30_000 - trace.startSeconds!,
    );
  });
});
