import { describe, expect, it } from 'vitest';
import { HEAT_WORK_WORDINGS } from '../../../../core/wording/findings/heat-work.ts';
import { finding, topic } from '../builders.ts';

describe('the wordings of heat-work', () => {
  it('say how far short, and what would have done it', () => {
    const about = topic('underfired', { shortCones: 0.56 });
    expect(HEAT_WORK_WORDINGS.underfired.title(about).text).toBe(
      'The heat-work comes to cone 5½ where cone 6 was meant, 0.6 of a cone short.',
    );
    expect(HEAT_WORK_WORDINGS.underfired.why(about)).toContain('cone 6 got 45 % of the dose');
    expect(HEAT_WORK_WORDINGS.underfired.remedy(about)).toContain(
      'a hold of 1 h 07 min at the peak',
    );
  });

  it('say it in the reader’s degrees', () => {
    const about = topic('underfired', { shortCones: 0.56 }, 'F');
    expect(HEAT_WORK_WORDINGS.underfired.remedy(about)).toContain('a peak of 2197 °F');
  });

  it('do not advise a little more where a firing was far short', () => {
    const about = topic('underfired', { shortCones: 10.9 });
    const document = { ...about.document, heatWork: { ...about.document.heatWork!, remedies: [] } };
    const remedy = (shortCones: number) =>
      HEAT_WORK_WORDINGS.underfired.remedy({ ...topic('underfired', { shortCones }), document });
    expect(remedy(10.9)).toContain('which programme ran');
    expect(remedy(0.6)).toContain('a little higher');
  });

  it.each([
    ['overfired', 'overCones', '08', 4, true],
    ['underfired', 'shortCones', '04', 4, true],
    ['overfired', 'overCones', '08', 1.4, false],
    ['overfired', 'overCones', '6', 4, false],
  ] as const)(
    'say of %s by %s where %s was meant, %d off, that cones with the zero run backwards: %s',
    (id, figure, cone, off, isSaid) => {
      const about = topic(id, { [figure]: off });
      const target = { ...about.document.heatWork!.target!, cone };
      const document = { ...about.document, heatWork: { ...about.document.heatWork!, target } };
      const causes = HEAT_WORK_WORDINGS[id]
        .couldBe({ ...about, document })
        .map(({ cause }) => cause);
      expect(causes.join(' ').includes('counted the wrong way')).toBe(isSaid);
    },
  );

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
    expect(why(topic('overfired', { overCones: 2.2 }))).not.toContain('hold at');
  });

  it('say of a firing within the tolerance that nothing needs changing', () => {
    const about = topic('overfired', { overCones: 0.4 });
    about.document.heatWork!.target!.verdict = 'within';
    const { title, remedy } = HEAT_WORK_WORDINGS.overfired;
    expect(title(about).text).toContain('0.4 of a cone past it, within the usual half cone');
    // The troubled firing's first finding is a last climb that ran late.
    expect(remedy(about)).toMatch(/^Nothing needs changing.*keeps its rate again \(note A\)/);
    const short = topic('underfired', { shortCones: 0.4 });
    short.document.heatWork!.target!.verdict = 'within';
    expect(HEAT_WORK_WORDINGS.underfired.title(short).text).toContain('short of it, within');
    expect(HEAT_WORK_WORDINGS.underfired.remedy(short)).toMatch(/^Nothing needs changing/);
  });

  it('name what happened at the top before a slow approach', () => {
    const about = topic('overfired', { overCones: 1.4 });
    const { why } = HEAT_WORK_WORDINGS.overfired;
    const said = (...findings: typeof about.document.findings) =>
      why({ ...about, document: { ...about.document, findings } });
    const slow = finding('ramp-slow', { segment: 2 });
    expect(said(slow)).toContain('the last climb took longer than planned, as note A tells');
    expect(said(slow, finding('overshoot', { segment: 2 }))).toContain('as note B tells');
    // Low down neither adds heat-work.
    expect(said(finding('ramp-slow', { segment: 0 }))).toMatch(/^Heat-work is time and/);
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
