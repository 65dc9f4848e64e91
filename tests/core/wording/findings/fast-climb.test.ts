import { describe, expect, it } from 'vitest';
import { FAST_CLIMB } from '../../../../core/wording/findings/fast-climb.ts';
import { finding, topic } from '../builders.ts';

const rates = { segment: 2, plannedCPerHour: 60, achievedCPerHour: 80 };

describe('a fast climb in words', () => {
  it('that outran the plan is looked for at the relay', () => {
    const about = topic('ramp-fast', rates);
    expect(FAST_CLIMB.title(about).text).toBe(
      'On the climb to 1188 °C the kiln made 80 °C/h where 60 °C/h was planned.',
    );
    expect(FAST_CLIMB.why(about)).toContain('outran the plan');
    expect(FAST_CLIMB.remedy(about)).toContain('relay');
  });

  it('that was catching up is a consequence, and blames no relay', () => {
    const about = topic('ramp-fast', { ...rates, behindDeltaC: 88 }, 'F');
    expect(FAST_CLIMB.title(about).text).toBe(
      'On the climb to 2170 °F the kiln made 144 °F/h where 108 °F/h was planned: it began 158 °F below the plan and was catching up.',
    );
    expect(FAST_CLIMB.why(about)).not.toContain('outran');
    const { document } = about;
    const said = (findings: typeof document.findings) =>
      FAST_CLIMB.remedy({ ...about, document: { ...document, findings } });
    expect(said([finding('underfired'), finding('ramp-slow')])).toContain('which note B tells');
    expect(said([])).toMatch(/^Find out what made the kiln late/);
    expect(said([])).not.toContain('relay');
  });
});
