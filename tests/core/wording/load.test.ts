import { describe, expect, it } from 'vitest';
import { loadWords } from '../../../core/wording/load.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

describe('whether the load can be saved', () => {
  const troubled = exampleDocument('troubled-firing');

  it('is yes where it is short, to which cone, and as a whole firing', () => {
    const { answer, advice, caution } = loadWords(troubled);
    expect(answer).toContain('can very likely be saved');
    expect(advice).toContain('fired again to cone 6');
    expect(advice).toContain('whole firing');
    expect(caution).toContain('over-temperature cut-out');
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
