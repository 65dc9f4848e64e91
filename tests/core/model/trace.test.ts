import { expect, it } from 'vitest';
import { REPAIR_KINDS, zRepair, zTraceLeg, zTraceSummary } from '../../../core/model/trace.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const { trace } = exampleDocument('good-firing');
const accepts = (change: object): boolean =>
  zTraceSummary.safeParse({ ...trace, ...change }).success;

it('what cannot be known of a trace is null: its date, its start, its shut-off', () => {
  expect(accepts({ startInstant: null, startSeconds: null, offSeconds: null })).toBe(true);
});

it('what every trace has is never null', () => {
  for (const name of ['samples', 'durationSeconds', 'peakC', 'noiseC', 'resolutionC']) {
    expect(accepts({ [name]: null })).toBe(false);
  }
});

it('a repair is of a known kind and counts its samples', () => {
  const repair = { fromSeconds: 0, toSeconds: 60, samples: 2 };
  for (const kind of REPAIR_KINDS)
    expect(zRepair.safeParse({ ...repair, kind }).success).toBe(true);
  expect(zRepair.safeParse({ ...repair, kind: 'smoothing' }).success).toBe(false);
  expect(zRepair.safeParse({ ...repair, kind: 'spike', samples: 0.5 }).success).toBe(false);
});

it('a leg of the trace is a ramp, a hold or cooling', () => {
  const leg = { startSeconds: 0, endSeconds: 60, startC: 20, endC: 22, rateCPerHour: 120 };
  expect(zTraceLeg.safeParse({ ...leg, kind: 'hold' }).success).toBe(true);
  expect(zTraceLeg.safeParse({ ...leg, kind: 'climb' }).success).toBe(false);
});
