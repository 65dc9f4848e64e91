import { describe, expect, test } from 'vitest';
import { historyOf } from '../../../core/history/history.ts';
import { zHistory } from '../../../core/model/history.ts';
import { seconds } from '../../../core/units.ts';
import { entry, ofPowers, syntheticHistory } from '../../builders/histories.ts';

const names = (history: ReturnType<typeof historyOf>) =>
  history.firings.map(({ fileName }) => fileName);

describe('a history', () => {
  test('stands the oldest first, by world time where stamps have an offset', () => {
    const history = historyOf([
      entry(0, { fileName: 'c', startInstant: '2024-05-03T08:00:00' }),
      entry(1, { fileName: 'b', startInstant: '2024-05-02T08:00:00+02:00' }),
      entry(2, { fileName: 'a', startInstant: '2024-05-02T07:30:00+02:00' }),
    ]);
    expect(history.order).toBe('by-date');
    expect(names(history)).toEqual(['a', 'b', 'c']);
  });

  test('stands as it came where a log has no date', () => {
    const history = historyOf([entry(1), entry(0, { startInstant: null })]);
    expect(history.order).toBe('as-given');
    expect(names(history)).toEqual(['firing-02.csv', 'firing-01.csv']);
  });

  test('says why a firing has no relative power, and why there is no trend', () => {
    const untold = historyOf([entry(0, { powerReason: 'never-at-full-power' }), entry(1)]);
    expect(untold.firings.map(({ powerReason }) => powerReason)).toEqual([
      'never-at-full-power',
      'not-measured',
    ]);
    expect(untold).toMatchObject({ trend: null, trendReason: 'no-relative-power' });
    expect(historyOf(ofPowers([1, 0.99])).trendReason).toBe('too-few-firings');
    const renewed = historyOf(ofPowers([0.85, 0.85, 0.85, 0.85, 1, 1, 1]));
    expect(renewed.trendReason).toBe('too-few-since-restored');
  });

  test('of a kiln that burns fuel has no power to tell of, and says why', () => {
    const fuelled = historyOf([0, 1, 2].map((i) => entry(i, { powerReason: 'fuel-fired' })));
    expect(fuelled).toMatchObject({ trend: null, trendReason: 'fuel-fired' });
    expect(fuelled.forecast).toMatchObject({ firings: null, reason: 'fuel-fired' });
    const mixed = historyOf([entry(0, { powerReason: 'fuel-fired' }), entry(1)]);
    expect(mixed.trendReason).toBe('no-relative-power');
  });

  test('takes what the last ramp needs from the firings, on the same scale', () => {
    const { forecast } = historyOf(ofPowers([2, 2, 2, 1.9], () => ({ lastRampPower: 1.6 })));
    expect(forecast.limitKind).toBe('last-ramp');
    expect(forecast.limitPower).toBeCloseTo(0.8, 6);
  });

  test('tells a firing that took longer than this kiln usually takes', () => {
    const entries = ofPowers([1, 1, 1, 1, 1], (i) => ({
      heatingSeconds: seconds((i === 4 ? 13 : 10) * 3600),
    }));
    const { firings } = historyOf(entries);
    expect(firings.map(({ tookLonger }) => tookLonger)).toEqual([false, false, false, false, true]);
  });

  test('of nothing is empty', () => {
    expect(historyOf([])).toMatchObject({ firings: [], trend: null, findings: [] });
  });

  test('is what its schema says', () => {
    const history = historyOf(syntheticHistory(4, 0.1).entries);
    expect(zHistory.parse(history)).toEqual(history);
  });
});
