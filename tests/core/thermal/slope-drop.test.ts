import { describe, expect, it } from 'vitest';
import { findSlopeDrop } from '../../../core/thermal/slope-drop.ts';
import { celsius, celsiusPerHour, seconds } from '../../../core/units.ts';
import { firing, traceFrom } from '../../builders/trace.ts';

const stretch = (fromMinutes: number, toMinutes: number) => ({
  fromSeconds: seconds(fromMinutes * 60),
  toSeconds: seconds(toMinutes * 60),
  fromC: celsius(600),
  toC: celsius(1000),
  plannedCPerHour: null,
  achievedCPerHour: celsiusPerHour(200),
});

describe('a sudden drop of the slope at full power', () => {
  it('is found where the climb bends, with its size', () => {
    // 300 °C at 200 °C/h: 90 min; then 120 °C/h.
    const points = firing(600, { rateCPerHour: 200, toC: 900 }, { rateCPerHour: 120, toC: 1140 });
    const drop = findSlopeDrop(traceFrom(points, { noiseC: 0.5 }), [stretch(0, 210)]);
    expect(Math.abs(drop!.atSeconds / 60 - 90)).toBeLessThan(5);
    expect(drop!.dropCPerHour).toBeGreaterThan(70);
    expect(drop!.dropCPerHour).toBeLessThan(90);
  });

  it('is none in a climb that only bends smoothly', () => {
    const points = Array.from({ length: 22 }, (_, i): [number, number] => [
      i * 10,
      600 + 500 * (1 - Math.exp(-i / 10)),
    ]);
    expect(findSlopeDrop(traceFrom(points, { noiseC: 1 }), [stretch(0, 210)])).toBeNull();
  });

  it('is not looked for outside the stretches at full power', () => {
    const points = firing(600, { rateCPerHour: 200, toC: 900 }, { rateCPerHour: 120, toC: 1140 });
    expect(findSlopeDrop(traceFrom(points), [])).toBeNull();
  });
});
