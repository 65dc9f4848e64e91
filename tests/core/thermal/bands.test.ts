import { describe, expect, test } from 'vitest';
import { zBand } from '../../../core/model/document.ts';
import type { Band } from '../../../core/model/document.ts';
import { measureBands } from '../../../core/thermal/bands.ts';
import { fromFahrenheit, fromFahrenheitPerHour } from '../../../core/units.ts';
import { firing, traceFrom, type CurvePoint, type TraceOptions } from '../../builders/trace.ts';

const ramp = (rateCPerHour: number, toC: number) => ({ rateCPerHour, toC });
const hold = (holdMinutes: number) => ({ holdMinutes });

const bandsOf = (points: CurvePoint[], options: TraceOptions = {}): Band[] =>
  measureBands(traceFrom(points, { intervalSeconds: 30, ...options }));

const named = (bands: readonly Band[], name: string, direction?: Band['direction']): Band =>
  bands.find((band) => band.name === name && (!direction || band.direction === direction))!;

const cone6 = firing(
  20,
  ramp(60, 90),
  hold(60),
  ramp(150, 1100),
  ramp(60, 1222),
  hold(10),
  ramp(300, 1000),
  ramp(150, 600),
  ramp(80, 100),
);

describe('the phases of the ware', () => {
  test('of a whole firing come in order of time, and satisfy their schema', () => {
    const bands = bandsOf(cone6);
    expect(bands.map(({ name, direction }) => `${name} ${direction}`)).toEqual([
      'candling heating',
      'drying heating',
      'bound-water heating',
      'quartz heating',
      'burnout heating',
      'last-stretch heating',
      'first-cooling cooling',
      'crystal-growth cooling',
      'quartz cooling',
      'dunting cooling',
      'cristobalite cooling',
    ]);
    for (const band of bands) expect(() => zBand.parse(band)).not.toThrow();
  });

  test('have the time and rates of the curve', () => {
    const bands = bandsOf(cone6);
    const water = named(bands, 'bound-water');
    expect(water).toMatchObject({ fromC: 350, toC: 600 });
    expect(water.seconds).toBeCloseTo((250 / 150) * 3600, 0);
    expect(water.meanCPerHour).toBeCloseTo(150, 3);
    expect(water.fastestCPerHour).toBeCloseTo(150, 3);
    const drying = named(bands, 'drying');
    // 10 °C at 60, an hour at 90, 40 °C at 150 °C/h.
    expect(drying.seconds / 60).toBeCloseTo(10 + 60 + 16, 0);
    expect(drying.meanCPerHour).toBeCloseTo(50 / (86 / 60), 0);
    expect(drying.fastestCPerHour).toBeCloseTo(150, 0);
  });

  test('on the way down have negative rates, the fastest being the steepest', () => {
    const crystals = named(bandsOf(cone6), 'crystal-growth');
    expect(crystals.direction).toBe('cooling');
    // 25 °C at 300 °C/h, 200 °C at 150.
    expect(crystals.seconds / 60).toBeCloseTo(5 + 80, 0);
    expect(crystals.meanCPerHour).toBeCloseTo(-225 / (85 / 60), 0);
    expect(crystals.fastestCPerHour).toBeLessThan(-270);
    expect(crystals.fastestCPerHour).toBeGreaterThan(-301);
  });

  test('a hold at the top is neither climb nor cooling', () => {
    const bands = bandsOf(cone6);
    expect(named(bands, 'last-stretch').seconds / 3600).toBeCloseTo(98 / 60, 1);
    expect(named(bands, 'last-stretch').meanCPerHour).toBeCloseTo(60, 1);
    expect(named(bands, 'first-cooling').meanCPerHour).toBeCloseTo(-300, 0);
  });

  test('a drying climb of 60 °F/h to 180 °F and two hours there stays below boiling (common practice)', () => {
    const dried = firing(
      fromFahrenheit(72),
      ramp(fromFahrenheitPerHour(60), fromFahrenheit(180)),
      hold(120),
      ramp(150, 1000),
      ramp(150, 100),
    );
    const candling = named(bandsOf(dried), 'candling');
    // About 3.8 h, and then from 180 to 212 °F.
    expect(candling.seconds / 3600).toBeGreaterThan(3.8);
    expect(candling.seconds / 3600).toBeLessThan(4);
  });
});

describe('only what the firing went through is told', () => {
  test('nothing above or below it', () => {
    const names = bandsOf(firing(20, ramp(100, 880), ramp(100, 620))).map(({ name }) => name);
    expect(names).toEqual(['candling', 'drying', 'bound-water', 'quartz', 'last-stretch']);
  });

  test('no candling for a record that starts warm', () => {
    const names = bandsOf(firing(85, ramp(100, 880), ramp(100, 700))).map(({ name }) => name);
    expect(names).not.toContain('candling');
    expect(names).not.toContain('drying');
  });

  test('no phase that went by unseen', () => {
    const at = (atC: number) => ((atC - 20) / 100) * 60;
    const points = firing(20, ramp(100, 1000), ramp(100, 100));
    const hidden = { gaps: [{ fromMinutes: at(545), toMinutes: at(590) }] };
    expect(named(bandsOf(points, hidden), 'quartz', 'heating')).toBeUndefined();
    // A third of it may be missing.
    const seen = named(
      bandsOf(points, { gaps: [{ fromMinutes: at(560), toMinutes: at(575) }] }),
      'quartz',
    );
    expect(seen.meanCPerHour).toBeCloseTo(100, 1);
  });

  test('the pass that went through, not one that turned back', () => {
    const interrupted = firing(
      20,
      ramp(100, 500),
      ramp(100, 200),
      hold(300),
      ramp(200, 1000),
      ramp(100, 100),
    );
    const water = named(bandsOf(interrupted), 'bound-water');
    expect(water.seconds / 3600).toBeCloseTo(250 / 200, 1);
  });
});

describe('noise', () => {
  test('hardly moves the times', () => {
    const [clean, noisy] = [bandsOf(cone6), bandsOf(cone6, { noiseC: 1.2, resolutionC: 1 })];
    expect(noisy.map(({ name }) => name)).toEqual(clean.map(({ name }) => name));
    noisy.forEach((band, i) => expect(band.seconds / clean[i]!.seconds).toBeCloseTo(1, 1));
  });

  test('in the slopes is not the fastest rate', () => {
    const trace = traceFrom(cone6, { intervalSeconds: 30 });
    const slopeCPerHour = trace.slopeCPerHour.map((slope, i) => slope + (i % 2 === 0 ? 80 : -80));
    const slopeErrorCPerHour = trace.slopeErrorCPerHour.map(() => 80);
    const unsure = measureBands({ ...trace, slopeCPerHour, slopeErrorCPerHour });
    // With nothing sure to go by, the mean is all that is told.
    expect(named(unsure, 'bound-water').fastestCPerHour).toBeCloseTo(150, 3);
    const wild = trace.slopeCPerHour.map((slope, i) => (i % 60 === 0 ? slope + 300 : slope));
    const spiked = named(measureBands({ ...trace, slopeCPerHour: wild }), 'bound-water');
    expect(spiked.fastestCPerHour).toBeLessThan(185);
  });

  test('one sample has no bands', () => {
    const trace = traceFrom(cone6);
    expect(measureBands({ ...trace, atSeconds: trace.atSeconds.subarray(0, 1) })).toEqual([]);
  });
});
