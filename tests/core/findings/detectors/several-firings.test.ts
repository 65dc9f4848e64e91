import { expect, test } from 'vitest';
import { severalFirings } from '../../../../core/findings/detectors/several-firings.ts';
import type { FiringInLog } from '../../../../core/model/source.ts';
import { celsius, seconds } from '../../../../core/units.ts';
import { plainSource } from '../../../builders/log.ts';
import { facts } from '../../../builders/facts.ts';
import { judge, NOTHING, onlyFinding } from '../../../builders/judge.ts';

const firingsOf = (count: number, chosen: number): FiringInLog[] =>
  Array.from({ length: count }, (_, index) => ({
    startSeconds: seconds(index * 90_000),
    endSeconds: seconds(index * 90_000 + 70_000),
    startInstant: null,
    peakC: celsius(1000),
    samples: 1000,
    chosen: index === chosen,
  }));

test('says how many there are and which is judged', () => {
  const told = facts({ source: { ...plainSource(3000), firings: firingsOf(3, 1) } });
  const finding = onlyFinding(severalFirings, told);
  expect(finding).toMatchObject({ severity: 'watch', figures: { firings: 3, firing: 2 } });
  expect(finding.evidence).toEqual([{ fromSeconds: 0, toSeconds: told.trace.durationSeconds }]);
});

test('is a note once the person has said which is meant', () => {
  const source = { ...plainSource(3000), firings: firingsOf(2, 0) };
  expect(
    onlyFinding(severalFirings, facts({ source, options: { reading: { firing: 1 } } })),
  ).toMatchObject({ severity: 'note', figures: { firings: 2, firing: 1 } });
});

test('is silent where the log holds one', () => {
  expect(judge(severalFirings, facts({ source: plainSource(3000) }))).toEqual(NOTHING);
});
