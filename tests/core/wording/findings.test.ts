import { describe, expect, it } from 'vitest';
import { findingsWords } from '../../../core/wording/findings.ts';
import { speechIn } from '../../../core/wording/speech.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';
import type { Finding, FindingId } from '../../../core/model/finding.ts';
import { everyFinding, finding } from './builders.ts';

describe('findings in words', () => {
  const troubled = exampleDocument('troubled-firing');

  it('are lettered in the document’s order', () => {
    const words = findingsWords(troubled, speechIn('C'));
    expect(words.map(({ letter, id }) => `${letter} ${id}`)).toEqual(
      troubled.findings.map(({ id }, index) => `${'ABCDEF'[index]} ${id}`),
    );
  });

  it('name the alternatives that the detector named, and what would tell', () => {
    const [slow] = findingsWords(troubled, speechIn('C'));
    expect(slow?.couldBe[0]?.cause).toBe('The elements are worn.');
    expect(slow?.couldBe[0]?.tell).toMatch(/^The slowness grows smoothly.*\.$/);
    expect(slow?.couldBe.length).toBeGreaterThan(troubled.findings[0]!.instead.length);
  });

  it('leave out what the record would show and does not', () => {
    const [slow, ...others] = troubled.findings;
    const about = { ...slow!, instead: ['power-interrupted', 'elements-weak'] as const };
    const causes = (outcome: 'clear' | 'not-applicable') => {
      const unseen = ['power-interrupted', 'elements-weak'] as const;
      const reason = outcome === 'clear' ? 'within-limits' : 'alignment-uncertain';
      const checks = unseen.map((id) => ({ id, outcome, reason }));
      const findings = [{ ...about, instead: [...about.instead] }, ...others];
      const [said] = findingsWords({ ...troubled, findings, checks }, speechIn('C'));
      return said!.couldBe.map(({ cause }) => cause);
    };
    const gone = 'The power was gone for a while.';
    expect(causes('not-applicable')).toContain(gone);
    expect(causes('clear')).not.toContain(gone);
    // Wear that no check could show may be there all the same.
    expect(causes('clear')).toContain('The elements are worn.');
  });

  it('leave what else it could be to the note that tells of the cause', () => {
    const slow = {
      ...finding('ramp-slow', { segment: 2 }),
      instead: ['elements-weak', 'element-lost', 'heavy-load'] as FindingId[],
    };
    const said = (...findings: Finding[]) =>
      findingsWords({ ...troubled, findings: [slow, ...findings] }, speechIn('C'))[0]!;
    expect(said().couldBe.length).toBeGreaterThan(3);
    const { couldBe, why } = said(finding('element-lost'));
    expect(couldBe.map(({ tell }) => tell.slice(0, 18))).toEqual(['Note B tells of it']);
    expect(why).toContain('note B');
  });

  it('point to the note that tells of an alternative, where it was found itself', () => {
    const [slow, ...others] = troubled.findings;
    const about = { ...slow!, instead: [others[0]!.id] };
    const [said] = findingsWords({ ...troubled, findings: [about, ...others] }, speechIn('C'));
    expect(said?.couldBe[0]?.tell).toMatch(/^Note B tells of it: /);
  });

  it('show what was measured beside its limit', () => {
    const [slow] = findingsWords(troubled, speechIn('F'));
    expect(slow?.measured).toContainEqual({
      label: 'late by',
      value: '1 h 07 min',
      limit: '10 min',
    });
    expect(slow?.measured).toContainEqual({ label: 'planned', value: '108 °F/h', limit: null });
  });

  it('say how far the legs are trusted where they are not certain', () => {
    const words = findingsWords(everyFinding({ confidencePercent: 42 }), speechIn('C'));
    for (const { why } of words) expect(why).toContain('certainty of 42 % only');
    expect(findingsWords(troubled, speechIn('C'))[0]?.why).not.toContain('certainty of');
  });
});
