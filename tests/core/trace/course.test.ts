import { describe, expect, it } from 'vitest';
import { courseBetween } from '../../../core/trace/course.ts';

describe('a course', () => {
  it('takes its end temperatures from its own side of a knee', () => {
    const atSeconds = Float64Array.from({ length: 201 }, (_, i) => 60 * i);
    const celsius = atSeconds.map((at) => Math.min(1000, 900 + at / 36));
    const course = courseBetween({ atSeconds, celsius }, 0, 3600);
    expect(course.startC).toBeCloseTo(900, 6);
    expect(course.endC).toBeCloseTo(1000, 6);
    expect(course.rateCPerHour).toBeCloseTo(100, 6);
    expect(courseBetween({ atSeconds, celsius }, 3600, 9000).rateCPerHour).toBeCloseTo(0, 6);
  });

  it('of a few readings interpolates', () => {
    const readings = { atSeconds: Float64Array.of(0, 3600), celsius: Float64Array.of(20, 120) };
    expect(courseBetween(readings, 900, 2700)).toMatchObject({
      startC: 45,
      endC: 95,
      rateCPerHour: 100,
    });
  });

  it('ends at no temperature that was never read, though its last minutes lead there', () => {
    const atSeconds = Float64Array.from({ length: 121 }, (_, i) => 60 * i);
    const celsius = atSeconds.map((at) => Math.min(1000, 900 + at / 36));
    // The stretch ends four minutes after the climb has stopped.
    expect(courseBetween({ atSeconds, celsius }, 0, 3840).endC).toBe(1000);
  });
});
