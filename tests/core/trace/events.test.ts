import { describe, expect, it } from 'vitest';
import { findOff, findStart } from '../../../core/trace/events.ts';
import type { TraceLeg } from '../../../core/model/trace.ts';
import { celsius, celsiusDelta, celsiusPerHour, seconds } from '../../../core/units.ts';

const everyMinute = (count: number, at: (minute: number) => number) => ({
  atSeconds: Float64Array.from({ length: count }, (_, i) => 60 * i),
  celsius: Float64Array.from({ length: count }, (_, i) => at(i)),
});

const startOf = (readings: ReturnType<typeof everyMinute>) =>
  findStart(readings, celsiusDelta(0.3));

describe('the start of heating', () => {
  it('after an hour at rest is found within two minutes', () => {
    const start = startOf(everyMinute(400, (minute) => 20 + Math.max(0, minute - 60) * 2));
    expect(Math.abs(start! - 3600)).toBeLessThanOrEqual(120);
  });

  it('of a log that begins with the firing is its first sample', () => {
    expect(startOf(everyMinute(400, (minute) => 20 + 2.5 * minute))).toBe(0);
  });

  it('cannot be told from a log that begins hot, or never warms', () => {
    expect(startOf(everyMinute(100, (minute) => 300 + 2 * minute))).toBeNull();
    expect(startOf(everyMinute(100, () => 21))).toBeNull();
  });

  it('is not the warmth left by an earlier firing', () => {
    const start = startOf(
      everyMinute(600, (minute) => (minute < 200 ? 55 - minute * 0.15 : 25 + (minute - 200) * 2)),
    );
    expect(Math.abs(start! - 12_000)).toBeLessThanOrEqual(240);
  });
});

const leg = (
  kind: TraceLeg['kind'],
  startHours: number,
  endHours: number,
  rate: number,
): TraceLeg => ({
  kind,
  startSeconds: seconds(3600 * startHours),
  endSeconds: seconds(3600 * endHours),
  startC: celsius(1000),
  endC: celsius(1000),
  rateCPerHour: celsiusPerHour(rate),
});

describe('the end of heating', () => {
  it('is not where a kiln was opened: no shut kiln falls so fast from there', () => {
    const opened = { ...leg('cooling', 20, 20.2, -900), startC: celsius(400) };
    const legs = [leg('hold', 8, 9, 0), leg('cooling', 9, 12, -200), leg('cooling', 12, 20, -70)];
    expect(findOff([...legs, opened])).toBe(9 * 3600);
  });

  it('is where cooling begins that only slows down', () => {
    const legs = [
      leg('ramp', 0, 8, 150),
      leg('hold', 8, 9, 0),
      leg('cooling', 9, 12, -200),
      leg('cooling', 12, 20, -70),
    ];
    expect(findOff(legs)).toBe(9 * 3600);
  });

  it('comes after a controlled fall, which a freer one follows', () => {
    const legs = [leg('ramp', 0, 8, 150), leg('cooling', 8, 12, -60), leg('cooling', 12, 20, -110)];
    expect(findOff(legs)).toBe(12 * 3600);
  });

  it('passes over a last hour at room temperature', () => {
    const legs = [leg('ramp', 0, 8, 150), leg('cooling', 8, 30, -40), leg('hold', 30, 40, 0)];
    expect(findOff(legs)).toBe(8 * 3600);
  });

  it('is unknown where the record ends before it', () => {
    expect(findOff([leg('ramp', 0, 8, 150)])).toBeNull();
    expect(findOff([])).toBeNull();
  });
});
