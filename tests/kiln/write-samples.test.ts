import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { outcomeOf } from './cone-dose.ts';
import { fire } from './fire.ts';
import { sampleReadme } from './sample-readme.ts';
import type { Sample } from './samples.ts';
import { SAMPLES } from './samples.ts';
import { SAMPLE_FOLDER, sampleFiles } from './write-samples.ts';

const MOST_BYTES = 150_000;

describe('the sample traces', () => {
  const made = sampleFiles();
  const onDisk = readdirSync(SAMPLE_FOLDER).sort();

  it('on disk are what the writer makes, byte for byte, and nothing else lies there', () => {
    expect(onDisk).toEqual([...made.keys()].sort());
    for (const [name, bytes] of made) {
      const same = Buffer.from(bytes).equals(readFileSync(join(SAMPLE_FOLDER, name)));
      expect(same, `${name} differs: run npm run samples`).toBe(true);
    }
  });

  it('come out the same a second time', () => {
    expect(sampleFiles()).toEqual(made);
  });

  it('are small enough to carry along', () => {
    for (const [name, bytes] of made) expect(bytes.length, name).toBeLessThan(MOST_BYTES);
  });

  it('are listed in the README, each once with its schedule, and nothing else is', () => {
    const text = readFileSync(join(SAMPLE_FOLDER, 'README.md'), 'utf8');
    const rows = text
      .split('\n')
      .filter((line) => line.startsWith('| '))
      .map((line) => line.split('|').map((cell) => cell.trim()));
    const [header, rule, ...samples] = rows;
    expect(header!.slice(1, -1)).toEqual([
      'sample file',
      'schedule file',
      'what is in it',
      'must find',
      'cone expected',
    ]);
    expect(rule!.slice(1, -1).every((cell) => /^-+$/.test(cell))).toBe(true);
    const listed = samples.flatMap((cells) => cells.slice(1, 3)).sort();
    expect(listed).toEqual(onDisk.filter((name) => name !== 'README.md'));
    expect(text).toBe(sampleReadme(SAMPLES));
  });

  it('come each in a layout of its own, named like its schedule', () => {
    expect(new Set(SAMPLES.map(({ shapeInWords }) => shapeInWords)).size).toBe(SAMPLES.length);
    for (const { file, scheduleFile } of SAMPLES) {
      const stem = file.slice(0, file.lastIndexOf('.'));
      expect(scheduleFile).toMatch(new RegExp(`^${stem}\\.schedule\\.(json|csv)$`));
    }
  });
});

describe('the firings behind the samples', () => {
  const byFile = new Map(SAMPLES.map((sample) => [sample.file, sample]));
  const firing = (file: string) => fire(byFile.get(file)!.setup);
  const sound = ({ setup }: Sample): Sample['setup'] => ({
    ...setup,
    faults: (setup.faults ?? []).filter(({ kind }) => !kind.startsWith('couple-')),
  });
  const segmentMinutes = (file: string, segment: number): number => {
    const { legs } = firing(file).truth;
    const ramp = legs.find((leg) => leg.kind === 'ramp' && leg.segment === segment)!;
    return (ramp.endSeconds - ramp.startSeconds) / 60;
  };

  it.each(SAMPLES)('$file lands clear of the next cone, on cone $coneExpected', (sample) => {
    // By the published chart through the test kiln's own fit; the couple's faults left aside.
    const { atSeconds, readingC } = fire(sound(sample));
    const { cone, position } = outcomeOf(atSeconds, readingC);
    expect(cone).toBe(sample.coneExpected);
    const whole = cone!.startsWith('0') ? 1 - Number(cone!.slice(1)) : Number(cone);
    expect(position! - whole).toBeGreaterThan(0.1);
    expect(position! - whole).toBeLessThan(0.65);
  });

  it.each(SAMPLES.filter(({ mustFind }) => mustFind.length === 0))(
    '$file, which must not be faulted, ran to its end without a fault on its own cone',
    (sample) => {
      const { truth } = fire(sample.setup);
      expect(truth.ended).toBe('complete');
      expect(truth.faults).toEqual([]);
      expect(sample.setup.schedule).toBe(sample.schedule);
      expect(sample.coneExpected).toBe(sample.schedule.cone);
      for (const { arrivalSeconds, kind } of truth.legs) {
        if (kind === 'ramp') expect(arrivalSeconds).not.toBeNull();
      }
    },
  );

  it('underfired-glaze is one to one and a half cones short, never at its peak', () => {
    const { atSeconds, readingC, truth } = firing('underfired-glaze.txt');
    const position = outcomeOf(atSeconds, readingC).position!;
    expect(6 - position).toBeGreaterThan(1);
    expect(6 - position).toBeLessThan(1.5);
    expect(truth.legs.some((leg) => leg.segment === 2 && leg.arrivalSeconds !== null)).toBe(false);
  });

  it('worn-elements is slow in its last ramp at full power, half an hour late and more', () => {
    // The schedule's 208 °F at 108 °F/h take 115.6 min.
    expect(segmentMinutes('worn-elements.csv', 2)).toBeGreaterThan(115.6 + 30);
    const { fullPower, legs } = firing('worn-elements.csv').truth;
    const last = legs.findLast(({ kind }) => kind === 'ramp')!;
    const full = fullPower.reduce(
      (sum, { fromSeconds, toSeconds }) =>
        sum +
        Math.max(
          0,
          Math.min(toSeconds, last.endSeconds) - Math.max(fromSeconds, last.startSeconds),
        ),
      0,
    );
    expect(full / (last.endSeconds - last.startSeconds)).toBeGreaterThan(0.7);
  });

  it('element-lost and power-cut lengthen the ramp that they fall into by a fifth and more', () => {
    // 1750 °F at 300 °F/h take 350 min; 960 °C at 175 °C/h take 329 min.
    expect(segmentMinutes('element-lost.json', 1)).toBeGreaterThan(350 * 1.18);
    expect(segmentMinutes('power-cut.csv', 1)).toBeGreaterThan(329 * 1.2);
  });

  it('overshoot goes 15 °C and more beyond its peak', () => {
    const peakC = firing('overshoot.csv').readingC.reduce((a, b) => Math.max(a, b));
    expect(peakC - 1210).toBeGreaterThan(15);
  });

  it('failing-couple gives no reading for 14 minutes and a great many leaps', () => {
    const failing = firing('failing-couple.csv');
    const clean = fire(sound(byFile.get('failing-couple.csv')!));
    const open = failing.readingC.filter(Number.isNaN).length;
    expect((open * 30) / 60).toBeCloseTo(19, 0);
    const leaps = failing.readingC.filter((value, i) => Math.abs(value - clean.readingC[i]!) > 50);
    expect(leaps.length).toBeGreaterThan(10);
  });
});
