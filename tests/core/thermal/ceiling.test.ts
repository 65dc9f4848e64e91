import { describe, expect, it } from 'vitest';
import { fired } from '../../builders/fired.ts';
import { CONE_CHART } from '../../kiln/cone-chart.ts';
import { THIN_BRICK } from '../../kiln/kilns.ts';
import { FAST_GLAZE } from '../../kiln/schedules.ts';
import type { ScheduleFile, Setup } from '../../kiln/types.ts';

/** The thin-brick kiln with a good third of its power gone. */
const WEAK: Setup = {
  seed: 21,
  kiln: THIN_BRICK,
  schedule: FAST_GLAZE,
  loadKg: 35,
  roomC: 20,
  elementWear: 1.6,
  supply: { wander: 0 },
  logger: { intervalSeconds: 60, noiseC: 0.4 },
};

const hottestOn = (schedule: ScheduleFile): number => {
  const { firing } = fired(
    { ...WEAK, schedule, record: { untilC: 900, atMostHours: 47 } },
    { schedule: null },
  );
  return firing.readingC.reduce((most, value) => Math.max(most, value), 0);
};

describe('the ceiling', () => {
  const { elements } = fired(WEAK).document;

  it('told from one firing holds where the kiln ends after two days at full power', () => {
    const truthC = hottestOn({
      name: 'all it has',
      unit: 'C',
      segments: [{ ratePerHour: 'full', target: 1900 }],
    });
    expect(elements!.ceilingRange!.lowC).toBeLessThan(truthC);
    expect(elements!.ceilingRange!.highC).toBeGreaterThan(truthC);
    expect(Math.abs(elements!.ceilingC! - truthC)).toBeLessThan(60);
  });

  it('is told with the hottest cone that a last ramp of 60 °C/h reaches', () => {
    const { trace } = fired(
      {
        ...WEAK,
        schedule: {
          name: 'on and on',
          unit: 'C',
          segments: [
            { ratePerHour: 220, target: 590 },
            { ratePerHour: 'full', target: 1080 },
            { ratePerHour: 60, target: 1400 },
          ],
        },
        controller: { waits: false },
        record: { untilC: 900, atMostHours: 30 },
      },
      { schedule: null },
    );
    // Where the climb at 60 °C/h falls behind for good.
    const behind = trace.slopeCPerHour.findIndex(
      (slope, i) => trace.celsius[i]! > 1100 && slope < 50,
    );
    const reachedC = trace.smoothC[behind]!;
    const reachable = CONE_CHART.filter(([, , at60]) => at60 <= reachedC).map(([cone]) => cone);
    const places = CONE_CHART.map(([cone]) => cone);
    const off = places.indexOf(elements!.hottestCone!) - places.indexOf(reachable.at(-1)!);
    expect(Math.abs(off)).toBeLessThanOrEqual(1);
  });

  it('is not told where it lies beyond what wire bears', () => {
    const { ceilingC, fit } = fired({ ...WEAK, elementWear: 1 }).document.elements!;
    expect(fit).not.toBeNull();
    expect(ceilingC).toBeNull();
  });
});
