import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readLog } from '../../../core/log/read-log.ts';
import { temperatureIn, toKelvin, celsius as asCelsius } from '../../../core/units.ts';

/**
 * Logs from other fields that nobody on this project wrote. They lie beside the repository and are
 * not copied into it; `truth.tsv` there says what a careful reader finds in each.
 */
const FOLDER = new URL('../../../../shared/real-logs/', import.meta.url);
const isThere = existsSync(new URL('truth.tsv', FOLDER));
if (!isThere) console.log('real logs: the folder ../shared/real-logs is missing, so skipped');

interface Truth {
  readonly file: string;
  readonly data_rows: string;
  readonly temp_rows: string;
  readonly first_temp_time: string;
  readonly first_temp: string;
  readonly last_temp_time: string;
  readonly last_temp: string;
}

/** Tab-separated, with quotes around cells that hold quotes. */
const truths = (): Truth[] => {
  const [header = '', ...rows] = readFileSync(new URL('truth.tsv', FOLDER), 'utf8')
    .trimEnd()
    .split('\n');
  const names = header.split('\t');
  return rows.map(
    (row) =>
      Object.fromEntries(
        row.split('\t').map((cell, index) => [names[index]!, cell]),
      ) as unknown as Truth,
  );
};

/** Whose rows are no records after all, or spoilt beyond counting: see the README there. */
const READ_ROWS: Readonly<Record<string, number>> = {
  // From line 165 on a script has spoilt every row; they are read, and rejected.
  'corrupt_stamps.csv': 2222,
};
/** In kelvin, as its header says or by sense. */
const IN_KELVIN = ['nist_two_tc_kelvin.csv', 'cryo_columnar.json', 'cryo_records.json'];

/** Seconds of a time as truth.tsv prints it, on any one clock. */
const secondsOf = (time: string): number => {
  const elapsed = /^([\d.]+) s elapsed$/.exec(time)?.[1];
  if (elapsed !== undefined) return Number(elapsed);
  return Date.parse(/[+Z]/.test(time.slice(10)) ? time : `${time}Z`) / 1000;
};

describe.skipIf(!isThere)('real logs', () => {
  const all = isThere ? truths() : [];

  test('there are 24', () => {
    expect(all).toHaveLength(24);
  });

  test.each(all.map((truth) => [truth.file, truth] as const))('%s', (file, truth) => {
    const log = readLog(new Uint8Array(readFileSync(new URL(file, FOLDER))), file);
    const printed = (celsius: number): number =>
      IN_KELVIN.includes(file)
        ? toKelvin(asCelsius(celsius))
        : temperatureIn(asCelsius(celsius), 'C');
    expect(log.source.rowsRead).toBe(READ_ROWS[file] ?? Number(truth.data_rows));
    expect(log.source.rowsKept).toBe(Number(truth.temp_rows));
    expect(log.source.rowsKept + log.source.rowsRejected).toBe(log.source.rowsRead);
    expect(printed(log.celsius[0]!)).toBeCloseTo(Number(truth.first_temp), 4);
    expect(printed(log.celsius.at(-1)!)).toBeCloseTo(Number(truth.last_temp), 4);
    const span = secondsOf(truth.last_temp_time) - secondsOf(truth.first_temp_time);
    expect(Math.abs(log.atSeconds.at(-1)! - span)).toBeLessThan(0.002);
    if (!truth.first_temp_time.endsWith('elapsed')) {
      expect(log.startInstant).not.toBeNull();
      const off = secondsOf(log.startInstant!) - secondsOf(truth.first_temp_time);
      expect(Math.abs(off)).toBeLessThan(0.002);
    }
  });
});
