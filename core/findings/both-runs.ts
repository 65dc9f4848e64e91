import type { Check, Finding, FindingId } from '../model/finding.ts';
import { movedBy } from '../model/moved.ts';
import type { Facts } from './facts.ts';
import { byUrgencyThenTime, runDetectors } from './run-detectors.ts';

interface Judged {
  readonly findings: readonly Finding[];
  readonly checks: readonly Check[];
}

/** What a log that breaks off, or begins warm, says alone, and the other log of the load answers. */
const ANSWERED_OF_EARLIER: ReadonlySet<FindingId> = new Set(['log-ends-early']);
const ANSWERED_OF_LATER: ReadonlySet<FindingId> = new Set(['log-starts-hot']);

/** Ware gives off its water and burns out once: what the first log went through is judged by it. */
const ONCE: readonly (readonly [FindingId, string])[] = [
  ['drying-fast', 'drying'],
  ['burnout-fast', 'burnout'],
];

const passedOnce = ({ bands }: Facts): FindingId[] =>
  ONCE.filter(([, phase]) =>
    bands.some(({ name, direction }) => name === phase && direction === 'heating'),
  ).map(([id]) => id);

const without = ({ findings, checks }: Judged, ids: ReadonlySet<FindingId>): Judged => ({
  findings: findings.filter(({ id }) => !ids.has(id)),
  checks: checks.map((check) =>
    ids.has(check.id) && check.outcome === 'found'
      ? { id: check.id, outcome: 'clear', reason: 'told-by-another' }
      : check,
  ),
});

/** Of two outcomes of one check the one that says more stands for both. */
const TELLS_MOST: readonly Check['outcome'][] = ['found', 'failed', 'clear', 'not-applicable'];

const ofBoth = (earlier: Judged, later: Judged): Check[] =>
  later.checks.map((check) => {
    const other = earlier.checks.find(({ id }) => id === check.id);
    if (other === undefined) return check;
    const says = (outcome: Check['outcome']): number => TELLS_MOST.indexOf(outcome);
    return says(other.outcome) < says(check.outcome) ? other : check;
  });

/**
 * The findings of two logs of one load, each log judged by itself: what a detector sees is one
 * record without the hole in the middle. The later facts carry the heat-work of both; the earlier
 * ones are judged without it. Evidence comes on the earlier log's clock.
 */
export const judgeBoth = (
  earlier: Facts,
  later: Facts,
  laterBeginsSeconds: number,
): { findings: Finding[]; checks: Check[] } => {
  const first = without(runDetectors({ ...earlier, heatWork: null }), ANSWERED_OF_EARLIER);
  const answered = new Set([...ANSWERED_OF_LATER, ...passedOnce(earlier)]);
  const second = without(runDetectors(later), answered);
  const moved = second.findings.map((finding) => ({
    ...finding,
    evidence: movedBy(finding.evidence, laterBeginsSeconds),
  }));
  return {
    findings: [...first.findings, ...moved].sort(byUrgencyThenTime),
    checks: ofBoth(first, second),
  };
};
