import { describe, expect, it } from 'vitest';
import { OVERSHOOT } from '../../../../core/wording/findings/overshoot.ts';
import { finding, topic } from '../builders.ts';

describe('an overshoot in words', () => {
  const coasted = topic('overshoot', { segment: 0, overDeltaC: 13, aboveMinutes: 19 }, 'F');
  const heated = topic('overshoot', {
    ...{ segment: 2, overDeltaC: 39, aboveMinutes: 20 },
    ...{ climbedOnMinutes: 12, climbedOnCPerHour: 196 },
  });

  it('of a kiln that coasted past is told as a difference, and by its approach', () => {
    expect(OVERSHOOT.title(coasted).text).toBe(
      'The target of 248 °F was overshot by 23 °F for 19 min.',
    );
    expect(OVERSHOOT.remedy(coasted)).toMatch(/^Approach that target at a slower rate/);
  });

  it('of a kiln that was heated on does not blame the approach', () => {
    expect(OVERSHOOT.title(heated).text).toBe(
      'The target of 1188 °C was overshot by 39 °C: the kiln climbed on at 196 °C/h for 12 min.',
    );
    expect(OVERSHOOT.why(heated)).toContain('Heat stayed on');
    expect(OVERSHOOT.remedy(heated)).toMatch(/relay or contactor.*A slower approach does not mend/);
    expect(OVERSHOOT.couldBe(heated)[0]?.cause).not.toContain('brakes');
  });

  it('leaves the cause to the note that tells of it', () => {
    const { document } = heated;
    const findings = [finding('power-stuck-on'), ...document.findings];
    const said = OVERSHOOT.remedy({ ...heated, document: { ...document, findings } });
    expect(said).toMatch(/^Do first what note A says/);
    expect(said).not.toContain('relay');
    const stuck = { ...heated, document: { ...document, findings } };
    expect(OVERSHOOT.title(stuck).text).toBe(
      'The target of 1188 °C was overshot by 39 °C for 20 min.',
    );
    expect(OVERSHOOT.why(stuck)).toContain('note A tells of it');
  });
});
