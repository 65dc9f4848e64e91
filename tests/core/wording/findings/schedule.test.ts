import { describe, expect, it } from 'vitest';
import { SCHEDULE_WORDINGS } from '../../../../core/wording/findings/schedule.ts';
import { topic } from '../builders.ts';

describe('the wordings of the schedule', () => {
  it('name the leg, the rates and the delay', () => {
    const figures = { segment: 2, plannedCPerHour: 60, achievedCPerHour: 44, lateMinutes: 67 };
    expect(SCHEDULE_WORDINGS['ramp-slow'].title(topic('ramp-slow', figures)).text).toBe(
      'On the climb to 1188 °C the kiln made 44 °C/h where 60 °C/h was planned, and took 1 h 07 min longer than it should.',
    );
  });

  it('say a hold’s two lengths', () => {
    const figures = { segment: 2, plannedMinutes: 45, heldMinutes: 9 };
    expect(SCHEDULE_WORDINGS['hold-short'].title(topic('hold-short', figures)).text).toBe(
      'The hold at 1188 °C lasted 9 min of the planned 45 min.',
    );
  });

  it.each([
    [
      { segment: 2, offDeltaC: -9, wanderDeltaC: 4 },
      'The hold at 1188 °C stood 9 °C below its level.',
    ],
    [
      { segment: 2, offDeltaC: 9, wanderDeltaC: 4 },
      'The hold at 1188 °C stood 9 °C above its level.',
    ],
    [{ offDeltaC: 1, wanderDeltaC: 14 }, 'A hold wandered over 14 °C.'],
    [{}, 'A hold wandered over more than its noise.'],
  ])('tell a hold off its level from one that wandered: %o', (figures, said) => {
    expect(SCHEDULE_WORDINGS['hold-drift'].title(topic('hold-drift', figures)).text).toBe(said);
  });

  it('tell an end of power from wear, of a kiln that has elements', () => {
    const about = topic('ended-early');
    const why = SCHEDULE_WORDINGS['ended-early'].why;
    expect(why(about)).toContain('a breaker, a fuse or a cut-out ends it at once');
    const options = { ...about.document.options, kiln: { heat: 'fuel' as const } };
    const said = why({ ...about, document: { ...about.document, options } });
    expect(said).not.toMatch(/element|breaker|fuse/);
  });

  it('say where a firing stopped and what was still to come', () => {
    const figures = { endedC: 980, leftMinutes: 125 };
    expect(SCHEDULE_WORDINGS['ended-early'].title(topic('ended-early', figures)).text).toBe(
      'The firing stopped at 980 °C, 9 h 00 min into the log, with 2 h 05 min of the schedule still to come.',
    );
  });
});
