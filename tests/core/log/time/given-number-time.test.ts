import { describe, expect, test } from 'vitest';
import {
  givenNumericTime,
  refuseNumberOptions,
} from '../../../../core/log/time/given-number-time.ts';
import { decideNumericTime } from '../../../../core/log/time/numeric-time.ts';
import type { ReadingDecisions } from '../../../../core/model/options.ts';

const COURSE = { span: 480, riseC: 1200, isFractional: false };
const given = (decisions: ReadingDecisions, min: number, max: number) =>
  givenNumericTime(decisions, min, max, decideNumericTime(min, max, null, COURSE), COURSE);

describe('what bare numbers count', () => {
  test.each([
    [{ timeUnit: 'h' }, 0, 480, 'elapsed', 'h'],
    [{ timeUnit: 's', timeFrom: 'elapsed' }, 1.7e9, 1.7e9 + 480, 'elapsed', 's'],
    [{ timeUnit: 's' }, 1.7e9, 1.7e9 + 480, 'epoch', 's'],
    [{ timeFrom: 'epoch' }, 1.7e12, 1.7e12 + 480, 'epoch', 'ms'],
    [{ timeUnit: 'min', timeFrom: 'epoch' }, 2.8e7, 2.8e7 + 480, 'epoch', 'min'],
    [{ timeFrom: 'serial' }, 45_000, 45_001, 'serial', 'd'],
    [{ timeFrom: 'elapsed' }, 45_000, 45_480, 'elapsed', 'min'],
  ] as [ReadingDecisions, number, number, string, string][])(
    '%j of %d to %d',
    (decisions, min, max, from, unit) => {
      expect(given(decisions, min, max)).toMatchObject({ from, unit });
    },
  );

  test('is left to the file where nothing is said', () => {
    expect(given({}, 0, 480)).toBeNull();
    expect(given({ timeUnit: 'min' }, 0, 480)).toMatchObject({ why: 'given', certainty: 1 });
  });

  test.each([
    [{ timeFrom: 'epoch' }, 0, 480, 'fit no unit'],
    [{ timeFrom: 'serial' }, 0, 480, '1970 to 9999'],
    [{ timeUnit: 'h', timeFrom: 'serial' }, 45_000, 45_001, 'count days'],
    [{ timeUnit: 'd', timeFrom: 'epoch' }, 1.7e9, 1.7e9 + 480, '1970 to 9999'],
  ] as [ReadingDecisions, number, number, string][])(
    '%j of %d is refused',
    (said, min, max, why) => {
      expect(() => given(said, min, max)).toThrow(
        expect.objectContaining({
          code: 'bad-option',
          message: expect.stringContaining(why) as string,
        }),
      );
    },
  );
});

test('is refused where the times are no bare numbers', () => {
  expect(() => refuseNumberOptions({ timeUnit: 's' }, 'stamp')).toThrow('dates or clocks');
  expect(() => refuseNumberOptions({ timeFrom: 'epoch' }, 'interval')).toThrow('carry no times');
  expect(() => refuseNumberOptions({ timeUnit: 's' }, 'number')).not.toThrow();
  expect(() => refuseNumberOptions({}, 'stamp')).not.toThrow();
});
