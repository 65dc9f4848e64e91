import { describe, expect, test } from 'vitest';
import { analyze } from '../../../../core/analyze.ts';
import { readLog } from '../../../../core/log/read-log.ts';
import { zAnalysisDocument } from '../../../../core/model/document.ts';
import type { Options } from '../../../../core/model/options.ts';
import { htmlReport } from '../../../../core/report/html-report.ts';
import { textReport } from '../../../../core/report/text-report.ts';
import { readSchedule } from '../../../../core/schedule/read-schedule.ts';
import { wording } from '../../../../core/wording/wording.ts';
import { outcomeOf } from '../../../kiln/cone-dose.ts';
import { fire } from '../../../kiln/fire.ts';
import { THIN_BRICK } from '../../../kiln/kilns.ts';
import { GLAZE_WITH_HOLD } from '../../../kiln/schedules.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const read = (text: string) => readLog(bytes(text), 'typed');

describe('a text typed by hand', () => {
  test('is a log with its own format, every entry accounted for', () => {
    const { source, atSeconds, celsius } = read('0:00 20 / 3h 600 / 5:00 looked in / 9:30pm 1222');
    expect(source).toMatchObject({ format: 'typed-in', rowsRead: 4, rowsKept: 3, delimiter: null });
    expect(source.rejected).toMatchObject([{ line: 1, reason: 'event' }]);
    expect([...atSeconds]).toEqual([0, 3 * 3600, 21.5 * 3600]);
    expect([...celsius]).toEqual([20, 600, 1222]);
  });

  test('loses no reading to a line without a time, which is rejected by name', () => {
    const { source, celsius } = read('cone 6\n8:00 20 C\nthen 600\n11:00 900\n17:00 1222');
    expect([...celsius]).toEqual([20, 900, 1222]);
    expect(source.rejected).toMatchObject([
      { line: 1, reason: 'no-time', text: 'cone 6' },
      { line: 3, reason: 'no-time' },
    ]);
    expect(source).toMatchObject({ rowsRead: 5, rowsKept: 3, rowsRejected: 2 });
  });

  test('may cross midnight, and have units of its own', () => {
    const { atSeconds, celsius } = read('10pm 68F\n1am 1112F\n8:00 am 2232F\n');
    expect([...atSeconds]).toEqual([0, 3 * 3600, 10 * 3600]);
    expect(celsius[1]).toBeCloseTo(600, 6);
  });

  test.each([
    ['0:00 68°F\n3:00 1112\n9:30 2232\n', {}],
    ['0:00 68 / 3h 1112 / 9:30 2232 F', {}],
    ['0:00 20 °C\n3h 1112\n9:30 2232', { unit: 'F' as const }],
  ])(
    'takes a unit that is written once for all, unless another is given: %j',
    (text, decisions) => {
      const { celsius } = readLog(bytes(text), 'typed', decisions);
      expect([...celsius].map(Math.round)).toEqual([20, 600, 1222]);
    },
  );

  test('of temperatures alone asks for the time between them', () => {
    expect(() => read('20\n100\n600\n1000\n1222\n')).toThrow(
      expect.objectContaining({ code: 'no-time' }),
    );
    const told = readLog(bytes('20\n100\n600\n1000\n1222\n'), 'typed', { intervalSeconds: 7200 });
    expect([...told.atSeconds]).toEqual([0, 7200, 14_400, 21_600, 28_800]);
  });
});

/** A firing of the test kiln, read off a few times by somebody who was there at the peak. */
const course = fire({
  seed: 11,
  kiln: THIN_BRICK,
  schedule: GLAZE_WITH_HOLD,
  loadKg: 30,
  roomC: 19,
  controller: { waits: false },
  logger: { intervalSeconds: 60, noiseC: 0.5, rounding: { unit: 'C', step: 1 } },
});
/** Where cones at the couple's place stood, by the test kiln's own reckoning. */
const truth = outcomeOf(course.atSeconds, course.trueSensorSpotC).position!;

const typedOf = (count: number): string => {
  const peak = course.readingC.indexOf(Math.max(...course.readingC));
  const last = course.readingC.length - 1;
  const climb = Array.from({ length: count - 1 }, (_, i) => Math.round((peak * i) / (count - 2)));
  const places = [...climb, last];
  return places
    .map((place) => {
      const minutes = Math.round(course.atSeconds[place]! / 60);
      const clock = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
      return `${clock} ${Math.round(course.readingC[place]!)}`;
    })
    .join('\n');
};

describe.each([3, 5, 12])('%i readings typed in', (count) => {
  const schedule = readSchedule(JSON.stringify(GLAZE_WITH_HOLD), 'schedule.json');
  test.each<[string, Options]>([
    ['with nothing told', {}],
    ['with its schedule', { schedule }],
  ])('%s give a document with wide ranges and nothing to act on', (_, options) => {
    const { document } = analyze(bytes(typedOf(count)), 'typed', options);
    expect(zAnalysisDocument.parse(document)).toEqual(document);
    expect(document.source.format).toBe('typed-in');
    expect(document.checks.filter(({ outcome }) => outcome === 'failed')).toEqual([]);
    expect(document.findings.filter(({ severity }) => severity === 'act')).toEqual([]);
    expect(document.findings.map(({ id }) => id)).toContain('log-coarse');
    const { lowPosition, highPosition } = document.heatWork!.cone;
    expect(lowPosition === null || lowPosition <= truth).toBe(true);
    expect(highPosition === null || highPosition >= truth).toBe(true);
    // Twelve readings on the way up tell something; three do not.
    expect((highPosition ?? Infinity) - (lowPosition ?? -Infinity)).toBeGreaterThan(1);
    for (const unit of ['C', 'F'] as const) {
      expect(textReport(wording(document, unit))).toContain('typed in by hand');
      expect(htmlReport(document, unit)).not.toMatch(/NaN|undefined|Infinity/);
    }
  });
});
