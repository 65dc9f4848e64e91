import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLog } from '../../../core/log/read-log.ts';
import { Refusal } from '../../../core/model/refusal.ts';
import type { Log } from '../../../core/model/log.ts';
import type { ReadingDecisions } from '../../../core/model/options.ts';
import { zSource } from '../../../core/model/source.ts';
import { makeTrace } from '../../../core/trace/make-trace.ts';
import { CLIMB, plain, refusal, stampAt, utf8 } from './plain-logs.ts';
import { firings, printedIn, sensible, writings, written } from './written-logs.ts';

const RUNS = 1000;

const read = (text: string, decisions?: ReadingDecisions): Log =>
  readLog(utf8(text), 'firing.csv', decisions);

/** Rows of which some neighbours have changed places, as where two writers share a file. */
const withSwaps = <Row>(rows: readonly Row[], places: readonly number[]): Row[] => {
  const swapped = [...rows];
  for (const place of places) {
    const at = 3 * (place % Math.floor((rows.length - 1) / 3)) + 1;
    [swapped[at], swapped[at + 1]] = [rows[at + 1]!, rows[at]!];
  }
  return swapped;
};

describe('a random firing in a random dialect', () => {
  test('is read back as it was written', () => {
    fc.assert(
      fc.property(firings, writings, (firing, anyhow) => {
        const how = sensible(anyhow);
        const log = readLog(written(firing, how), 'x');
        const scale = how.unit === 'F' ? 1.8 : 1;
        expect(log.source.rowsRead).toBe(firing.celsius.length);
        expect(log.source.rowsKept).toBe(firing.celsius.length);
        firing.celsius.forEach((celsius, row) => {
          expect(log.atSeconds[row]).toBeCloseTo(row * firing.stepSeconds, 6);
          expect(Math.abs(log.celsius[row]! - celsius)).toBeLessThan(0.0051 / scale + 1e-9);
        });
        expect(log.setpointC === null).toBe(!(how.setpoint && how.hasHeader));
      }),
      { numRuns: RUNS },
    );
  });

  test('says the same in °C, °F and K', () => {
    fc.assert(
      fc.property(firings, writings, (firing, anyhow) => {
        const how = sensible({ ...anyhow, hasHeader: true });
        const [c, f, k] = (['C', 'F', 'K'] as const).map((unit) =>
          readLog(written(firing, { ...how, unit }), 'x'),
        );
        firing.celsius.forEach((celsius, row) => {
          expect(c!.celsius[row]).toBeCloseTo(printedIn(celsius, 'C'), 9);
          expect(Math.abs(f!.celsius[row]! - c!.celsius[row]!)).toBeLessThan(0.008);
          expect(Math.abs(k!.celsius[row]! - c!.celsius[row]!)).toBeLessThan(0.011);
        });
      }),
      { numRuns: RUNS },
    );
  });

  test('does not depend on the ends of its lines', () => {
    fc.assert(
      fc.property(firings, writings, (firing, anyhow) => {
        const how = sensible(anyhow);
        const [lf, crlf, cr] = (['\n', '\r\n', '\r'] as const).map((lineEnd) => {
          const log = readLog(written(firing, { ...how, lineEnd }), 'x');
          return { ...log, source: { ...log.source, byteLength: 0 } };
        });
        expect(crlf).toEqual(lf);
        expect(cr).toEqual(lf);
      }),
      { numRuns: RUNS },
    );
  });

  test('is the same firing in whatever order its rows and columns stand', () => {
    const orders = fc.record({
      isNewestFirst: fc.boolean(),
      swaps: fc.array(fc.nat(), { maxLength: 3 }),
      columns: fc.shuffledSubarray([0, 1, 2], { minLength: 3 }),
    });
    fc.assert(
      fc.property(firings, orders, (firing, { isNewestFirst, swaps, columns }) => {
        const rows = firing.celsius.map((c, row) => [
          new Date(firing.startMillis + row * firing.stepSeconds * 1000).toISOString(),
          c.toFixed(1),
          (c + 3).toFixed(1),
        ]);
        const turned = isNewestFirst ? rows.toReversed() : withSwaps(rows, swaps);
        const text = (some: string[][], order: number[]): string =>
          [['Time', 'Kiln °C', 'Setpoint °C'], ...some]
            .map((cells) => order.map((column) => cells[column]).join(';'))
            .join('\n');
        const plainly = makeTrace(read(`${text(rows, [0, 1, 2])}\n`));
        const turnedLog = read(`${text(turned, columns)}\n`);
        // The log keeps the order of the file; what is made of it does not depend on that.
        expect(turnedLog.celsius[0]).toBeCloseTo(Number(turned[0]![1]), 9);
        const trace = makeTrace(turnedLog);
        expect([...trace.atSeconds]).toEqual([...plainly.atSeconds]);
        expect([...trace.celsius]).toEqual([...plainly.celsius]);
        expect([...trace.setpointC!]).toEqual([...plainly.setpointC!]);
        expect(trace.summary.startInstant).toBe(plainly.summary.startInstant);
      }),
      { numRuns: RUNS },
    );
  });

  test('is the same with care and fast', () => {
    fc.assert(
      fc.property(firings, writings, (firing, anyhow) => {
        const bytes = written(firing, sensible(anyhow));
        expect(readLog(bytes, 'x')).toEqual(readLog(bytes, 'x', {}, { isCareful: true }));
      }),
      { numRuns: RUNS },
    );
  });
});

