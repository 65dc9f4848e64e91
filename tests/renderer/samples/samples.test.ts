import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it, vi } from 'vitest';
import { HostGone } from '../../../renderer/host/host.ts';
import { openSample, SAMPLES } from '../../../renderer/samples/samples.ts';
import { bundledSchedules } from '../../../renderer/samples/sample-schedules.ts';

const FOLDER = new URL('../../../sample-traces/', import.meta.url);
const files = readdirSync(FOLDER).filter((name) => name !== 'README.md');

describe('the samples to try', () => {
  it('are all that are bundled, each with its schedule', () => {
    const named = SAMPLES.flatMap(({ logName, scheduleName }) => [logName, scheduleName]);
    expect(named.sort()).toEqual(files.sort());
  });

  it('are told apart by what they are about', () => {
    expect(new Set(SAMPLES.map(({ about }) => about)).size).toBe(SAMPLES.length);
  });

  it('say that the program has ended, where nobody serves them any more', async () => {
    const [sample] = SAMPLES;
    // What a browser rejects with where nobody answers (Fetch standard: a network error).
    const nobody = () => Promise.reject(new TypeError('Failed to fetch'));
    vi.stubGlobal('fetch', nobody);
    await expect(openSample(sample!)).rejects.toBeInstanceOf(HostGone);
    const cutOff = { ok: true, arrayBuffer: nobody, text: nobody };
    vi.stubGlobal('fetch', () => Promise.resolve(cutOff));
    await expect(openSample(sample!)).rejects.toBeInstanceOf(HostGone);
    vi.unstubAllGlobals();
  });

  it('offer each schedule once, though several samples were fired by the same', () => {
    const texts = SAMPLES.map(({ scheduleName }) =>
      readFileSync(new URL(scheduleName, FOLDER), 'utf8'),
    );
    expect(new Set(texts).size).toBeLessThan(SAMPLES.length);
    expect(bundledSchedules).toHaveLength(new Set(texts).size);
    const names = bundledSchedules.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });
});
