import { describe, expect, test } from 'vitest';
import { readLog } from '../../../../core/log/read-log.ts';
import { Refusal } from '../../../../core/model/refusal.ts';
import { climb, utf8 } from '../helpers.ts';

const text = (names: string, rows: readonly (readonly (string | number)[])[]): Uint8Array =>
  utf8([names, ...rows.map((row) => row.join(',')), ''].join('\n'));
const refusal = (bytes: Uint8Array): Refusal => {
  try {
    readLog(bytes, 'x');
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
  }
  throw new Error('it was read');
};

describe('a log', () => {
  test('holds the kept rows, from zero, with their lines', () => {
    const rows = climb((c, i) => [i === 0 || i === 3 ? 'OPEN' : c]);
    const log = readLog(text('Time,Kiln °C', rows), 'x');
    expect([log.atSeconds[0], log.atSeconds[1], log.atSeconds[2]]).toEqual([0, 600, 1800]);
    expect([...log.line.subarray(0, 3)]).toEqual([3, 4, 6]);
    expect(log.startInstant).toBe('2024-03-14T06:10:00');
    expect([...log.noReadingSeconds]).toEqual([-600, 1200]);
    expect(log.source.sha256).toBeNull();
  });

  test('converts each reading from the unit beside it', () => {
    const rows = climb((c, i) => [i < 20 ? `${c} °C` : `${c * 1.8 + 32} °F`]);
    const log = readLog(text('Time,Kiln', rows), 'x');
    climb((c) => [c]).forEach(([, c], i) => expect(log.celsius[i]).toBeCloseTo(Number(c), 6));
  });

  test('does not share its columns with what it was made from', () => {
    const log = readLog(
      text(
        'Time,Kiln °C,Setpoint °C',
        climb((c) => [c, Math.round(c)]),
      ),
      'x',
    );
    const buffers = [log.atSeconds, log.celsius, log.setpointC!].map(({ buffer }) => buffer);
    expect(new Set(buffers).size).toBe(3);
    expect(log.celsius.buffer.byteLength).toBe(30 * 8);
  });
});

describe('a table with too little in it is refused', () => {
  test('with one row, with no reading, with no time', () => {
    expect(
      refusal(
        text(
          'Time,Kiln °C',
          climb((c) => [c], 1),
        ),
      ),
    ).toMatchObject({ code: 'too-few-rows', line: 2 });
    expect(
      refusal(
        text(
          'Time,Kiln °C',
          climb((_, i) => [i < 9 ? -999 : 'OPEN']),
        ),
      ),
    ).toMatchObject({ code: 'no-temperature' });
    expect(
      refusal(
        text(
          'Time,Kiln °C',
          climb((c, i) => [i === 4 ? c : -999], 6),
        ),
      ),
    ).toMatchObject({ code: 'too-few-rows' });
  });
});
