import { describe, expect, it } from 'vitest';
import type { ReadingDecisions } from '../../../core/model/options.ts';
import type { OpenFiring } from '../../../renderer/state/firing.ts';
import { ruleToKeep, stillBy } from '../../../renderer/state/rule-keeper.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const DOCUMENT = exampleDocument('good-firing');
const LOG = { fileName: 'a.csv', byteLength: 1, content: null };
const documentRead = (reading: ReadingDecisions | undefined) => ({
  ...DOCUMENT,
  options: reading === undefined ? {} : { reading },
});
const firing = (reading: ReadingDecisions | undefined, rest: Partial<OpenFiring> = {}) =>
  ({ document: documentRead(reading), shape: 'S', rule: null, log: LOG, ...rest }) as OpenFiring;

describe('the rule to keep', () => {
  it('is what was put right, named after the file', () => {
    expect(ruleToKeep(firing({ unit: 'F' }), [])).toEqual({
      ...{ name: 'like a.csv', shape: 'S', decisions: { unit: 'F' } },
    });
  });

  it('keeps the name of the one that it replaces', () => {
    const kept = { name: 'kiln 3', shape: 'S', decisions: { unit: 'K' as const } };
    expect(ruleToKeep(firing({ unit: 'F' }), [kept])?.name).toBe('kiln 3');
    expect(ruleToKeep(firing({ unit: 'K' }), [kept])).toBeNull();
  });

  it('leaves out what belongs to one file', () => {
    const told = { unit: 'F', firing: 2, firstDate: '2026-03-14' } as const;
    expect(ruleToKeep(firing(told), [])?.decisions).toEqual({ unit: 'F' });
    expect(ruleToKeep(firing({ firing: 2 }), [])).toBeNull();
  });

  it('is none where nothing was told or the shape is not known', () => {
    expect(ruleToKeep(firing(undefined), [])).toBeNull();
    expect(ruleToKeep(firing({ unit: 'F' }, { shape: null }), [])).toBeNull();
  });
});

it('a log stays read by its rule until it is read otherwise', () => {
  const rule = { name: 'x', shape: 'S', decisions: { unit: 'F' as const } };
  const before = firing({ unit: 'F' }, { rule });
  expect(stillBy(before, LOG, documentRead({ unit: 'F' }))).toBe(rule);
  expect(stillBy(before, LOG, documentRead({ unit: 'K' }))).toBeNull();
  expect(stillBy(before, { ...LOG }, documentRead({ unit: 'F' }))).toBeNull();
});
