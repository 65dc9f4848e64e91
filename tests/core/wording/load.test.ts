import { describe, expect, it } from 'vitest';
import { celsius, celsiusDelta } from '../../../core/units.ts';
import { loadWords } from '../../../core/wording/load.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';
import { finding } from './builders.ts';

describe('whether the load can be saved', () => {
  const troubled = exampleDocument('troubled-firing');

  it('is yes where it is short, to which cone, and as a whole firing', () => {
    const { answer, advice, caution } = loadWords(troubled);
    expect(answer).toContain('can very likely be saved');
    expect(advice).toContain('fired again to cone 6');
    expect(advice).toContain('whole firing');
    expect(caution).toContain('over-temperature cut-out');
  });

  it('does not call a record blameless whose couple was failing', () => {
    const good = exampleDocument('good-firing');
    const withCouple = (severity: 'act' | 'watch') =>
      loadWords({ ...good, findings: [{ ...finding('sensor-open'), severity }] });
    expect(withCouple('act').answer).not.toContain('Nothing in the record');
    expect(withCouple('act').answer).toContain('the couple that gave them was failing');
    expect(withCouple('act').advice).toContain('cones that stood beside the ware');
    expect(withCouple('watch').answer).toContain('Nothing in the record');
  });

  it('goes by the cones where they were seen, whatever the couple read', () => {
    const good = exampleDocument('good-firing');
    const coupleErrorC = {
      ...{ estimate: celsiusDelta(-38), low: celsiusDelta(-46), high: celsiusDelta(-30) },
      ...{ byPlace: [], oneOffset: null },
    };
    const heatWork = { ...good.heatWork!, coupleErrorC };
    const findings = [{ ...finding('sensor-drift'), severity: 'act' as const }];
    const { answer } = loadWords({ ...good, heatWork, findings });
    expect(answer).toBe('By the cones that were seen this load got what was meant.');
  });

  it('leaves short bisque the choice to be glazed as it is', () => {
    const bisque = { ...troubled, options: { ...troubled.options, purpose: 'bisque' as const } };
    expect(loadWords(bisque).advice).toContain('may be glazed as it is');
  });

  it('is no where it went beyond, with a caution about stuck ware', () => {
    const words = loadWords({ ...troubled, load: { state: 'beyond', refireTo: null } });
    expect(words.answer).toContain('cannot be taken back');
    expect(words.caution).toContain('eye protection');
  });

  it('says of bisque that went beyond what glaze does on it (common practice)', () => {
    const options = { ...troubled.options, purpose: 'bisque' as const };
    const beyond = { state: 'beyond' as const, refireTo: null };
    expect(loadWords({ ...troubled, options, load: beyond }).advice).toContain('drinks less glaze');
    expect(loadWords({ ...troubled, load: beyond }).advice).not.toContain('drinks less glaze');
  });

  it('is as careful as the range: half a cone is the usual tolerance (common practice)', () => {
    const beyond = (position: number, range: number) => {
      const cone = { ...troubled.heatWork!.cone, position };
      const ends = { lowPosition: position - range, highPosition: position + range };
      const heatWork = { ...troubled.heatWork!, cone: { ...cone, ...ends } };
      return loadWords({ ...troubled, heatWork, load: { state: 'beyond', refireTo: null } }).answer;
    };
    expect(beyond(6.51, 0.4)).toContain('probably went a little past its cone');
    expect(beyond(6.51, 0.4)).not.toContain('cannot be taken back');
    expect(beyond(6.95, 0.4)).toContain('cannot be taken back');
    const short = { ...troubled.heatWork!.cone, position: 5.4, highPosition: 5.7 };
    const heatWork = { ...troubled.heatWork!, cone: short };
    expect(loadWords({ ...troubled, heatWork }).answer).toContain('probably a little short');
  });

  it('cannot be told of a log without a firing', () => {
    const none = { ...exampleDocument('no-schedule'), heatWork: null };
    const trace = { ...none.trace, peakC: celsius(20) };
    expect(loadWords({ ...none, trace }).answer).toContain('because it shows no firing');
    expect(loadWords({ ...none, trace }).advice).toContain('the log of the firing itself');
  });

  it.each([
    ['no cone was given', {}],
    ['its heat-work could not be worked out', { heatWork: null }],
  ])('cannot be told because %s', (because, change) => {
    const document = { ...exampleDocument('no-schedule'), ...change };
    expect(loadWords(document).answer).toContain(`cannot be told from this log because ${because}`);
  });

  it('cannot be told where the record ends before the firing or the range is too wide', () => {
    const { heatWork } = troubled;
    const state = { state: 'cannot-tell' as const, refireTo: null };
    expect(loadWords({ ...troubled, load: state }).answer).toContain('both sides of the cone');
    const cone = { ...heatWork!.cone, bound: 'at-least' as const };
    const open = { ...troubled, load: state, heatWork: { ...heatWork!, cone } };
    expect(loadWords(open).answer).toContain('ends before the firing did');
  });

  it('speaks of a good load without giving it a clean bill of health', () => {
    const { answer, advice } = loadWords(exampleDocument('good-firing'));
    expect(answer).toBe('Nothing in the record speaks against this load.');
    expect(advice).toContain('cones');
  });
});
