import { describe, expect, it } from 'vitest';
import { locateKnee } from '../../../core/trace/knee.ts';
import { seededRandom } from '../../builders/random.ts';

const everything = { leftLimitSeconds: 0, rightLimitSeconds: 14_400 };

describe('a knee', () => {
  it.each([6600, 7213, 7790])(
    'of a climb that turns level at %s s is found between samples',
    (kneeSeconds) => {
      const atSeconds = Float64Array.from({ length: 120 }, (_, i) => 120 * i);
      const celsius = atSeconds.map((at) => 500 + Math.min(0, (at - kneeSeconds) / 36));
      const found = locateKnee(atSeconds, celsius, {
        fromSeconds: 6000,
        toSeconds: 8400,
        ...everything,
      });
      expect(Math.abs(found - kneeSeconds)).toBeLessThan(1);
    },
  );

  it('in noise of 1 °C is found within two minutes, on average over many', () => {
    const random = seededRandom(2);
    const errors = Array.from({ length: 60 }, () => {
      const atSeconds = Float64Array.from({ length: 480 }, (_, i) => 30 * i);
      const celsius = atSeconds.map((at) => 500 + Math.min(0, (at - 7200) / 36) + random.normal());
      return (
        locateKnee(atSeconds, celsius, { fromSeconds: 6000, toSeconds: 8400, ...everything }) - 7200
      );
    });
    const rms = Math.sqrt(errors.reduce((sum, error) => sum + error ** 2, 0) / errors.length);
    expect(rms).toBeLessThan(120);
  });

  it('is the middle of the search where there is too little to go by', () => {
    const found = locateKnee(Float64Array.of(0, 900), Float64Array.of(20, 30), {
      fromSeconds: 100,
      toSeconds: 300,
      leftLimitSeconds: 0,
      rightLimitSeconds: 900,
    });
    expect(found).toBe(200);
  });
});
