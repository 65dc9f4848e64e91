import { expect, test } from 'vitest';
import { missingSegments, shortestMinutes } from '../../../core/findings/missing-segments.ts';
import { seconds } from '../../../core/units.ts';
import { rampFast } from '../../../core/findings/detectors/ramp-fast.ts';
import { segmentMissing } from '../../../core/findings/detectors/segment-missing.ts';
import { readSchedule } from '../../../core/schedule/read-schedule.ts';
import { alignTo, traceOfStretches } from '../../builders/alignment.ts';
import { facts, firingFacts, type Driven } from '../../builders/facts.ts';
import { judge, NOTHING, onlyFinding } from '../../builders/judge.ts';
import type { Stretch } from '../../builders/trace.ts';

const of = (driven: Driven) => {
  const { schedule, alignment, trace } = firingFacts(driven);
  return missingSegments(schedule!, alignment!, trace).map(({ segment }) => segment);
};

test('segments passed over are those between others that ran', () => {
  expect(of({})).toEqual([]);
  expect(of({ middleRamp: null })).toEqual([1]);
  expect(of({ lastRamp: null, topHold: null })).toEqual([]);
});

test('a segment must be long enough to show in the readings', () => {
  const { trace } = firingFacts();
  const every = (minutes: number) => ({ ...trace, medianIntervalSeconds: seconds(minutes * 60) });
  expect(shortestMinutes(every(1))).toBe(5);
  expect(shortestMinutes(every(10))).toBe(30);
});

const HEAD = 'rate_per_hour,target,hold_minutes\n100,120,30\n';
const DRIED: readonly Stretch[] = [{ rateCPerHour: 100, toC: 120 }, { holdMinutes: 30 }];
const COOLED: readonly Stretch[] = [
  { rateCPerHour: 200, toC: 900 },
  { rateCPerHour: 100, toC: 500 },
  { rateCPerHour: 50, toC: 100 },
];
const driven = (rows: string, ...stretches: readonly Stretch[]) => {
  const samples = traceOfStretches([...DRIED, ...stretches, { holdMinutes: 15 }, ...COOLED]);
  const alignment = alignTo(samples, HEAD + rows);
  const schedule = readSchedule(HEAD + rows, 'stoneware.csv');
  return { ...facts(), samples, trace: samples.summary, schedule, alignment };
};

test('a climb at full power that ran at the next one’s rate, in one line with it, is missing', () => {
  const rows = 'full,1000,0\n60,1215,15\n';
  const skipped = driven(rows, { rateCPerHour: 60, toC: 1215 });
  expect(onlyFinding(segmentMissing, skipped).figures).toMatchObject({ segment: 1 });
  const ran = driven(
    rows,
    { rateCPerHour: 300, toC: 600 },
    { rateCPerHour: 200, toC: 1000 },
    { rateCPerHour: 60, toC: 1215 },
  );
  expect(judge(segmentMissing, ran)).toEqual(NOTHING);
});

test('a fast run-through is told as missing, and not as a fast climb as well', () => {
  const rows = '60,600,0\n180,1100,0\n60,1215,15\n';
  const through = driven(rows, { rateCPerHour: 180, toC: 1100 }, { rateCPerHour: 60, toC: 1215 });
  expect(onlyFinding(segmentMissing, through).figures).toMatchObject({ segment: 1 });
  expect(judge(rampFast, through)).toEqual(NOTHING);
});
