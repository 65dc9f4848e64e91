import { describe, expect, it } from 'vitest';
import { Refusal } from '../../../core/model/refusal.ts';
import { readCsvSchedule } from '../../../core/schedule/read-csv.ts';

const read = (text: string) => readCsvSchedule(text, 'test');
const refusalOf = (text: string): Refusal => {
  try {
    read(text);
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
  throw new Error('was read');
};

const BISQUE =
  '# unit: F\n# cone: 06\n# fired on Mondays\nrate_per_hour,target,hold_minutes\n180,212,30\nfull,1112,\n90,1832,10\n';

describe('a schedule in CSV', () => {
  it('is read into °C', () => {
    const schedule = read(BISQUE);
    expect(schedule).toMatchObject({ name: 'test', cone: '06' });
    expect(schedule.segments).toEqual([
      { rateCPerHour: 100, minutes: null, targetC: 100, holdMinutes: 30 },
      { rateCPerHour: 'full', minutes: null, targetC: 600, holdMinutes: 0 },
      { rateCPerHour: 50, minutes: null, targetC: 1000, holdMinutes: 10 },
    ]);
  });

  it('may give times instead of rates, or both columns with one filled', () => {
    expect(read('minutes,target\n60,500\n').segments[0]).toMatchObject({
      minutes: 60,
      rateCPerHour: null,
    });
    const mixed = read('rate_per_hour;minutes;target\n100;;200\n;30;300\n').segments;
    expect(mixed.map((segment) => segment.minutes)).toEqual([null, 30]);
  });

  it('stands quotes, blank lines and Windows line ends', () => {
    expect(read('\r\n"rate_per_hour","target"\r\n"100", "500"\r\n\r\n').segments).toHaveLength(1);
  });

  it.each([
    ['a negative rate', BISQUE.replace('180', '-180'), 5],
    ['a word for a number', BISQUE.replace('1832', 'top'), 7],
    ['a number no one writes', BISQUE.replace('1832', '1e3'), 7],
    ['a missing target', BISQUE.replace('1832', ''), 7],
    ['too many values', BISQUE.replace('90,1832,10', '90,1832,10,4'), 7],
    ['a column of its own', BISQUE.replace('hold_minutes', 'soak'), 4],
    ['a column named twice', BISQUE.replace('hold_minutes', 'target'), 4],
    ['no target column', 'rate_per_hour,hold_minutes\n', 1],
    ['an unknown unit', BISQUE.replace('unit: F', 'unit: K'), 1],
    ['a hold of less than nothing', BISQUE.replace(',30', ',-30'), 5],
    ['a target below freezing', BISQUE.replace('1832', '10'), 7],
    ['nothing in it', '# unit: C\n', null],
  ])('is refused for %s, with its line', (_, text, line) => {
    expect(refusalOf(text)).toMatchObject({ code: 'bad-schedule', line });
  });

  it('is refused for a cone that is not made', () => {
    expect(refusalOf(BISQUE.replace('06', '6½½'))).toMatchObject({ code: 'unknown-cone', line: 2 });
  });
});
