import { describe, expect, test } from 'vitest';
import { measure } from '../../../core/analyze.ts';
import { judgeBoth } from '../../../core/findings/both-runs.ts';
import { firing } from '../../builders/trace.ts';
import { RUN_AGAIN, runOf, twoRuns } from '../../builders/runs.ts';

const DAY = 86_400;
const factsOf = ({ log, trace }: ReturnType<typeof runOf>) => measure(log, trace, { cone: '04' });
const [first, second] = twoRuns().map(factsOf) as [
  ReturnType<typeof factsOf>,
  ReturnType<typeof factsOf>,
];

const outcomeOf = ({ checks }: ReturnType<typeof judgeBoth>, id: string) =>
  checks.find((check) => check.id === id);

describe('the findings of two logs of one load', () => {
  test('come from each alone, on the first one’s clock, each check once', () => {
    const { findings, checks } = judgeBoth(first, second, DAY);
    // 150 and 100 °C/h through drying: the first is beyond 100 °C/h (common practice).
    const drying = findings.filter(({ id }) => id === 'drying-fast');
    expect(drying).toHaveLength(1);
    expect(drying[0]!.figures.fastestCPerHour).toBeCloseTo(150, -1);
    expect(drying[0]!.evidence[0]!.toSeconds).toBeLessThan(DAY);
    expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length);
    // The hole between them is no hole of a log.
    expect(findings.map(({ id }) => id)).not.toContain('log-gap');
  });

  test('tell of ware drying by the run that dried it', () => {
    const slow = factsOf(runOf(firing(20, { rateCPerHour: 60, toC: 700 }), null));
    const fast = factsOf(runOf(firing(20, { rateCPerHour: 200, toC: 1060 }), null));
    const judged = judgeBoth(slow, fast, DAY);
    expect(outcomeOf(judged, 'drying-fast')).toMatchObject({ outcome: 'clear' });
    expect(judged.findings.map(({ id }) => id)).not.toContain('drying-fast');
    const neverDry = factsOf(runOf(firing(20, { rateCPerHour: 60, toC: 75 }), null));
    const found = judgeBoth(neverDry, fast, DAY).findings.find(({ id }) => id === 'drying-fast');
    expect(found!.evidence[0]!.fromSeconds).toBeGreaterThanOrEqual(DAY);
  });

  test('do not tell that the first breaks off or the second begins warm', () => {
    const broken = factsOf(runOf(firing(20, { rateCPerHour: 150, toC: 927 }), null));
    const warm = factsOf(runOf(firing(400, { rateCPerHour: 60, toC: 1060 }), null));
    const judged = judgeBoth(broken, warm, DAY);
    expect(outcomeOf(judged, 'log-starts-hot')).toMatchObject({ outcome: 'clear' });
    // That the second one breaks off at its top is told.
    const ends = judged.findings.filter(({ id }) => id === 'log-ends-early');
    expect(ends.map(({ evidence }) => evidence[0]!.toSeconds >= DAY)).toEqual([true]);
    const cooled = factsOf(runOf(RUN_AGAIN, null));
    const both = judgeBoth(broken, cooled, DAY);
    expect(both.findings.map(({ id }) => id)).not.toContain('log-ends-early');
  });
});
