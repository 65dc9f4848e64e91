import { describe, expect, test } from 'vitest';
import { historyOf } from '../../../core/history/history.ts';
import type { FiringEntry } from '../../../core/history/entry.ts';
import { celsius, celsiusPerHour, seconds } from '../../../core/units.ts';
import { dayAt, ofPowers } from '../../builders/histories.ts';

const told = (entries: readonly FiringEntry[]) =>
  historyOf(entries).findings.map(({ id, severity }) => `${id} ${severity}`);
const wearing = (n: number, last: number) =>
  Array.from({ length: n }, (_, i) => 1 - ((1 - last) * i) / (n - 1));

describe('what a history shows', () => {
  // The scale is set by the first three firings, so the last stands a little higher than it is drawn.
  test.each([
    [0.93, []],
    [0.88, ['elements-weak watch']],
    [0.82, ['elements-weak act']],
  ])('of power that came down to %d: %j', (last, findings) => {
    expect(told(ofPowers(wearing(20, last)))).toEqual(findings);
  });

  test('of power that stayed: nothing', () => {
    expect(told(ofPowers([1, 1.01, 0.99, 1, 1.005, 0.995, 1, 1.01]))).toEqual([]);
  });

  test.each([
    [0.93, 'element-lost watch'],
    [0.8, 'element-lost act'],
  ])('of power that fell at once to %d: %s', (after, finding) => {
    // Ten firings on either side: so small a step shows in no fewer.
    const powers = Array.from({ length: 20 }, (_, i) => (i < 10 ? 1 : after));
    expect(told(ofPowers(powers))).toContain(finding);
  });

  test('of new elements: a step that is no fault', () => {
    const history = historyOf(ofPowers([0.9, 0.9, 0.9, 0.9, 1.05, 1.05, 1.05, 1.05]));
    expect(history.steps).toMatchObject([{ kind: 'restored', firing: 4 }]);
    expect(history.findings).toEqual([]);
  });

  test('of a supply that sags in the afternoon', () => {
    const powers = Array.from({ length: 24 }, (_, i) => 1 - 0.04 * Math.cos((i * Math.PI) / 6));
    const entries = ofPowers(powers, (i) => ({
      startInstant: dayAt(3 * i, (15 + 2 * (i % 12)) % 24),
      peakAtSeconds: seconds(0),
    }));
    const { findings } = historyOf(entries);
    const [finding] = findings.filter(({ id }) => id === 'supply-varies');
    expect(finding!.figures['lowestAtHour']).toBeCloseTo(15, 0);
    expect(finding!.figures['amplitudePercent']).toBeCloseTo(4, 0);
  });

  test('of a couple that was changed', () => {
    const entries = ofPowers([null, null, null, null], (i) => ({
      coupleError: { value: i < 2 ? -45 : 20, low: i < 2 ? -50 : 15, high: i < 2 ? -40 : 25 },
    }));
    expect(told(entries)).toEqual(['sensor-drift watch']);
  });

  test.each([
    [124, []],
    [126, ['cooling-differs note']],
    [141, ['cooling-differs watch']],
  ])('of a cooling at %d °C/h where 100 was good: %j', (rate, findings) => {
    const entries = ofPowers([null, null], (i) => ({
      bands: [
        {
          name: 'dunting',
          fromC: celsius(600),
          toC: celsius(500),
          direction: 'cooling',
          seconds: seconds(3600),
          meanCPerHour: celsiusPerHour(i === 0 ? -100 : -rate),
          fastestCPerHour: celsiusPerHour(-rate),
        },
      ],
    }));
    expect(told(entries)).toEqual(findings);
  });
});
