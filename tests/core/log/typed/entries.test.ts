import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLog } from '../../../../core/log/read-log.ts';
import { typedEntries, typedLines, withUnit } from '../../../../core/log/typed/entries.ts';

/** The pairs in short: `8:00=20`. */
const short = (text: string): string[] | null =>
  typedEntries(text)?.map(({ time, temperature }) => `${time}=${temperature}`) ?? null;

describe('times and temperatures typed by hand', () => {
  test.each([
    ['0:00 20 / 3h 600 / 9:30pm 1222', ['0:00=20', '3:00:00=600', '9:30pm=1222']],
    ['0:00=20; 3:00=600; 8:30=1222', ['0:00=20', '3:00=600', '8:30=1222']],
    ['8:00 -> 20\n11:00 -> 600', ['8:00=20', '11:00=600']],
    ['20 C at 8:00\n600 C at 11:00', ['8:00=20 °C', '11:00=600 °C']],
    ['8 am - 68 degrees F\n11 am - 1112 degrees F', ['8 am=68 °F', '11 am=1112 °F']],
    ['0 h: 20 Grad\n1,5 Std: 600,5 Grad', ['0:00:00=20', '1:30:00=600.5']],
    ['7h30 20 °C\n11h 600 °C', ['7:30:00=20 °C', '11:00:00=600 °C']],
    ['0h 20\n1h 100\n2h 15 min 300', ['0:00:00=20', '1:00:00=100', '2:15:00=300']],
    ['0:00, 20\n3h; 600\n5 h 30 min / 900', ['0:00=20', '3:00:00=600', '5:30:00=900']],
    ['90 min 300\n2 hours 400', ['1:30:00=300', '2:00:00=400']],
    [
      '# glaze\n8:00 20\n11:00 600 turned up to 4\n17:30 1222 cone 6 down',
      [...['8:00=20', '11:00=600', '17:30=1222']],
    ],
    ['Fired to cone 6 on Tuesday.\n8:00 20\n11:00 600', ['8:00=20', '11:00=600']],
    ['8:00 1,112\n11:00 2.232 °F\n12:00 -1’000,5', ['8:00=1112', '11:00=2232 °F', '12:00=-1000.5']],
    ['cone 6\n8:00 20\n11:00 600', ['=6', '8:00=20', '11:00=600']],
    ['8:00 20\n10:00 looked in\n11:00 600', ['8:00=20', '10:00=', '11:00=600']],
  ])('%j', (text, pairs) => {
    expect(short(text)).toEqual(pairs);
  });

  test('know their lines', () => {
    const entries = typedEntries('\n8:00 20; 9:00 100\n\n11:00 600\n')!;
    expect(entries.map(({ line }) => line)).toEqual([2, 2, 4]);
    expect(entries[1]!.text).toBe('8:00 20; 9:00 100');
  });
});

describe('what nobody typed by hand', () => {
  test.each([
    ['a header', 'Time,Temp\n8:00,20\n9:00,100\n'],
    ['dates', '2024-03-14 08:00,20\n2024-03-14 09:00,100\n'],
    ['three columns', '8:00,20,25\n9:00,100,110\n'],
    ['bare temperatures', '20\n100\n600\n'],
    ['one reading', '8:00 20'],
    ['many rows', Array.from({ length: 50 }, (_, i) => `${i}:00 ${20 + i}`).join('\n')],
    ['nothing', ''],
    [
      'a system log, whose dates are no temperatures',
      'Mar 14 06:30:00 shed kiln[812]: temp=21.5\nMar 14 06:50:00 shed kiln[812]: temp=81.5\n',
    ],
    ['fractions of a second', '06:30:00.123 -> Temp: 21.5 C\n06:50:00.123 -> Temp: 81.5 C\n'],
  ])('%s', (_, text) => {
    expect(typedEntries(text)).toBeNull();
  });
});

test('any short text is answered at once, without a throw', () => {
  const piece = fc.constantFrom(
    ...['8:00', '20', ' ', '\n', '/', ';', 'pm', 'h', '1222 °C', '-', '.', ',', 'ü', '9'.repeat(9)],
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 200 }), (pieces) => {
      const started = performance.now();
      typedEntries(pieces.join(''));
      expect(performance.now() - started).toBeLessThan(500);
    }),
    { numRuns: 1000 },
  );
});

test('each line is known by itself, also where the whole is not enough', () => {
  const lines = typedLines('glaze on the top shelf\n8:00 20\nsix 12 34 56\n\n9:00 100; 10:00 200');
  expect(lines.map((line) => line?.length ?? null)).toEqual([0, 1, null, 0, 2]);
});

describe('a unit written behind bare temperatures', () => {
  test.each([
    ['0:00 20 / 3h 600°C / 9:30pm 1222°', '0:00 20 °F / 3h 600°C / 9:30pm 1222 °F'],
    ['20 at 8:00\r\n600.5 at 11:00', '20 °F at 8:00\n600.5 °F at 11:00'],
    ['8:00 20 degrees\n11:00 600 turned up to 4', '8:00 20 °F\n11:00 600 °F turned up to 4'],
    ['# 8 shelves\n8:00 20\n10:00 looked in\n11:00 600', null],
  ])('%j', (text, written) => {
    const whole = text.replaceAll(/^(8|11):00 (20|600)$/gm, '$1:00 $2 °F');
    expect(withUnit(text, 'F')).toBe(written ?? whole);
  });

  test('leaves a text that nobody typed by hand as it is', () => {
    expect(withUnit('Time,Temp\n8:00,20\n9:00,100\n', 'F')).toBe('Time,Temp\n8:00,20\n9:00,100\n');
  });

  test('is read as if the unit had been given', () => {
    const written = fc.constantFrom('', '°', ' degrees', ' C', '°F', ' Grad');
    const parted = fc.constantFrom('\n', ' / ', '; ', '\r\n');
    const reading = fc.record({
      rise: fc.integer({ min: 1, max: 180 }),
      written,
      remark: fc.constantFrom('', ' top shelf', ' damper in'),
    });
    const read = (text: string, unit?: 'C' | 'F') =>
      readLog(new TextEncoder().encode(text), 'x', unit === undefined ? {} : { unit }).celsius;
    fc.assert(
      fc.property(
        fc.array(reading, { minLength: 2, maxLength: 12 }),
        parted,
        fc.constantFrom('C' as const, 'F' as const),
        (readings, part, unit) => {
          const text = readings
            .map(
              (one, hour) => `${hour}:00 ${20 + 180 * hour + one.rise}${one.written}${one.remark}`,
            )
            .join(part);
          expect(read(withUnit(text, unit))).toEqual(read(text, unit));
        },
      ),
      { numRuns: 1000 },
    );
  });
});
