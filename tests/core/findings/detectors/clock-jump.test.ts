import { expect, test } from 'vitest';
import { clockJump } from '../../../../core/findings/detectors/clock-jump.ts';
import type { Repair } from '../../../../core/model/trace.ts';
import { seconds } from '../../../../core/units.ts';
import { facts, withTrace } from '../../../builders/facts.ts';
import { NOTHING, judge, onlyFinding } from '../../../builders/judge.ts';

const repairAt = (minutes: number, kind: Repair['kind'] = 'clock-jump'): Repair => ({
  kind,
  fromSeconds: seconds(minutes * 60),
  toSeconds: seconds(minutes * 60 + 60),
  samples: 100,
});
const withRepairs = (...repairs: Repair[]) => withTrace(facts(), { repairs });

test('a clock that was moved while the kiln heated is watched', () => {
  const finding = onlyFinding(clockJump, withRepairs(repairAt(300), repairAt(700)));
  expect(finding).toMatchObject({ severity: 'watch', figures: { jumps: 2 } });
  expect(finding.evidence).toEqual([
    { fromSeconds: 18_000, toSeconds: 18_060 },
    { fromSeconds: 42_000, toSeconds: 42_060 },
  ]);
});

test('one moved while it cooled is a note', () => {
  // The heat goes off at 660 min.
  expect(onlyFinding(clockJump, withRepairs(repairAt(661))).severity).toBe('note');
  expect(onlyFinding(clockJump, withRepairs(repairAt(659))).severity).toBe('watch');
});

test('no jump in a record without one, whatever else was repaired', () => {
  expect(judge(clockJump, facts())).toEqual(NOTHING);
  const others = withRepairs(repairAt(1, 'duplicate'), repairAt(2, 'out-of-order'));
  expect(judge(clockJump, others)).toEqual(NOTHING);
});

test('how far the clock was moved is told, of the largest jump, where the repair says', () => {
  const moved = (hours: number): Repair => ({
    ...repairAt(300),
    movedSeconds: seconds(3600 * hours),
  });
  const finding = onlyFinding(clockJump, withRepairs(moved(1), moved(-2)));
  expect(finding.figures).toEqual({ jumps: 2, jumpMinutes: 120 });
});
