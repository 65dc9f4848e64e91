import { describe, expect, it } from 'vitest';
import type { Log } from '../../../core/model/log.ts';
import { Refusal } from '../../../core/model/refusal.ts';
import { zSource } from '../../../core/model/source.ts';
import { chooseFiring } from '../../../core/trace/choose-firing.ts';
import { makeTrace } from '../../../core/trace/make-trace.ts';
import { firing, traceFrom, type Stretch } from '../../builders/trace.ts';
import { logOf } from '../../builders/log.ts';

const BISQUE: readonly Stretch[] = [
  { rateCPerHour: 100, toC: 1000 },
  { rateCPerHour: 120, toC: 40 },
];
const GLAZE: readonly Stretch[] = [
  { rateCPerHour: 150, toC: 1220 },
  { rateCPerHour: 120, toC: 40 },
];
const REST: Stretch = { holdMinutes: 600 };
const columnsOf = (...stretches: Stretch[]) =>
  traceFrom(firing(20, ...stretches), { intervalSeconds: 60, noiseC: 0.3 });

const three = columnsOf(...BISQUE, REST, ...GLAZE, REST, ...BISQUE);
const START = '2024-03-14T06:00:00+01:00';
const log = logOf(three, { startInstant: START, setpointC: three.celsius.slice() });
const peakOf = (one: Log): number => Math.round(makeTrace(one).summary.peakC);

describe('a log of three firings', () => {
  const chosen = chooseFiring(log);

  it('is narrowed to the hottest, and says so as something to check', () => {
    expect(peakOf(chosen)).toBe(1220);
    expect(chosen.source.decisions.at(-1)).toMatchObject({
      what: 'firing',
      choice: '2 of 3',
      why: 'hottest',
      certainty: 0.5,
    });
    expect(chosen.source.warnings).toContain('several-firings');
    expect(chosen.source.firings!.map((one) => one.chosen)).toEqual([false, true, false]);
  });

  it('still accounts for every row that was read', () => {
    expect(zSource.parse(chosen.source)).toEqual(chosen.source);
    expect(chosen.source.rowsKept).toBe(three.celsius.length);
    expect(chosen.celsius.length).toBeLessThan(three.celsius.length / 2);
  });

  it('lists each with its beginning, end and peak, apart from the others', () => {
    const firings = chosen.source.firings!;
    expect(firings.map(({ peakC }) => Math.round(peakC))).toEqual([1000, 1220, 1000]);
    for (const [index, one] of firings.entries()) {
      expect(one.endSeconds).toBeLessThan(firings[index + 1]?.startSeconds ?? Infinity);
      const offsetMs = Date.parse(one.startInstant!) - Date.parse(START);
      expect(offsetMs / 1000).toBe(one.startSeconds);
    }
  });

  it('begins its own clock, and keeps its lines and other columns beside it', () => {
    const { startSeconds, startInstant } = chosen.source.firings![1]!;
    expect(chosen.atSeconds[0]).toBe(0);
    expect(chosen.startInstant).toBe(startInstant);
    const first = three.atSeconds.indexOf(startSeconds);
    expect(chosen.line[0]).toBe(log.line[first]);
    expect(chosen.setpointC).toEqual(chosen.celsius);
    const { summary } = makeTrace(chosen);
    expect(summary.startInstant).toBe(startInstant);
    expect(summary.repairs).toEqual([]);
  });

  it.each([
    [1, 1000],
    [2, 1220],
    [3, 1000],
  ])('gives number %i to whoever asks for it', (wanted, peakC) => {
    const given = chooseFiring(log, wanted);
    expect(peakOf(given)).toBe(peakC);
    expect(given.source.decisions.at(-1)).toMatchObject({ why: 'given', certainty: 1 });
    expect(given.source.warnings).not.toContain('several-firings');
    expect(given.source.firings!.findIndex((one) => one.chosen)).toBe(wanted - 1);
  });

  it('refuses a number that it does not hold', () => {
    expect(() => chooseFiring(log, 4)).toThrow(Refusal);
    expect(() => chooseFiring(log, 4)).toThrow('the log holds 3 firings');
  });

  it('is parted alike newest first', () => {
    const reversed = logOf(
      {
        atSeconds: three.atSeconds.map((_, i) => -i * 60),
        celsius: three.celsius.slice().reverse(),
      },
      { startInstant: '2024-03-18T00:00:00' },
    );
    const glaze = chooseFiring(reversed);
    expect(peakOf(glaze)).toBe(1220);
    expect(glaze.source.firings!.map(({ startSeconds }) => startSeconds)).toEqual(
      chosen.source.firings!.map(({ startSeconds }) => startSeconds),
    );
    expect(makeTrace(glaze).summary.startInstant).toBe(glaze.source.firings![1]!.startInstant);
  });
});

it('a log of one firing is the same log, whether or not it is asked for by number', () => {
  const one = logOf(columnsOf(...GLAZE));
  expect(chooseFiring(one)).toBe(one);
  expect(chooseFiring(one, 1)).toBe(one);
  expect(() => chooseFiring(one, 2)).toThrow('the log holds one firing');
});

it('records set one behind the other, each from 0 on, are firings of their own', () => {
  const bisque = columnsOf(...BISQUE);
  const glaze = columnsOf(...GLAZE);
  const joined = logOf({
    atSeconds: Float64Array.from([...bisque.atSeconds, ...glaze.atSeconds]),
    celsius: Float64Array.from([...bisque.celsius, ...glaze.celsius]),
  });
  const chosen = chooseFiring(joined);
  expect(chosen.celsius).toEqual(glaze.celsius);
  expect(chosen.atSeconds).toEqual(glaze.atSeconds);
  expect(makeTrace(chosen).summary.repairs).toEqual([]);
  expect(chooseFiring(joined, 1).celsius.length).toBeGreaterThan(bisque.celsius.length - 10);
});

it('rows without a reading go with the firing they stand in', () => {
  const isOpen = (i: number) => i >= 100 && i < 110;
  const kept = three.atSeconds.map((_, i) => i).filter((i) => !isOpen(i));
  const holed = logOf(
    {
      atSeconds: Float64Array.from(kept, (i) => three.atSeconds[i]!),
      celsius: Float64Array.from(kept, (i) => three.celsius[i]!),
    },
    {
      line: Uint32Array.from(kept, (i) => i + 2),
      noReadingSeconds: three.atSeconds.slice(100, 110),
      noReadingLine: Uint32Array.from({ length: 10 }, (_, i) => i + 102),
    },
  );
  expect(chooseFiring(holed, 1).noReadingSeconds).toHaveLength(10);
  expect(chooseFiring(holed, 2).noReadingSeconds).toHaveLength(0);
});
