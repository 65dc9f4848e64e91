import { expect, test } from 'vitest';
import { givenRoles, refuseColumn } from '../../../../core/log/columns/given-roles.ts';
import type { ReadingDecisions } from '../../../../core/model/options.ts';
import { climb, sampleOf } from '../helpers.ts';

const sample = sampleOf(
  ['Time', 'A', 'B', 'C', 'Word'],
  climb((c) => [c, c + 1, c + 2, 'Kiln']),
);
const given = (decisions: ReadingDecisions) => givenRoles(sample, decisions, [0]);

test('columns are found by name or number; none and left open are told apart', () => {
  expect(given({ temperatureColumn: 'b', setpointColumn: '2', outputColumn: null })).toMatchObject({
    ...{ temperature: 2, setpoint: 1, output: null, coldJunction: undefined, zones: undefined },
  });
  expect(given({ zoneColumns: ['C', 'A'] }).zones).toEqual([3, 1]);
  expect(given({ zoneColumns: [] }).zones).toEqual([]);
});

test('a word that stands in cells may be a channel', () => {
  expect(given({ temperatureColumn: 'Kiln' })).toMatchObject({
    ...{ temperature: undefined, channels: ['Kiln'] },
  });
});

test.each([
  [{ setpointColumn: 'Z' }, 'no column “Z”'],
  [{ zoneColumns: ['Word'] }, 'holds no numbers'],
  [{ temperatureColumn: 'A', setpointColumn: 'A' }, 'it is the kiln’s temperature already'],
] as [ReadingDecisions, string][])('%j is refused', (decisions, why) => {
  expect(() => given(decisions)).toThrow(
    expect.objectContaining({
      code: 'bad-option',
      message: expect.stringContaining(why) as string,
    }),
  );
});

test('the time can be nothing else', () => {
  const numbers = sampleOf(
    ['s', 'A'],
    [1, 2, 3].map((row) => [row, 20 * row]),
  );
  expect(() => givenRoles(numbers, { zoneColumns: ['s'] }, [0])).toThrow('it is the time already');
});

test('a refusal names the columns that are there', () => {
  expect(() => refuseColumn(sample, 'Z')).toThrow('“Time”, “A”, “B”, “C”, “Word”');
});
