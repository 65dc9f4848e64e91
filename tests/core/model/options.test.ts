import { expect, it } from 'vitest';
import { zObservedCone, zOptions, zReadingDecisions } from '../../../core/model/options.ts';

const accepts = (options: object): boolean => zOptions.safeParse(options).success;

it('everything that a person may tell can be left out', () => {
  expect(zOptions.parse({})).toEqual({});
  expect(zReadingDecisions.parse({})).toEqual({});
});

it('a couple has a type that ITS-90 knows, and a class that a standard names', () => {
  expect(accepts({ couple: { type: 'K', class: 'class-2', offsetC: -3 } })).toBe(true);
  expect(accepts({ couple: { class: 'class-2' } })).toBe(false);
  expect(accepts({ couple: { type: 'X' } })).toBe(false);
  expect(accepts({ couple: { type: 'K', class: 'class-4' } })).toBe(false);
});

it('a kiln has whole circuits and some power', () => {
  expect(accepts({ kiln: { heat: 'electric', ratedWatts: 9000, circuits: 3 } })).toBe(true);
  expect(accepts({ kiln: { circuits: 2.5 } })).toBe(false);
  expect(accepts({ kiln: { ratedWatts: 0 } })).toBe(false);
});

it('a cone bends from upright, by way of its end point at 90°, to at most flat on its face', () => {
  const seen = (bendDegrees: number) =>
    zObservedCone.safeParse({ cone: '6', place: 'top shelf', bendDegrees }).success;
  expect([0, 90, 180].map(seen)).toEqual([true, true, true]);
  expect([-1, 181].map(seen)).toEqual([false, false]);
});

it('a decision on reading is one that the reader could have taken', () => {
  const decides = (decision: object): boolean => zReadingDecisions.safeParse(decision).success;
  expect(decides({ delimiter: ';', decimalMark: ',', dayOrder: 'day-first', unit: 'F' })).toBe(
    true,
  );
  expect(decides({ headerLine: null })).toBe(true);
  expect(decides({ headerLine: 0 })).toBe(false);
  expect(decides({ decimalMark: ';' })).toBe(false);
  expect(decides({ intervalSeconds: 0 })).toBe(false);
});

it('a column can be named, or said not to be there', () => {
  const decides = (decision: object): boolean => zReadingDecisions.safeParse(decision).success;
  expect(decides({ setpointColumn: 'column 3', outputColumn: null, zoneColumns: [] })).toBe(true);
  expect(decides({ zoneColumns: null })).toBe(false);
  expect(decides({ noReadingMarks: ['---', '1372'] })).toBe(true);
  expect(decides({ noReadingMarks: [''] })).toBe(false);
});

it('times, firings and cold junctions have bounds', () => {
  const decides = (decision: object): boolean => zReadingDecisions.safeParse(decision).success;
  expect(decides({ timeUnit: 'min', timeFrom: 'elapsed', firstDate: '2024-02-29' })).toBe(true);
  expect(decides({ firstDate: '2023-02-29' })).toBe(false);
  expect(decides({ firing: 0 })).toBe(false);
  expect(decides({ coupleType: 'S', unit: 'uV', coldJunctionC: 24.5 })).toBe(true);
  expect(decides({ coldJunctionC: 500 })).toBe(false);
});

it('a misspelt option is refused, not passed over', () => {
  expect(accepts({ conetype: 'small' })).toBe(false);
});
