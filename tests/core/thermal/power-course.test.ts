import { describe, expect, it } from 'vitest';
import { courseOfDocument, courseOfTrace, FULL, OFF } from '../../../core/thermal/power-course.ts';
import { thinnedCurve } from '../../../core/trace/curve.ts';
import { celsius, celsiusPerHour, seconds } from '../../../core/units.ts';
import { NOTHING_OF_ELEMENTS } from '../../builders/facts.ts';
import { firing, traceFrom } from '../../builders/trace.ts';

/** 5 h up to 1020 °C, then 10 h down. */
const UP_AND_DOWN = firing(20, { rateCPerHour: 200, toC: 1020 }, { rateCPerHour: 90, toC: 120 });
const HOUR = 3600;
const LIMITED = [
  {
    fromSeconds: seconds(3 * HOUR),
    toSeconds: seconds(5 * HOUR),
    fromC: celsius(620),
    toC: celsius(1020),
    plannedCPerHour: null,
    achievedCPerHour: celsiusPerHour(200),
  },
];

describe('the course of a firing’s power', () => {
  const trace = traceFrom(UP_AND_DOWN);
  const course = courseOfTrace(trace, LIMITED)!;
  const at = (value: number) =>
    Array.from(course.power, (power, i) => (power === value ? (i * 120) / HOUR : NaN)).filter(
      (hours) => !Number.isNaN(hours),
    );

  it('is full in the stretches at full power, once they have settled', () => {
    expect(at(FULL)[0]).toBeCloseTo(3.25, 1);
    expect(at(FULL).at(-1)).toBeCloseTo(5, 1);
  });

  it('is none from 20 min after shut-off down to 350 °C', () => {
    expect(at(OFF)[0]).toBeCloseTo(5 + 1 / 3, 1);
    // (1020 − 350) / 90 h after the peak.
    expect(at(OFF).at(-1)).toBeCloseTo(5 + 670 / 90, 1);
  });

  it('follows the readings', () => {
    expect(course.celsius[60]).toBeCloseTo(420, 6);
    // The first interval holds a minute of the climb.
    expect(course.roomC).toBeCloseTo(21.7, 1);
  });

  it('is not known across a gap', () => {
    const gaps = [{ fromMinutes: 220, toMinutes: 260 }];
    const broken = courseOfTrace(traceFrom(UP_AND_DOWN, { gaps }), LIMITED)!;
    expect(broken.power[(230 * 60) / 120]).toBe(0);
  });

  it('is not to be had of a record that starts hot', () => {
    const hot = { ...trace, summary: { ...trace.summary, startSeconds: null } };
    expect(courseOfTrace(hot, LIMITED)).toBeNull();
  });

  it('is the same from the document’s curve within its thinning', () => {
    const noisy = traceFrom(UP_AND_DOWN, { intervalSeconds: 5, noiseC: 0.5 });
    const full = courseOfTrace(noisy, LIMITED)!;
    const document = {
      curve: thinnedCurve(noisy, null),
      trace: noisy.summary,
      elements: { ...NOTHING_OF_ELEMENTS, limited: LIMITED },
    };
    const left = courseOfDocument(document)!;
    expect(left.power).toEqual(full.power);
    const off = left.celsius.map((value, i) => Math.abs(value - full.celsius[i]!));
    expect(Math.max(...off)).toBeLessThan(2);
    expect(courseOfDocument({ ...document, elements: null })).toBeNull();
  });
});
