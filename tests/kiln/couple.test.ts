import { describe, expect, it } from 'vitest';
import { Couple, errorWithin, USUAL_COUPLE } from './couple.ts';
import { seededRandom } from './random.ts';

describe('the couple', () => {
  it('follows a step by 1 − 1/e within its time constant at 1000 °C', () => {
    // First-order lag, by its definition.
    const couple = new Couple({ ...USUAL_COUPLE, lagSeconds: 40 }, 1000);
    const lag = couple.lagSecondsAt(1000);
    expect(lag).toBeCloseTo(40, 0);
    for (let at = 0; at < 40; at += 0.1) couple.follow(1000.1, 0.1);
    expect((couple.readingC - 1000) / 0.1).toBeCloseTo(1 - Math.exp(-1), 2);
  });

  it('lags a ramp by rate times lag', () => {
    const couple = new Couple({ ...USUAL_COUPLE, lagSeconds: 60 }, 995);
    let spotC = 995;
    for (let at = 0; at < 600; at += 1) {
      spotC += 60 / 3600;
      couple.follow(spotC, 1);
    }
    expect(spotC - couple.readingC).toBeCloseTo((60 / 3600) * couple.lagSecondsAt(1004), 1);
  });

  it('is slower when cold', () => {
    const couple = new Couple(USUAL_COUPLE, 20);
    expect(couple.lagSecondsAt(100)).toBeGreaterThan(2 * couple.lagSecondsAt(1000));
  });

  it('errs within its class: 0.75 % for class 2, that is 9.2 °C at 1222 °C (IEC 60584-1)', () => {
    const random = seededRandom(1);
    const errors = Array.from({ length: 2000 }, () => errorWithin('class-2', random).gain * 1222);
    expect(Math.max(...errors.map(Math.abs))).toBeLessThanOrEqual(9.165);
    // Rectangular: standard deviation is the half width over √3 (JCGM 100:2008, 4.3.7).
    const rms = Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / errors.length);
    expect(rms / (9.165 / Math.sqrt(3))).toBeCloseTo(1, 1);
  });

  it('reads ever lower with ageing above 1050 °C', () => {
    const couple = new Couple({ ...USUAL_COUPLE, driftCPerHour: 2 }, 1200);
    for (let at = 0; at < 7200; at += 5) couple.follow(1200, 5);
    expect(couple.errorAt(1200)).toBeCloseTo(-4, 9);
  });
});
