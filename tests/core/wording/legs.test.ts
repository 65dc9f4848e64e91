import { describe, expect, it } from 'vitest';
import { legName, legsWords, overshootWords } from '../../../core/wording/legs.ts';
import { speechIn } from '../../../core/wording/speech.ts';
import type { Finding } from '../../../core/model/finding.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';
import { finding } from './builders.ts';

const say = speechIn('C');

describe('the legs', () => {
  const troubled = exampleDocument('troubled-firing');

  it('stand planned beside driven, with a verdict in words', () => {
    const { rows, note } = legsWords(troubled, say);
    expect(rows.map(({ name, verdict }) => `${name}: ${verdict}`)).toEqual([
      'Climb to 120 °C: as planned',
      'Hold at 120 °C: as planned',
      'Climb to 1000 °C: as planned',
      'Climb to 1188 °C: slow',
      'Hold at 1188 °C: short',
      'Free cooling: –',
    ]);
    expect(rows[3]?.planned?.rate).toBe('60 °C/h');
    expect(rows[3]?.actual?.rate).toBe('44 °C/h');
    expect(rows[4]?.planned?.lasted).toBe('45 min');
    expect(rows.map(({ departs }) => departs)).toEqual([false, false, false, true, true, false]);
    expect(note).toContain('certainty of 86 %');
  });

  it('call a climb that was late by a fall held up, not slow', () => {
    const slow = (figures: Record<string, number>, instead: Finding['instead'] = []) => {
      const findings = [{ ...finding('ramp-slow', { segment: 2, ...figures }), instead }];
      return legsWords({ ...troubled, findings }, say).rows[3]?.verdict;
    };
    expect(slow({ fallenMinutes: 83 }, ['power-interrupted'])).toBe('held up by a fall');
    expect(slow({ fallenMinutes: 83 }, ['power-interrupted', 'heavy-load'])).toBe('slow');
    expect(slow({})).toBe('slow');
    expect(slow({ segment: 1, fallenMinutes: 83 })).toBe('slow');
  });

  it('say of a hold that ran off its level that it did', () => {
    const legs = troubled.alignment!.legs.map((leg, i) =>
      i === 4 ? { ...leg, verdict: 'off-level' as const } : leg,
    );
    const said = legsWords({ ...troubled, alignment: { ...troubled.alignment!, legs } }, say);
    expect(said.rows[4]).toMatchObject({ verdict: 'off its level', departs: true });
  });

  it('warn where the schedule could hardly be laid on the log', () => {
    const alignment = { ...troubled.alignment!, confidence: 0.4 };
    expect(legsWords({ ...troubled, alignment }, say).note).toContain('treat the legs with care');
  });

  it('say how the logged setpoint agrees', () => {
    const alignment = { ...troubled.alignment!, setpointDisagreementSeconds: 90 };
    expect(legsWords({ ...troubled, alignment } as typeof troubled, say).note).toContain(
      'within 2 min',
    );
  });

  it('are those of the trace where there is no schedule', () => {
    const { rows, heading, note } = legsWords(exampleDocument('no-schedule'), say);
    expect(heading).toBe('What the kiln did, leg by leg');
    expect(note).toContain('No schedule was given');
    expect(rows.every(({ planned }) => planned === null)).toBe(true);
    expect(rows.at(-1)?.name).toMatch(/^Cooling to/);
  });

  it('say that a leg never ran', () => {
    const legs = troubled.alignment!.legs.map((leg, index) =>
      index === 4 ? { ...leg, actual: null, verdict: 'missing' as const } : leg,
    );
    const { rows } = legsWords({ ...troubled, alignment: { ...troubled.alignment!, legs } }, say);
    expect(rows[4]).toMatchObject({ verdict: 'never ran', actual: null });
  });

  it('say of a leg that the record could not show why it cannot be told', () => {
    const unseen = (indices: number[], change: Partial<typeof troubled.trace>) => {
      const legs = troubled.alignment!.legs.map((leg, index) =>
        indices.includes(index) ? { ...leg, actual: null, verdict: 'missing' as const } : leg,
      );
      const trace = { ...troubled.trace, ...change };
      return legsWords({ ...troubled, trace, alignment: { ...troubled.alignment!, legs } }, say)
        .rows;
    };
    expect(unseen([0, 1], { startSeconds: null })[0]).toMatchObject({
      verdict: 'cannot be told: the log begins hot',
      departs: false,
    });
    expect(unseen([0, 1], {})[0]).toMatchObject({ verdict: 'never ran', departs: true });
    expect(unseen([4, 5], { offSeconds: null })[4]?.verdict).toBe(
      'cannot be told: the log ends before',
    );
  });

  it('do not say that a target was not reached where the record stops on the way to it', () => {
    const cut = (offSeconds: typeof troubled.trace.offSeconds) => {
      const legs = troubled
        .alignment!.legs.slice(0, 4)
        .map((leg, index) => (index === 3 ? { ...leg, verdict: 'not-reached' as const } : leg));
      const trace = { ...troubled.trace, offSeconds };
      return legsWords({ ...troubled, trace, alignment: { ...troubled.alignment!, legs } }, say)
        .rows[3];
    };
    expect(cut(null)).toMatchObject({ verdict: 'the record stops before its end', departs: false });
    expect(cut(troubled.trace.offSeconds)).toMatchObject({
      verdict: 'target not reached',
      departs: true,
    });
  });

  it('are named by how they were to run', () => {
    const [ramp] = troubled.alignment!.legs;
    const [segment, ...others] = troubled.schedule!.segments;
    const withFirst = (change: object) => ({
      ...troubled,
      schedule: { ...troubled.schedule!, segments: [{ ...segment!, ...change }, ...others] },
    });
    const atFull = withFirst({ rateCPerHour: 'full' });
    expect(legName(ramp!, atFull, say)).toBe('climb to 120 °C at full power');
    const fuelled = { ...atFull, options: { kiln: { heat: 'fuel' as const } } };
    expect(legName(ramp!, fuelled, say)).toBe('climb to 120 °C as fast as it goes');
    expect(legName(ramp!, withFirst({ rateCPerHour: null, minutes: 90 }), say)).toBe(
      'climb to 120 °C in 1 h 30 min',
    );
    expect(legName({ ...ramp!, kind: 'cooling' }, troubled, say)).toBe('fall to 120 °C');
  });

  it('count days where the firing passes midnight', () => {
    expect(legsWords(troubled, say).rows.at(-1)?.actual?.ended).toBe('05:10 +1 d');
  });
});

describe('overshoots', () => {
  it('are said as differences', () => {
    expect(overshootWords(exampleDocument('troubled-firing'), speechIn('F'))).toEqual([
      'The target of 248 °F was passed by 23 °F at 1 h 35 min, for 19 min.',
    ]);
  });
});
