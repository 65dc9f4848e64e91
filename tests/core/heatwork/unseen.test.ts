import { describe, expect, test } from 'vitest';
import { dosesWith } from '../../../core/heatwork/firing-record.ts';
import { unseenTime } from '../../../core/heatwork/unseen.ts';
import type { TraceOptions } from '../../builders/trace.ts';
import { seededRandom } from '../../builders/random.ts';
import { cone6, measure, record } from './measuring.ts';

const unseenIn = (options: TraceOptions, minutes = 20) => {
  const firing = record(cone6(1215, minutes), {}, options);
  const six = firing.cones.findIndex(({ cone }) => cone === '6');
  return unseenTime(firing.trace, firing.top, firing.cones[six]!, dosesWith(firing, 0)[six]!);
};

/** The climb ends at 9 h 7 min: (1100 − 20)/150 h and (1215 − 1100)/60 h. */
const TOP_MINUTES = (1080 / 150 + 115 / 60) * 60;

describe('unseen time', () => {
  test('is none in a record without holes, at any usual interval', () => {
    for (const intervalSeconds of [10, 60, 300, 900]) {
      expect(unseenIn({ intervalSeconds })).toEqual({
        coolerC: 0,
        hotterC: 0,
        any: false,
      });
    }
  });

  test('far from the top does not matter', () => {
    expect(unseenIn({ gaps: [{ fromMinutes: 200, toMinutes: 260 }] }).any).toBe(false);
    expect(unseenIn({ gaps: [{ fromMinutes: 700, toMinutes: 800 }] }).any).toBe(false);
  });

  test('within a hold may have been hotter or cooler', () => {
    const gap = { fromMinutes: TOP_MINUTES + 2, toMinutes: TOP_MINUTES + 17 };
    const { coolerC, hotterC, any } = unseenIn({ gaps: [gap] });
    expect(any).toBe(true);
    expect(hotterC).toBeGreaterThan(2);
    expect(coolerC).toBeGreaterThan(2);
  });

  test('that hides the top reaches up to what was hidden', () => {
    const options = { gaps: [{ fromMinutes: TOP_MINUTES - 12, toMinutes: TOP_MINUTES + 30 }] };
    const whole = measure(cone6(1215, 10), { couple: { type: 'S', class: 'class-1' } });
    const holed = measure(cone6(1215, 10), { couple: { type: 'S', class: 'class-1' } }, options);
    expect(holed.cone.position).toBeLessThan(whole.cone.position! - 0.1);
    expect(holed.cone.highPosition).toBeGreaterThan(whole.cone.position!);
    expect(holed.assumptions).toContain('gap-interpolated');
    expect(whole.assumptions).not.toContain('gap-interpolated');
  });

  test('leaves the truth in the range, wherever near the top it falls', () => {
    const couple = { type: 'S', class: 'class-1' } as const;
    const whole = measure(cone6(1215, 10), { couple }).cone.position!;
    const random = seededRandom(5);
    const places = Array.from({ length: 30 }, () => {
      const fromMinutes = TOP_MINUTES + random.between(-40, 15);
      const gaps = [{ fromMinutes, toMinutes: fromMinutes + random.between(12, 45) }];
      return measure(cone6(1215, 10), { couple }, { gaps }).cone;
    });
    const inside = places.filter(
      (cone) => cone.lowPosition! <= whole && whole <= cone.highPosition!,
    );
    expect(inside.length).toBeGreaterThanOrEqual(24);
  });

  test('longer is wider, and readings every half hour count as unseen', () => {
    const width = (minutes: number): number => {
      const from = TOP_MINUTES + 2;
      const { coolerC, hotterC } = unseenIn(
        { gaps: [{ fromMinutes: from, toMinutes: from + minutes }] },
        60,
      );
      return hotterC + coolerC;
    };
    expect(width(40)).toBeGreaterThan(width(20));
    expect(unseenIn({ intervalSeconds: 1800 }).any).toBe(true);
  });
});
