import { describe, expect, it } from 'vitest';
import { FUEL_SLOW_WORDS } from '../../../../core/wording/findings/fuel-slow-climb.ts';

const causesOf = (slowness: keyof typeof FUEL_SLOW_WORDS): string =>
  FUEL_SLOW_WORDS[slowness].couldBe.map(({ cause }) => cause).join(' ');

describe('a late climb of a kiln that burns fuel', () => {
  it('that was slow throughout leads to fuel, burners, air and damper', () => {
    expect(causesOf('slow')).toMatch(/gas pressure.*damper.*reduction.*burner.*damp:? .*Wind/is);
    expect(causesOf('slow')).not.toContain('flame went out');
    expect(FUEL_SLOW_WORDS.slow.remedy).toContain('gauge pressure');
  });

  it('that fell back leads to the flame first, and to slowness only where it was slow too', () => {
    for (const kind of ['fell', 'fell-and-slow'] as const) {
      expect(FUEL_SLOW_WORDS[kind].couldBe[0]?.cause).toMatch(/^A flame went out/);
      expect(FUEL_SLOW_WORDS[kind].remedy).toContain('the flame and its safeguard');
    }
    expect(causesOf('fell')).not.toContain('reduction');
    expect(causesOf('fell-and-slow')).toContain('reduction');
  });

  it('at the next segment’s rate sends the reader to the entries first', () => {
    expect(FUEL_SLOW_WORDS['at-next-rate'].remedy).toMatch(/^Compare the entries/);
    expect(causesOf('at-next-rate')).toMatch(/^This target was entered too low/);
  });
});
