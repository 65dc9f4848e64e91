import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clamped, numberText, readNumber } from '../../../renderer/controls/number-text.ts';

describe('readNumber', () => {
  it.each([
    ['1220', 1220],
    [' 12.5 ', 12.5],
    ['12,5', 12.5],
    ['.5', 0.5],
    ['−3', -3],
    ['-3', -3],
    ['12.', 12],
    // A comma before three digits is doubtful, but thousands never begin with a zero.
    ['0,125', 0.125],
  ])('reads %j', (text, value) => {
    expect(readNumber(text)).toEqual({ value });
  });

  it.each(['abc', '12 34', '1.2.3', '1,2,3', '12°', '1e3', '--1', 'Infinity', ','])(
    'says that %j is not a number, in those words',
    (text) => expect(readNumber(text)).toEqual({ wrong: `“${text}” is not a number.` }),
  );

  it('asks for a number without a mark where a comma could part thousands', () => {
    expect(readNumber('1,220')).toEqual({
      wrong: 'Write 1220 without a mark between the thousands.',
    });
  });

  it('takes blank for nothing', () => {
    expect(readNumber('  ')).toBeNull();
  });

  it('reads back every number that a field shows, to its last digit shown', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
        const read = readNumber(numberText(value));
        expect(read).toEqual({ value: expect.closeTo(value, 2) as number });
      }),
    );
  });
});

describe('numberText', () => {
  it('drops what is not needed', () => {
    expect([numberText(1700), numberText(926.6666), numberText(-0.001)]).toEqual([
      '1700',
      '926.67',
      '0',
    ]);
  });
});

describe('clamped', () => {
  it('keeps within both bounds', () => {
    expect([clamped(-1, 0, 5), clamped(3, 0, 5), clamped(9, 0, 5)]).toEqual([0, 3, 5]);
  });
});
