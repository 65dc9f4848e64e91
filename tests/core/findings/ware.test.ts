import { describe, expect, it } from 'vitest';
import { limitFor, passageThrough, wasFiredBefore } from '../../../core/findings/ware.ts';
import { firing, traceFrom } from '../../builders/trace.ts';

describe('a limit for ware of another thickness', () => {
  it('goes with the square of the wall, as times of conduction do', () => {
    expect(limitFor(100, undefined)).toBe(100);
    expect(limitFor(100, { thicknessMm: 8 })).toBe(100);
    expect(limitFor(100, { thicknessMm: 16 })).toBe(25);
  });

  it('stays within what is known of studio ware', () => {
    expect(limitFor(100, { thicknessMm: 2 })).toBe(200);
    expect(limitFor(100, { thicknessMm: 60 })).toBe(12.5);
  });
});

describe('a passage', () => {
  const held = traceFrom(
    firing(
      20,
      { rateCPerHour: 180, toC: 110 },
      { holdMinutes: 50 },
      { rateCPerHour: 60, toC: 600 },
      { rateCPerHour: 240, toC: 20 },
    ),
  );

  it('is as fast as its fastest part, though it stood still in the middle', () => {
    const { fastestCPerHour, evidence } = passageThrough(held, 80, 130, 25)!;
    expect(fastestCPerHour).toBeCloseTo(180, 6);
    expect(evidence.fromSeconds).toBeCloseTo(20 * 60, 6);
    expect(evidence.toSeconds).toBeCloseTo((30 + 50 + 20) * 60, 6);
  });

  it('downwards is a magnitude too', () => {
    expect(passageThrough(held, 250, 200, 25)!.fastestCPerHour).toBeCloseTo(240, 6);
  });

  it('is null where the record does not show the stretch from end to end', () => {
    expect(passageThrough(held, 500, 700, 25)).toBeNull();
    expect(passageThrough(held, 30, 10, 5)).toBeNull();
  });
});

it('only a bisque, or what may be one, holds green ware', () => {
  expect(wasFiredBefore(null)).toBe(false);
  expect(wasFiredBefore({ purpose: 'bisque', isTold: false })).toBe(false);
  expect(wasFiredBefore({ purpose: 'glaze', isTold: false })).toBe(true);
});
