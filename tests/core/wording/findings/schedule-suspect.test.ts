import { describe, expect, it } from 'vitest';
import { SCHEDULE_SUSPECT } from '../../../../core/wording/findings/schedule-suspect.ts';
import { topic } from '../builders.ts';

const title = (figures: Record<string, number>, unit: 'C' | 'F' = 'C') =>
  SCHEDULE_SUSPECT.title(topic('schedule-suspect', figures, unit)).text;

describe('a suspected schedule', () => {
  it('names the entry and what was likely meant', () => {
    expect(title({ segment: 0, enteredC: 93.33, meantC: 1093.33 }, 'F')).toContain(
      'entry 1 has the target 200 °F, where 2000 °F or so was likely meant',
    );
    expect(title({ segment: 1, enteredMinutes: 900, meantMinutes: 15 })).toMatch(
      /entry 2, the hold at .* is 15 h 00 min, where 15 min was likely meant/,
    );
    expect(title({ segment: 1, enteredCPerHour: 6, meantCPerHour: 60 })).toMatch(
      /runs at 6 °C\/h, where 60 °C\/h was likely meant/,
    );
    expect(title({ enteredPeakC: 657, meantPeakC: 1215 })).toContain('°C and °F mixed up');
    expect(title({ fromNamesakeCones: 0.2, offCones: -11 })).toContain('zero');
  });

  it('says how far it would miss where nothing explains it', () => {
    const figures = { offCones: -2.3, scheduledMinutes: 600, scheduledPeakC: 1150 };
    expect(title(figures)).toMatch(/10 h 00 min to a peak of 1150 °C, 2.3 cones short of cone/);
  });

  it('says what the slip costs, in time where the cone is the same', () => {
    const figures = { segment: 0, enteredC: 93, meantC: 1093, mendedMinutes: 480 };
    const about = topic('schedule-suspect', { ...figures, scheduledMinutes: 1120 });
    expect(SCHEDULE_SUSPECT.why(about)).toContain('takes 10 h 40 min longer. ');
    const why = (slippedCones: number): string => {
      const known = { ...about.finding.figures, slippedCones };
      return SCHEDULE_SUSPECT.why(topic('schedule-suspect', known));
    };
    expect(why(0.002)).toContain('longer, and comes to the same cone');
    expect(why(0.06)).not.toContain('the same cone');
  });
});
