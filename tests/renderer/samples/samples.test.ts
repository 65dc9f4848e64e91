import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { SAMPLES } from '../../../renderer/samples/samples.ts';
import { bundledSchedules } from '../../../renderer/samples/sample-schedules.ts';

const files = readdirSync(new URL('../../../sample-traces/', import.meta.url)).filter(
  (name) => name !== 'README.md',
);

describe('the samples to try', () => {
  it('are all that are bundled, each with its schedule', () => {
    const named = SAMPLES.flatMap(({ logName, scheduleName }) => [logName, scheduleName]);
    expect(named.sort()).toEqual(files.sort());
  });

  it('are told apart by what they are about', () => {
    expect(new Set(SAMPLES.map(({ about }) => about)).size).toBe(SAMPLES.length);
  });

  it('offer schedules that can be read', () => {
    expect(bundledSchedules).toHaveLength(SAMPLES.length);
  });
});
