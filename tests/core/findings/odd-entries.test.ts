import { describe, expect, it } from 'vitest';
import { hasValley, oddEntry, putsInOrder } from '../../../core/findings/odd-entries.ts';
import { readSchedule } from '../../../core/schedule/read-schedule.ts';
import { targetSlips } from '../../../core/schedule/slips.ts';
import { SANE_SCHEDULES } from '../../builders/sane-schedules.ts';

const typed = (...rows: readonly string[]) =>
  readSchedule(`rate_per_hour,target,hold_minutes\n${rows.join('\n')}\n`, 'x.csv');
const odd = (...rows: readonly string[]) => {
  const entry = oddEntry(typed(...rows));
  return entry && { segment: entry.segment, meant: entry.slip && Math.round(entry.slip.meant) };
};

describe('an odd entry', () => {
  it.each(SANE_SCHEDULES.map((file) => [file.name, file] as const))('is in none: %s', (_, file) => {
    expect(oddEntry(readSchedule(JSON.stringify(file), 'sane.json'))).toBeNull();
  });

  it('is a target that falls on the way up', () => {
    expect(odd('100,120,30', '150,102', '60,1215,15')).toEqual({ segment: 1, meant: 1020 });
    expect(odd('100,1120,30', '150,1020', '60,1215,15')).toEqual({ segment: 0, meant: 112 });
    expect(odd('100,120', '150,700', '150,690', '60,1215')).toEqual({ segment: 2, meant: null });
  });

  it('is a soak of hours that would do as minutes', () => {
    expect(odd('150,1020', '60,1215,900')).toEqual({ segment: 1, meant: 15 });
    expect(odd('150,1020', '60,1215,240')).toBeNull();
    expect(odd('100,90,900', '60,1215,10')).toBeNull();
  });

  it('is a hasty start before half a day’s climb', () => {
    expect(odd('170,100', '60,1200')).toEqual({ segment: 0, meant: 1000 });
    expect(odd('170,100,60', '60,1200')).toBeNull();
    expect(odd('100,100', '60,1200')).toBeNull();
    expect(odd('170,100', '120,1200')).toBeNull();
  });

  it('is a climb of a day between two brisk ones', () => {
    expect(odd('100,120', '15,1020', '60,1215')).toEqual({ segment: 1, meant: 150 });
    expect(odd('15,120', '15,1020', '60,1215')).toBeNull();
  });
});

it('a fall on the way to the top is a valley, one after it is not', () => {
  expect(hasValley(typed('100,700', '100,650', '60,1215'))).toBe(true);
  expect(hasValley(typed('100,1215', '100,1000,60', '100,1050'))).toBe(false);
});

it('a slip puts a schedule in order where a fallen target rises above the one before', () => {
  const schedule = typed('150,1020', '60,121');
  expect(targetSlips(schedule, 1).map((slip) => putsInOrder(schedule, slip))).toEqual([
    ...Array.from({ length: 10 }, () => true),
    false,
  ]);
});
