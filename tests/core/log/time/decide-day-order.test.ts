import { describe, expect, test } from 'vitest';
import { decideDayOrder, type DayOrderHints } from '../../../../core/log/time/decide-day-order.ts';
import { scanStamp, type Stamp } from '../../../../core/log/time/stamp.ts';

const NO_HINTS: DayOrderHints = {
  preamble: [],
  declared: null,
  isFahrenheit: false,
  isContinental: false,
};
const stamps = (...texts: string[]): Stamp[] => texts.map((text) => scanStamp(text)!);
const decide = (texts: string[], hints: Partial<DayOrderHints> = {}) =>
  decideDayOrder(stamps(...texts), { ...NO_HINTS, ...hints });

describe('the order of day and month', () => {
  test('is settled where the year or a name comes first', () => {
    expect(decide(['2024-03-04 10:00'])).toBeNull();
    expect(decide(['4 Mar 2024 10:00'])).toBeNull();
  });

  test('follows from a number beyond 12 anywhere in the column', () => {
    const decision = decide(['03/04/2024 10:00', '03/04/2024 11:00', '03/13/2024 10:00']);
    expect(decision).toMatchObject({ order: 'month-first', why: 'part-over-twelve' });
    expect(decide(['13/04/24 10:00'])).toMatchObject({ order: 'day-first' });
  });

  test('follows from a step over midnight', () => {
    const overnight = ['03/02/2024 23:00', '03/02/2024 23:30', '04/02/2024 00:00'];
    expect(decide(overnight)).toMatchObject({ order: 'day-first', why: 'steady-steps' });
    const other = ['02/03/2024 23:00', '02/03/2024 23:30', '02/04/2024 00:00'];
    expect(decide(other)).toMatchObject({ order: 'month-first', why: 'steady-steps' });
  });

  test('follows from what the file declares, or from a date above the table', () => {
    const open = ['03/04/2024 10:00', '03/04/2024 11:00'];
    expect(decide(open, { declared: 'month-first' })).toMatchObject({ why: 'declared' });
    const preamble = stamps('26/10/2021 14:40');
    expect(decide(open, { preamble })).toMatchObject({ order: 'day-first', why: 'preamble' });
  });

  test('does not matter where day and month are equal', () => {
    expect(decide(['04/04/2024 10:00', '04/04/2024 11:00'])).toMatchObject({ why: 'rows-agree' });
  });

  test('is the day with points, by habit', () => {
    const decision = decide(['03.04.2024 10:00']);
    expect(decision).toMatchObject({ order: 'day-first', why: 'usual-for-mark', isAssumed: false });
  });

  test('is assumed, and said to be, where only habit speaks', () => {
    const open = ['03/04/2024 10:00', '03/04/2024 11:00'];
    expect(decide(open)).toMatchObject({ order: 'day-first', isAssumed: true });
    expect(decide(open, { isFahrenheit: true })).toMatchObject({
      order: 'month-first',
      isAssumed: true,
    });
    expect(decide(['03/04/2024 10:00 pm'])).toMatchObject({
      order: 'month-first',
      isAssumed: true,
    });
    expect(decide(open)!.certainty).toBeLessThan(0.6);
  });

  test('bears a few damaged dates', () => {
    const sound = Array.from(
      { length: 60 },
      (_, i) => `14/03/2024 10:${String(i).padStart(2, '0')}`,
    );
    expect(decide([...sound, '99/99/2024 10:00'])).toMatchObject({ order: 'day-first' });
  });
});
