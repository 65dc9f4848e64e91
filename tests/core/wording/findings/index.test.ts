import { describe, expect, it } from 'vitest';
import { FINDING_IDS } from '../../../../core/model/finding.ts';
import { FINDING_WORDINGS, speaksOf } from '../../../../core/wording/findings/index.ts';
import { stringsIn, topic } from '../builders.ts';

/** Acting on these without care could hurt someone, so each must come with a caution. */
const DANGEROUS = [
  'underfired', // fire hotter or longer
  'overfired', // stuck or run ware
  'ramp-slow', // elements, relays
  'ramp-fast',
  'overshoot',
  'peak-not-reached',
  'ended-early',
  'elements-weak',
  'element-lost',
  'power-stuck-on',
  'power-interrupted',
  'ceiling-near',
  'supply-varies',
  'sensor-open', // reaching into the kiln
  'sensor-spikes',
  'sensor-flat',
  'sensor-reversed',
  'sensor-wrong-type',
  'sensor-drift',
  'drying-fast', // bursting ware
  'burnout-fast', // fumes
  'opened-hot',
] as const;

describe('the wordings', () => {
  it('are there for every finding, in exactly one group', () => {
    expect(Object.keys(FINDING_WORDINGS).sort()).toEqual([...FINDING_IDS].sort());
    const groups = ['heat-work', 'schedule', 'kiln', 'couple', 'log', 'ware'] as const;
    for (const id of FINDING_IDS) {
      expect(groups.filter((group) => speaksOf(id, group))).toHaveLength(1);
    }
  });

  it.each(DANGEROUS)('%s carries a caution', (id) => {
    expect(FINDING_WORDINGS[id].caution?.(topic(id).say)).toMatch(/\w/);
  });

  it('of anything electrical defer to a qualified person and the local code', () => {
    for (const id of ['element-lost', 'power-stuck-on', 'elements-weak'] as const) {
      const caution = FINDING_WORDINGS[id].caution?.(topic(id).say) ?? '';
      expect(caution).toContain('qualified person');
      expect(caution).toContain('local electrical code');
    }
  });

  it.each(FINDING_IDS)('%s has whole sentences, also without any figure', (id) => {
    const wording = FINDING_WORDINGS[id];
    const about = topic(id);
    const sentences = [wording.title(about).text, wording.why(about), wording.remedy(about)];
    for (const said of sentences) expect(said).toMatch(/^[A-Z“].*[.!?]$/su);
    expect(wording.couldBe(about).length).toBeGreaterThan(0);
    expect(wording.name).toMatch(/^[a-z]/);
    for (const { cause, tell } of [wording.alternative, ...wording.couldBe(about)]) {
      expect(cause).toMatch(/^[A-Z].*[^.]$/su);
      expect(tell).toMatch(/^[a-z].*[^.]$/su);
    }
    expect(stringsIn([...sentences, wording]).join(' ')).not.toMatch(/undefined|NaN|null|\s{2}/);
  });

  it.each(FINDING_IDS)('%s has no word of blame and no clean bill of health', (id) => {
    const wording = FINDING_WORDINGS[id];
    const about = topic(id);
    const said = [wording.title(about).text, wording.why(about), wording.remedy(about)].join(' ');
    expect(said).not.toMatch(
      /\b(your mistake|your fault|you forgot|you failed|no fault|careless)\b/i,
    );
  });
});
