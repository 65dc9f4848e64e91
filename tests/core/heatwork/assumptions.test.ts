import { describe, expect, test } from 'vitest';
import { firing } from '../../builders/trace.ts';
import { cone6, measure, ramp } from './measuring.ts';

const couple = { type: 'S', class: 'class-1' } as const;

describe('what is taken for granted', () => {
  test('is only the chart, for a named couple and an ordinary firing', () => {
    expect(measure(cone6(), { couple }).assumptions).toEqual(['chart-self-supporting']);
  });

  test('names the ordinary couple, and its use beyond its class', () => {
    expect(measure(cone6()).assumptions).toEqual([
      'couple-type-assumed',
      'couple-beyond-class',
      'chart-self-supporting',
    ]);
    const cone04 = firing(20, ramp(60, 1060), ramp(250, 300));
    expect(measure(cone04).assumptions).not.toContain('couple-beyond-class');
  });

  test('names borrowed constants near the result or of the target, and no others', () => {
    const low = firing(20, ramp(60, 592), ramp(250, 100));
    expect(measure(low, { couple }).assumptions).toContain('cone-activation-borrowed');
    expect(measure(cone6(), { couple, target: '022' }).assumptions).toContain(
      'cone-activation-borrowed',
    );
    expect(measure(cone6(), { couple, coneType: 'large' }).assumptions).toEqual([
      'chart-large',
      'cone-activation-borrowed',
      'rate-outside-chart',
    ]);
    expect(measure(cone6(1190), { couple, coneType: 'large' }).assumptions).toContain(
      'cone-between-neighbours',
    );
    expect(measure(cone6(), { couple, coneType: 'iron-free' }).assumptions).toContain(
      'cone-borrowed',
    );
  });

  test('names what widened the range or made it a bound', () => {
    const names = (points: Parameters<typeof measure>[0]) =>
      measure(points, { couple }).assumptions;
    expect(names(cone6(1215, 15))).toContain('hold-rules-conflict');
    expect(names(firing(20, ramp(400, 1215), ramp(250, 300)))).toContain('rate-outside-chart');
    expect(names(firing(20, ramp(60, 1215)))).toContain('record-ends-hot');
    expect(names(firing(1150, ramp(60, 1215), ramp(250, 300)))).toContain('record-starts-hot');
    expect(names(firing(20, ramp(60, 1450), ramp(250, 300)))).toContain('beyond-hottest-cone');
  });

  test('names the witness cones', () => {
    const observedCones = [{ cone: '6', place: 'middle', bendDegrees: 90 }] as const;
    expect(measure(cone6(), { couple, observedCones }).assumptions).toContain('corrected-by-cones');
  });
});
