import { describe, expect, it } from 'vitest';
import { HEAT_WORK_WORDINGS } from '../../../../core/wording/findings/heat-work.ts';
import { topic } from '../builders.ts';

describe('the wordings of heat-work', () => {
  it('say how far short, and what would have done it', () => {
    const about = topic('underfired', { shortCones: 0.56 });
    expect(HEAT_WORK_WORDINGS.underfired.title(about).text).toBe(
      'The heat-work comes to cone 5½ where cone 6 was meant, 0.6 of a cone short.',
    );
    expect(HEAT_WORK_WORDINGS.underfired.why(about)).toContain('cone 6 got 45 % of the dose');
    expect(HEAT_WORK_WORDINGS.underfired.remedy(about)).toContain('58 min more at the peak');
  });

  it('say it in the reader’s degrees', () => {
    const about = topic('underfired', { shortCones: 0.56 }, 'F');
    expect(HEAT_WORK_WORDINGS.underfired.remedy(about)).toContain('a peak 34 °F higher');
  });

  it('do not advise a little more where a firing was far short', () => {
    const about = topic('underfired', { shortCones: 10.9 });
    const document = { ...about.document, heatWork: { ...about.document.heatWork!, remedies: [] } };
    const remedy = (shortCones: number) =>
      HEAT_WORK_WORDINGS.underfired.remedy({ ...topic('underfired', { shortCones }), document });
    expect(remedy(10.9)).toContain('which programme ran');
    expect(remedy(0.6)).toContain('a little higher');
  });

  it('say how far over in times of the dose', () => {
    const about = topic('overfired', { overCones: 1 });
    const heatWork = about.document.heatWork!;
    heatWork.target!.dose = 2.6;
    expect(HEAT_WORK_WORDINGS.overfired.title(about).text).toContain('one cone too much');
    expect(HEAT_WORK_WORDINGS.overfired.why(about)).toContain('2.6 times the dose');
  });

  it('name a hold at the top that ran long as the likely reason', () => {
    const about = topic('overfired', {
      ...{ overCones: 2.2, segment: 2, plannedMinutes: 15, heldMinutes: 90 },
    });
    const { why, remedy } = HEAT_WORK_WORDINGS.overfired;
    expect(why(about)).toMatch(
      /^The likely reason is the hold at 1188 °C: it lasted 1 h 30 min where 15 min was planned/,
    );
    expect(remedy(about)).toMatch(/^Check the hold in the programme.* hours and minutes/);
    expect(why(topic('overfired', { overCones: 2.2 }))).not.toContain('likely reason');
  });

  it('say of a lower bound that it is one', () => {
    const about = topic('overfired', { overCones: 1 });
    about.document.heatWork!.cone = {
      ...about.document.heatWork!.cone,
      ...{ position: 6.5, bound: 'at-least' as const },
    };
    expect(HEAT_WORK_WORDINGS.overfired.title(about).text).toContain(
      'comes to at least cone 6 where',
    );
  });

  it('know how far cone 06 and cone 6 lie apart on the published chart', () => {
    // Self-supporting cones at 60 °C/h: 998 and 1222 °C (published end-point chart).
    const wording = HEAT_WORK_WORDINGS['wrong-end-cone'];
    expect(wording.why(topic('wrong-end-cone'))).toContain('224 °C');
    expect(wording.why(topic('wrong-end-cone', {}, 'F'))).toContain('403 °F');
    expect(wording.remedy(topic('wrong-end-cone'))).toContain('Cone 6 can still be reached');
  });
});
