import { describe, expect, it } from 'vitest';
import { readReference } from '../../../core/thermal/reference.ts';
import { fired } from '../../builders/fired.ts';
import { THIN_BRICK } from '../../kiln/kilns.ts';
import { DECAL, FAST_GLAZE } from '../../kiln/schedules.ts';

const documentOn = (schedule: typeof DECAL) =>
  fired({
    seed: 3,
    kiln: THIN_BRICK,
    schedule,
    loadKg: 35,
    roomC: 20,
    logger: { intervalSeconds: 60 },
  }).document;

describe('the reference firing', () => {
  it('gives its kiln, also after it was written to a file', () => {
    const document = documentOn(FAST_GLAZE);
    const read = readReference(JSON.parse(JSON.stringify(document)));
    expect(read.reason).toBeNull();
    expect(read.known).toEqual(document.elements!.fit);
  });

  it('may be missing, unreadable, or without a kiln in it', () => {
    expect(readReference(undefined).reason).toBe('no-reference');
    expect(readReference({ schemaVersion: 1 }).reason).toBe('reference-unreadable');
    expect(readReference(documentOn(DECAL)).reason).toBe('no-reference-fit');
  });
});
