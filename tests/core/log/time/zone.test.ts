import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inTimeZone, isTimeZone } from '../../../../core/log/time/zone.ts';

/** Seconds since 1970 of an ISO instant, by the platform. */
const epoch = (iso: string): number => Date.parse(iso) / 1000;
const resolve = (zone: string, ...walls: string[]): string[] => {
  const { epochSeconds } = inTimeZone(
    Float64Array.from(walls, (wall) => (wall === '' ? NaN : epoch(`${wall}Z`))),
    zone,
  );
  return Array.from(epochSeconds, (at) =>
    Number.isNaN(at) ? '' : new Date(at * 1000).toISOString().slice(0, 19),
  );
};

// Changes by EU directive 2000/84/EC (last Sundays of March and October, 01:00 UTC) and by the
// US Energy Policy Act of 2005 (second Sunday of March, first of November, 02:00 local).
describe('a wall clock in a zone', () => {
  test('moves with daylight saving', () => {
    expect(
      resolve('Europe/Berlin', '2024-03-31T01:30:00', '2024-03-31T03:30:00', '2024-07-01T12:00:00'),
    ).toEqual(['2024-03-31T00:30:00', '2024-03-31T01:30:00', '2024-07-01T10:00:00']);
    expect(resolve('America/New_York', '2024-03-10T01:59:00', '2024-03-10T03:01:00')).toEqual([
      '2024-03-10T06:59:00',
      '2024-03-10T07:01:00',
    ]);
  });

  test('shows an hour twice in autumn, told by the order of the rows', () => {
    const twice = ['01:30', '02:15', '02:45', '02:05', '02:55', '03:10'];
    const walls = twice.map((clock) => `2024-10-27T${clock}:00`);
    const moments = ['23:30', '00:15', '00:45', '01:05', '01:55', '02:10'];
    expect(resolve('Europe/Berlin', ...walls).map((at) => at.slice(11, 16))).toEqual(moments);
    const backward = resolve('Europe/Berlin', ...[...walls].reverse());
    expect(backward.map((at) => at.slice(11, 16))).toEqual([...moments].reverse());
  });

  test('that was not put forward in spring is counted on', () => {
    expect(
      resolve('Europe/Berlin', '2024-03-31T01:50:00', '2024-03-31T02:10:00', '2024-03-31T02:50:00'),
    ).toEqual(['2024-03-31T00:50:00', '2024-03-31T01:10:00', '2024-03-31T01:50:00']);
  });

  test('leaves what is no time as it is, and knows its offset', () => {
    expect(resolve('Asia/Kolkata', '', '2024-03-14T12:00:00')).toEqual(['', '2024-03-14T06:30:00']);
    const { offsetMinutesOf } = inTimeZone(
      Float64Array.of(epoch('2024-01-01T00:00Z')),
      'Asia/Kolkata',
    );
    expect(offsetMinutesOf(0)).toBe(330);
  });
});

test('moments written as a zone’s wall clock, once every 10 min, come back', () => {
  const zones = ['Europe/Berlin', 'America/New_York', 'Australia/Lord_Howe', 'UTC', 'Asia/Tokyo'];
  const wallOf = (zone: string) => {
    const format = new Intl.DateTimeFormat('sv-SE', {
      ...{ timeZone: zone, year: 'numeric', month: '2-digit', day: '2-digit' },
      ...{ hour: '2-digit', minute: '2-digit', second: '2-digit' },
    });
    return (at: number) => epoch(`${format.format(at * 1000).replace(' ', 'T')}Z`);
  };
  fc.assert(
    fc.property(
      fc.constantFrom(...zones),
      fc.integer({ min: epoch('2015-01-01T00:00Z'), max: epoch('2026-01-01T00:00Z') }),
      (zone, from) => {
        const moments = Float64Array.from({ length: 150 }, (_, i) => from + i * 600);
        const wall = moments.map(wallOf(zone));
        // A record may begin within an hour that comes twice: nothing tells which, so leave it out.
        const { epochSeconds } = inTimeZone(wall, zone);
        const first = moments.findIndex((at, i) => i > 6 && epochSeconds[i] === at);
        expect([...epochSeconds.subarray(first)]).toEqual([...moments.subarray(first)]);
        expect(first).toBeLessThan(20);
      },
    ),
    { numRuns: 200 },
  );
});

test('a million rows are resolved by stretch, not row by row', () => {
  const from = epoch('2024-10-20T00:00Z');
  const wall = Float64Array.from({ length: 1_000_000 }, (_, i) => from + i);
  const started = performance.now();
  inTimeZone(wall, 'Europe/Berlin');
  expect(performance.now() - started).toBeLessThan(5000);
});

test('zones are known by their IANA names alone', () => {
  expect(['Europe/Berlin', 'America/Argentina/Buenos_Aires', 'UTC'].map(isTimeZone)).toEqual([
    ...[true, true, true],
  ]);
  expect(['Berlin', 'Nowhere/Else', '+01:00', '', '__proto__'].map(isTimeZone)).toEqual([
    ...[false, false, false, false, false],
  ]);
});
