import { describe, expect, test } from 'vitest';
import { profileNumbers } from '../../../../core/log/columns/profile.ts';
import {
  dayCountOf,
  decideNumericTime,
  epochUnit,
  looksLikeEpoch,
  looksLikeSerial,
  SERIAL_OF_EPOCH,
} from '../../../../core/log/time/numeric-time.ts';

import { daysFromCivil } from '../../../../core/log/time/civil.ts';

const MARCH_2024 = 1_710_397_800;

test('seconds, milli-, micro- and nanoseconds since 1970 by their size', () => {
  expect(
    [1, 1e3, 1e6, 1e9].map((scale) => epochUnit(MARCH_2024 * scale, (MARCH_2024 + 9e4) * scale)),
  ).toEqual(['s', 'ms', 'us', 'ns']);
  expect(epochUnit(0, 90_000)).toBeNull();
  expect(epochUnit(45_365.2, 45_366)).toBeNull();
  expect(looksLikeEpoch(profileNumbers(Float64Array.of(MARCH_2024, MARCH_2024 + 60))!)).toBe(true);
});

test('days of a spreadsheet have decimals and span a firing', () => {
  const numbers = (...values: number[]) => ({ numbers: profileNumbers(Float64Array.from(values)) });
  expect(looksLikeSerial(numbers(45_365.25, 45_365.75))).toBe(true);
  expect(looksLikeSerial(numbers(45_365, 45_366))).toBe(false);
  expect(looksLikeSerial(numbers(0.5, 45_365.75))).toBe(false);
});

// 2000-01-01 12:00 is JD 2451545.0 and MJD 51544.5 (Explanatory Supplement to the Astronomical
// Almanac); it is day 730486.5 of the proleptic calendar's year 0 (counted by hand).
test('days of other calendar counts', () => {
  const zeroOf = (from: number, name?: string) => dayCountOf(from, from + 1, name);
  const noon = daysFromCivil(2000, 1, 1) + 0.5;
  expect(2_451_545 - zeroOf(2_451_545)!).toBe(noon);
  expect(730_486.5 - zeroOf(730_486.5)!).toBe(noon);
  expect(51_544.5 - zeroOf(51_544.5, 'Time (MJD)')!).toBe(noon);
  expect(zeroOf(51_544.5)).toBe(SERIAL_OF_EPOCH);
  expect(zeroOf(3.5)).toBeNull();
  expect(dayCountOf(45_365, 46_365)).toBeNull();
});

describe('bare numbers', () => {
  const course = (span: number, riseC: number) => ({ span, riseC, isFractional: false });

  test('count what their header says', () => {
    expect(decideNumericTime(0, 720, 'min', course(720, 1200))).toMatchObject({
      unit: 'min',
      why: 'header',
      assumption: null,
    });
  });

  test.each([
    // A climb of 1200 °C takes kilns between four hours and two days (common practice).
    [43_200, 's', 'seconds'],
    [720, 'min', 'minutes'],
    [12, 'h', 'hours'],
  ] as const)('count as a kiln climbs: %d', (span, unit, assumption) => {
    const time = decideNumericTime(0, span, null, course(span, 1200));
    expect(time).toMatchObject({ from: 'elapsed', unit, assumption, why: 'plausible' });
    expect(time.certainty).toBeLessThan(0.9);
  });

  test('count seconds where the course says nothing, with little certainty', () => {
    const time = decideNumericTime(0, 600, null, course(600, 3));
    expect(time).toMatchObject({ unit: 's', why: 'nothing-decides' });
    expect(time.certainty).toBeLessThan(0.5);
  });
});
