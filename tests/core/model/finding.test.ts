import { expect, it } from 'vitest';
import { FINDING_IDS, zCheck, zEvidence, zFinding } from '../../../core/model/finding.ts';
import { zId } from '../../../core/model/scalars.ts';

const finding = {
  id: 'overshoot',
  severity: 'watch',
  evidence: [{ fromSeconds: 0, toSeconds: 60, celsius: 1210 }],
  figures: { overDeltaC: 9 },
  thresholds: { overDeltaC: 8 },
  instead: ['sensor-spikes'],
};
const accepts = (change: object): boolean => zFinding.safeParse({ ...finding, ...change }).success;

it('the ids are words, each once', () => {
  expect(new Set(FINDING_IDS).size).toBe(FINDING_IDS.length);
  for (const id of FINDING_IDS) expect(zId.safeParse(id).success).toBe(true);
});

it('a finding has a known id, one of three severities, and figures that are numbers', () => {
  expect(accepts({})).toBe(true);
  expect(accepts({ id: 'gremlins' })).toBe(false);
  expect(accepts({ severity: 'fatal' })).toBe(false);
  expect(accepts({ figures: { overDeltaC: null } })).toBe(false);
  expect(accepts({ figures: { overDeltaC: NaN } })).toBe(false);
  expect(accepts({ instead: ['gremlins'] })).toBe(false);
});

it('a finding holds no sentence', () => {
  expect(accepts({ title: 'It went too far.' })).toBe(false);
});

it('evidence is a stretch of time, with or without a temperature', () => {
  expect(zEvidence.safeParse({ fromSeconds: 0, toSeconds: 1 }).success).toBe(true);
  expect(zEvidence.safeParse({ fromSeconds: 0 }).success).toBe(false);
});

it('a check says how it went, and why in a word', () => {
  const check = { id: 'overshoot', outcome: 'clear', reason: 'within-limits' };
  expect(zCheck.safeParse(check).success).toBe(true);
  expect(zCheck.safeParse({ ...check, reason: undefined }).success).toBe(false);
  expect(zCheck.safeParse({ ...check, outcome: 'passed' }).success).toBe(false);
});