describe('bytes that were damaged', () => {
  /** Cuts, overwrites, doubles or strikes out stretches of a file. */
  const damage = fc.array(
    fc.record({
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      length: fc.integer({ min: 0, max: 60 }),
      into: fc.uint8Array({ minLength: 0, maxLength: 20 }),
    }),
    { minLength: 1, maxLength: 6 },
  );
  const damaged = (
    bytes: Uint8Array,
    wounds: readonly { at: number; length: number; into: Uint8Array }[],
  ) =>
    wounds.reduce<Uint8Array>((whole, { at, length, into }) => {
      const from = Math.floor(at * whole.length);
      return Uint8Array.from([
        ...whole.subarray(0, from),
        ...into,
        ...whole.subarray(from + length),
      ]);
    }, bytes);

  test('are read with an account that adds up, or refused in words', () => {
    fc.assert(
      fc.property(firings, writings, damage, (firing, anyhow, wounds) => {
        const bytes = damaged(written(firing, sensible(anyhow)), wounds);
        try {
          const log = readLog(bytes, 'x');
          expect(zSource.safeParse(log.source).error).toBeUndefined();
          expect(log.celsius).toHaveLength(log.source.rowsKept);
          expect(log.celsius.every(Number.isFinite)).toBe(true);
          expect(log.atSeconds.every(Number.isFinite)).toBe(true);
          const fast = readLog(bytes, 'x', {}, { isCareful: true });
          expect(fast).toEqual(log);
        } catch (thrown) {
          if (!(thrown instanceof Refusal)) throw thrown;
          expect(thrown.message).not.toMatch(/undefined|NaN|\[object|Error|at .*:\d+/);
        }
      }),
      { numRuns: RUNS },
    );
  });

  test('that mean nothing are refused', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 3000 }), (bytes) => {
        try {
          const { source } = readLog(bytes, 'x');
          expect(source.rowsKept + source.rowsRejected).toBe(source.rowsRead);
        } catch (thrown) {
          if (!(thrown instanceof Refusal)) throw thrown;
          expect(thrown.message.length).toBeGreaterThan(10);
        }
      }),
      { numRuns: RUNS },
    );
  });
});

