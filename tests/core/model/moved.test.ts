import { expect, test } from 'vitest';
import { z } from 'zod';
import { zAnalysisDocument } from '../../../core/model/document.ts';
import { MOMENTS, movedBy } from '../../../core/model/moved.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

/** Names of the document that end in `Seconds` and are no moment. */
const LENGTHS = [
  'aboveForSeconds',
  'durationSeconds',
  'intervalSeconds',
  'medianIntervalSeconds',
  'memorySeconds',
  'movedSeconds',
  'setpointDisagreementSeconds',
];

const namesIn = (node: unknown): string[] => {
  if (typeof node !== 'object' || node === null) return [];
  const properties = 'properties' in node ? Object.keys(node.properties as object) : [];
  return [...properties, ...Object.values(node).flatMap(namesIn)];
};

test('every name of the document that ends in Seconds is known as a moment or a length', () => {
  const names = namesIn(z.toJSONSchema(zAnalysisDocument));
  const timed = new Set(names.filter((name) => name.endsWith('Seconds')));
  expect([...timed].sort()).toEqual([...MOMENTS, ...LENGTHS].sort());
});

test('moments move, lengths and all else stay, and back again is where it was', () => {
  const { trace, alignment, heatWork } = exampleDocument('troubled-firing');
  const moved = movedBy({ trace, alignment, heatWork }, 3600);
  expect(moved.trace.peakAtSeconds).toBe(trace.peakAtSeconds + 3600);
  expect(moved.trace.gaps[0]!.fromSeconds).toBe(trace.gaps[0]!.fromSeconds + 3600);
  expect(moved.trace.durationSeconds).toBe(trace.durationSeconds);
  expect(moved.alignment!.planned[0]!.atSeconds).toBe(alignment!.planned[0]!.atSeconds + 3600);
  expect(moved.heatWork!.cone).toEqual(heatWork!.cone);
  expect(movedBy(moved, -3600)).toEqual({ trace, alignment, heatWork });
});

test('what is not known stays unknown', () => {
  expect(movedBy({ offSeconds: null, heatWork: null }, 60)).toEqual({
    offSeconds: null,
    heatWork: null,
  });
});
