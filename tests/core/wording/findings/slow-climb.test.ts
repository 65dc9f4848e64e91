import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../../core/model/finding.ts';
import { seconds } from '../../../../core/units.ts';
import {
  SLOW_WORDS,
  slowRemedy,
  slowTitle,
  slowWhy,
  slownessOf,
} from '../../../../core/wording/findings/slow-climb.ts';
import { finding, topic } from '../builders.ts';

const RATES = { segment: 2, plannedCPerHour: 60, achievedCPerHour: 44, lateMinutes: 67 };

const about = (figures: Finding['figures'], instead: Finding['instead'] = []) => {
  const plain = topic('ramp-slow', { ...RATES, ...figures });
  return { ...plain, finding: { ...plain.finding, instead } };
};

describe('a late climb', () => {
  it.each([
    [about({}), 'slow'],
    [about({ fallenMinutes: 65, otherwiseCPerHour: 60 }, ['power-interrupted']), 'fell'],
    [about({ fallenMinutes: 30, otherwiseCPerHour: 50 }, ['heavy-load']), 'fell-and-slow'],
    [about({ nextCPerHour: 45 }), 'at-next-rate'],
  ] as const)('is told for what it looks like', (slow, slowness) => {
    expect(slownessOf(slow)).toBe(slowness);
  });

  it('that fell back is told by the fall, without blaming the elements', () => {
    expect(slowTitle(about({ fallenMinutes: 65, otherwiseCPerHour: 60 })).text).toBe(
      'On the climb to 1188 °C the reading fell and 1 h 05 min went by until it was back; apart from that the kiln made 60 °C/h where 60 °C/h was planned.',
    );
    expect(SLOW_WORDS.fell.why).toContain('the power was gone for a while');
    expect(SLOW_WORDS.fell.remedy).not.toContain('resistance');
    expect(SLOW_WORDS['fell-and-slow'].remedy).toContain('resistance');
  });

  it('at the next segment’s rate sends the reader to the entries first', () => {
    expect(slowTitle(about({ nextCPerHour: 45 })).text).toContain(
      'made 44 °C/h, about as the next segment was to, where 60 °C/h was planned',
    );
    expect(SLOW_WORDS['at-next-rate'].remedy).toMatch(/^Compare the entries/);
    expect(SLOW_WORDS['at-next-rate'].remedy).not.toContain('resistance');
  });

  it('that stopped short of its target did not take longer, it came less far', () => {
    const said = slowTitle(about({ cameToC: 1007, behindPlanMinutes: 31 })).text;
    expect(said).toBe(
      'On the climb to 1188 °C the kiln made 44 °C/h where 60 °C/h was planned: it came to 1007 °C only, 31 min behind the plan.',
    );
  });

  it('leaves its cause to the note that tells of it', () => {
    const beside = (slow: ReturnType<typeof about>, ...findings: Finding[]) => ({
      ...slow,
      document: { ...slow.document, findings },
    });
    const loss = (atHour: number): Finding => {
      const evidence = [{ fromSeconds: seconds(atHour * 3600), toSeconds: seconds(atHour * 3600) }];
      return { ...finding('element-lost'), evidence };
    };
    // The climb ran from 9 h to 10 h.
    const after = beside(about({}), loss(6));
    expect(slowWhy(after, SLOW_WORDS)).toMatch(/power was lost, as note A tells/);
    expect(slowRemedy(after, SLOW_WORDS)).toMatch(/^Do what note A says/);
    const before = beside(about({}), loss(11));
    expect(slowWhy(before, SLOW_WORDS)).toBe(SLOW_WORDS.slow.why);
    expect(slowRemedy(before, SLOW_WORDS)).toBe(SLOW_WORDS.slow.remedy);
    const fell = about({ fallenMinutes: 65, otherwiseCPerHour: 60 }, ['power-interrupted']);
    const cut = beside(fell, finding('overfired'), finding('power-interrupted'));
    expect(slowRemedy(cut, SLOW_WORDS)).toMatch(/^Do what note B says/);
    expect(slowWhy(cut, SLOW_WORDS)).toBe(SLOW_WORDS.fell.why);
    expect(slowRemedy(beside(fell), SLOW_WORDS)).toBe(SLOW_WORDS.fell.remedy);
  });
});