describe("the person's decisions", () => {
  const two = [
    'Time,Kiln,Shelf',
    ...CLIMB.map((value, i) => `${stampAt(10 * i)},${value},${value - 9}`),
  ].join('\n');

  test('choose another column, by name or by number', () => {
    expect(read(two).celsius[3]).toBeCloseTo(CLIMB[3]!, 9);
    expect(read(two, { temperatureColumn: 'Shelf' }).celsius[3]).toBeCloseTo(CLIMB[3]! - 9, 9);
    expect(read(two, { temperatureColumn: '3' }).celsius[3]).toBeCloseTo(CLIMB[3]! - 9, 9);
  });

  test('choose the unit, the day order and the interval', () => {
    expect(read(two, { unit: 'F' }).celsius[0]).toBeCloseTo((20 - 32) / 1.8, 9);
    const days = [
      't;c',
      ...CLIMB.map((value, i) => `04/05/2024 06:${String(i).padStart(2, '0')};${value}`),
    ].join('\n');
    expect(read(days, { dayOrder: 'month-first' }).startInstant).toBe('2024-04-05T06:00:00');
    expect(read(days, { dayOrder: 'day-first' }).startInstant).toBe('2024-05-04T06:00:00');
    const bare = ['Kiln °C', ...CLIMB].join('\n');
    expect(read(bare, { intervalSeconds: 60 }).atSeconds.at(-1)).toBe(29 * 60);
  });

  test('choose the delimiter, the decimal mark and the header line', () => {
    const text = [
      'a;b',
      'Time;Temp',
      ...CLIMB.map((value, i) => `${stampAt(i)};${String(value).replace('.', ',')}`),
    ].join('\n');
    const log = read(text, { delimiter: ';', decimalMark: ',', headerLine: 2 });
    expect(log.source.headerLine).toBe(2);
    expect(log.celsius[1]).toBeCloseTo(CLIMB[1]!, 9);
    expect(log.source.decisions.find(({ what }) => what === 'delimiter')?.why).toBe('given');
  });

  test('are refused where they cannot be', () => {
    expect(refusal(utf8(two), { temperatureColumn: 'Attic' }).code).toBe('bad-option');
    expect(refusal(utf8(two), { timeColumns: ['Attic'] }).code).toBe('bad-option');
    expect(refusal(utf8(two), { timeColumns: ['Kiln'], temperatureColumn: 'Time' }).code).toBe(
      'bad-option',
    );
    expect(refusal(utf8(two), { headerLine: 999 }).code).toBe('bad-option');
  });
});

describe('rows as they were printed', () => {
  test('keep equal and backward times, in the order of the file', () => {
    const rows = ['06:00', '06:05', '06:05', '06:03', '06:10'].map(
      (clock, i) => `2024-03-14 ${clock},${20 + i}`,
    );
    const log = read(['Time,Temp °C', ...rows].join('\n'));
    expect([...log.atSeconds]).toEqual([0, 300, 300, 180, 600]);
    expect([...log.line]).toEqual([2, 3, 4, 5, 6]);
  });

  test('rejected for want of a reading leave their time behind', () => {
    const log = read(plain(CLIMB.map((value, i) => (i === 4 ? 'OPEN' : i === 7 ? '' : value))));
    expect([...log.noReadingSeconds]).toEqual([2400, 4200]);
    expect(log.source.rejected).toEqual([
      { line: 6, reason: 'no-reading', text: `${stampAt(40)},OPEN` },
      { line: 9, reason: 'no-reading', text: `${stampAt(70)},` },
    ]);
  });

  test('are listed up to the first 200, with their text cut', () => {
    const climb = Array.from({ length: 300 }, (_, i) => 20 + 3 * i);
    const spoilt = Array.from(
      { length: 250 },
      (_, i) => `${stampAt(3000 + i)},---${' '.repeat(i)}${'x'.repeat(300)}`,
    );
    const { source } = read(`${plain(climb)}${spoilt.join('\n')}\n${stampAt(4000)},920.5\n`);
    expect(source.rowsRejected).toBe(250);
    expect(source.rejected).toHaveLength(200);
    expect(source.rejected[0]!.text).toHaveLength(200);
    expect(source.rejected[0]!.text.endsWith('…')).toBe(true);
  });
});

test('an encoding can be guessed from outside', () => {
  const text = plain(CLIMB, 'Время,Temp C');
  const bytes = Uint8Array.from(text, (letter) => {
    const code = letter.charCodeAt(0);
    return code < 0x80 ? code : code - 0x350;
  });
  const log = readLog(bytes, 'x', {}, { guessEncoding: () => 'windows-1251' });
  expect(log.source.encoding).toBe('windows-1251');
  expect(log.source.time.columns).toEqual(['Время']);
});

test('nothing is decided by the name of the file, and nothing of it is repeated', () => {
  const log = readLog(utf8(plain()), 'kelvin-json.png');
  expect(log.source.fileName).toBe('kelvin-json.png');
  expect(log.source.format).toBe('delimited');
  expect(log.source.decisions.find(({ what }) => what === 'unit')?.choice).toBe('C');
});
