import { describe, expect, it } from 'vitest';
import {
  LEG_VERDICTS,
  SCHEMA_VERSION,
  zAlignedLeg,
  zAnalysisDocument,
  zHeatWork,
  zRemedy,
} from '../../../core/model/document.ts';
import { EXAMPLE_DOCUMENTS, exampleDocument } from '../../fixtures/documents/load.ts';

const good = exampleDocument('good-firing');
const accepts = (change: object): boolean =>
  zAnalysisDocument.safeParse({ ...good, ...change }).success;

describe('the analysis document', () => {
  it('knows its version', () => {
    expect(SCHEMA_VERSION).toBe(1);
    expect(accepts({ schemaVersion: 2 })).toBe(false);
  });

  it('has every field the contract names, and no more', () => {
    for (const name of Object.keys(good)) expect(accepts({ [name]: undefined })).toBe(false);
    expect(accepts({ summary: 'fine' })).toBe(false);
  });

  it('says null where something cannot be known', () => {
    for (const name of ['schedule', 'alignment', 'heatWork', 'elements']) {
      expect(accepts({ [name]: null })).toBe(true);
    }
    for (const name of ['source', 'trace', 'curve', 'bands', 'load', 'findings', 'checks']) {
      expect(accepts({ [name]: null })).toBe(false);
    }
  });

  it('holds no sentence outside what people and files named themselves', () => {
    const named = new Set(['fileName', 'text', 'name', 'choice', 'channel', 'place', 'pattern']);
    const sentences: string[] = [];
    const visit = (value: unknown, key: string): void => {
      if (typeof value === 'string' && !named.has(key) && /\w \w+ \w/.test(value)) {
        sentences.push(`${key}: ${value}`);
      } else if (Array.isArray(value)) value.forEach((item) => visit(item, key));
      else if (value !== null && typeof value === 'object') {
        for (const [name, item] of Object.entries(value)) visit(item, name);
      }
    };
    for (const name of EXAMPLE_DOCUMENTS) visit(exampleDocument(name), '');
    expect(sentences).toEqual([]);
  });
});

describe('a leg', () => {
  const leg = good.alignment!.legs[0]!;

  it('that never happened has no actual course', () => {
    expect(zAlignedLeg.safeParse({ ...leg, actual: null, verdict: 'missing' }).success).toBe(true);
    expect(zAlignedLeg.safeParse({ ...leg, planned: null }).success).toBe(false);
  });

  it('is judged by one of the words of the contract', () => {
    for (const verdict of LEG_VERDICTS) {
      expect(zAlignedLeg.safeParse({ ...leg, verdict }).success).toBe(true);
    }
    expect(zAlignedLeg.safeParse({ ...leg, verdict: 'bad' }).success).toBe(false);
  });
});

describe('heat-work', () => {
  const heatWork = good.heatWork!;

  it('may have reached no cone', () => {
    const cone = { ...heatWork.cone, label: null, position: null, lowPosition: null };
    expect(zHeatWork.safeParse({ ...heatWork, cone, equivalentC: null }).success).toBe(true);
  });

  it('has parts whose shares are shares', () => {
    const [part] = heatWork.parts;
    const parts = [{ ...part, doseShare: 1.2 }];
    expect(zHeatWork.safeParse({ ...heatWork, parts }).success).toBe(false);
  });

  it('has remedies with a range whose far end may be open', () => {
    const remedy = { kind: 'longer-hold', amount: 20, lowAmount: 8, highAmount: null, unit: 'min' };
    expect(zRemedy.safeParse(remedy).success).toBe(true);
    expect(zRemedy.safeParse({ ...remedy, lowAmount: null }).success).toBe(false);
    expect(zRemedy.safeParse({ ...remedy, unit: 'h' }).success).toBe(false);
  });
});
