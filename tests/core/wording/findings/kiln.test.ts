import { describe, expect, it } from 'vitest';
import { KILN_WORDINGS } from '../../../../core/wording/findings/kiln.ts';
import { topic } from '../builders.ts';

describe('the wordings of the kiln', () => {
  it('say how much power was lost and when', () => {
    const about = topic('element-lost', { lostPercent: 33 });
    expect(KILN_WORDINGS['element-lost'].title(about).text).toBe(
      'The kiln lost 33 % of its power, 9 h 00 min into the log, within minutes.',
    );
  });

  it('tell a worn element from a weak supply by arithmetic that holds', () => {
    // Power goes with V²: (1 − 0.06)² = 0.8836, so 6 % fewer volts are about 12 % less power.
    expect(Math.round((1 - 0.94 ** 2) * 100)).toBe(12);
    expect(KILN_WORDINGS['supply-varies'].why()).toContain('6 % fewer volts are 12 % less power');
  });
});
