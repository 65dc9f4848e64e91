import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CONES } from '../../../core/model/cone.ts';
import type { Schedule, Segment } from '../../../core/model/schedule.ts';
import { readSchedule } from '../../../core/schedule/read-schedule.ts';
import { writeCsvSchedule, writeJsonSchedule } from '../../../core/schedule/write-schedule.ts';
import { celsius, celsiusPerHour } from '../../../core/units.ts';

const way = fc.oneof(
  fc.constant({ rateCPerHour: 'full' as const, minutes: null }),
  fc
    .integer({ min: 1, max: 900 })
    .map((rate) => ({ rateCPerHour: celsiusPerHour(rate), minutes: null })),
  fc.integer({ min: 1, max: 600 }).map((minutes) => ({ rateCPerHour: null, minutes })),
);
const segment: fc.Arbitrary<Segment> = fc
  .tuple(way, fc.integer({ min: 30, max: 1400 }), fc.integer({ min: 0, max: 240 }))
  .map(([how, target, holdMinutes]) => ({ ...how, targetC: celsius(target), holdMinutes }));
const schedule: fc.Arbitrary<Schedule> = fc.record({
  name: fc.stringMatching(/^[A-Za-z][A-Za-z0-9 ]{0,20}[a-z]$/),
  cone: fc.option(fc.constantFrom(...CONES)),
  segments: fc.array(segment, { minLength: 1, maxLength: 12 }),
});

describe('a schedule written', () => {
  it.each(['C', 'F'] as const)('in °%s, in either form, is read back the same', (unit) => {
    fc.assert(
      fc.property(schedule, (original) => {
        for (const text of [writeJsonSchedule(original, unit), writeCsvSchedule(original, unit)]) {
          const read = readSchedule(text, 'x');
          expect(read.name.trim()).toBe(original.name.trim());
          expect(read.cone).toBe(original.cone);
          read.segments.forEach((found, k) => {
            const meant = original.segments[k]!;
            expect(found.targetC).toBeCloseTo(meant.targetC, 1);
            expect(found.holdMinutes).toBe(meant.holdMinutes);
            expect(found.minutes).toBe(meant.minutes);
            if (typeof meant.rateCPerHour === 'number')
              expect(found.rateCPerHour).toBeCloseTo(meant.rateCPerHour, 1);
            else expect(found.rateCPerHour).toBe(meant.rateCPerHour);
          });
        }
      }),
    );
  });
});
