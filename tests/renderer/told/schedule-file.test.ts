import { describe, expect, it } from 'vitest';
import { zFileToSave } from '../../../electron/host/contract.ts';
import type { Schedule } from '../../../core/model/schedule.ts';
import { readSchedule } from '../../../core/schedule/read-schedule.ts';
import { celsius, celsiusPerHour } from '../../../core/units.ts';
import { fileStem, scheduleFile } from '../../../renderer/told/schedule-file.ts';

const schedule: Schedule = {
  name: 'Glaze: cone 6 / slow?',
  cone: '6',
  segments: [
    { rateCPerHour: celsiusPerHour(100), minutes: null, targetC: celsius(1000), holdMinutes: 5 },
    { rateCPerHour: 'full', minutes: null, targetC: celsius(1200), holdMinutes: 0 },
  ],
};

describe('scheduleFile', () => {
  it.each([
    ['json', 'C'],
    ['json', 'F'],
    ['csv', 'C'],
    ['csv', 'F'],
  ] as const)('writes %s in °%s that reads back as the same schedule', (format, unit) => {
    const file = zFileToSave.parse(scheduleFile(schedule, format, unit));
    expect(file.fileName).toBe(`Glaze cone 6 slow.schedule.${format}`);
    const { segments, ...rest } = readSchedule(file.text, file.fileName);
    expect(rest).toEqual({ name: schedule.name, cone: '6' });
    segments.forEach((segment, index) => {
      expect(segment.targetC).toBeCloseTo(schedule.segments[index]!.targetC, 2);
    });
    expect(segments.map(({ holdMinutes }) => holdMinutes)).toEqual([5, 0]);
  });
});

describe('fileStem', () => {
  it('leaves no name that a system refuses', () => {
    expect(fileStem('../../etc')).toBe('etc');
    expect(fileStem('  ')).toBe('schedule');
    expect(fileStem('...')).toBe('schedule');
    expect(fileStem('a\u0000b\tc')).toBe('a b c');
    expect(fileStem('x'.repeat(300))).toHaveLength(80);
  });
});
