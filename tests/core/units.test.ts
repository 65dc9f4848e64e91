import fc from 'fast-check';
import { describe, expect, expectTypeOf, it } from 'vitest';
import {
  celsius,
  celsiusDelta,
  celsiusPerHour,
  differenceIn,
  differenceOf,
  fromFahrenheit,
  fromFahrenheitDelta,
  fromFahrenheitPerHour,
  fromKelvin,
  hours,
  minutes,
  moved,
  seconds,
  temperatureIn,
  toHours,
  toKelvin,
  toMinutes,
  type Celsius,
  type CelsiusDelta,
} from '../../core/units.ts';

describe('temperatures', () => {
  // NIST SP 811 (2008), appendix B (from memory): t/°C = (t/°F − 32)/1.8 and T/K = t/°C + 273.15, so
  // that ice melts, water boils, the scales meet and absolute zero lies at these marks.
  it.each([
    [32, 0],
    [212, 100],
    [-40, -40],
    [-459.67, -273.15],
  ])('%d °F is %d °C, both ways', (inFahrenheit, inCelsius) => {
    expect(fromFahrenheit(inFahrenheit)).toBeCloseTo(inCelsius, 10);
    expect(temperatureIn(celsius(inCelsius), 'F')).toBeCloseTo(inFahrenheit, 10);
    expect(temperatureIn(celsius(inCelsius), 'C')).toBe(inCelsius);
  });

  it('count from absolute zero in kelvin, both ways', () => {
    expect(toKelvin(celsius(0))).toBe(273.15);
    expect(fromKelvin(0)).toBe(-273.15);
    // The freezing point of gold, ITS-90 table 1 (from memory): 1337.33 K, 1064.18 °C.
    expect(fromKelvin(1337.33)).toBeCloseTo(1064.18, 10);
  });

  it('come back from any unit as they went', () => {
    fc.assert(
      fc.property(fc.double({ min: -273, max: 2000, noNaN: true }), (value) => {
        expect(fromFahrenheit(temperatureIn(celsius(value), 'F'))).toBeCloseTo(value, 9);
        expect(fromKelvin(toKelvin(celsius(value)))).toBeCloseTo(value, 9);
      }),
    );
  });
});

describe('differences and rates', () => {
  it('have no 32 in them', () => {
    expect(fromFahrenheitDelta(180)).toBe(100);
    expect(fromFahrenheitDelta(0)).toBe(0);
    expect(fromFahrenheitPerHour(108)).toBeCloseTo(60, 10);
    expect(differenceIn(celsiusDelta(5), 'F')).toBe(9);
    expect(differenceIn(celsiusPerHour(60), 'F')).toBe(108);
    expect(differenceIn(celsiusDelta(5), 'C')).toBe(5);
  });

  it('lead from one temperature to another', () => {
    const [warmer, cooler] = [celsius(1222), celsius(1200)];
    expect(differenceOf(warmer, cooler)).toBe(22);
    expect(moved(cooler, differenceOf(warmer, cooler))).toBe(warmer);
  });

  it('are another type than temperatures', () => {
    expectTypeOf(celsiusDelta(1)).not.toExtend<Celsius>();
    expectTypeOf(celsius(1)).not.toExtend<CelsiusDelta>();
    expectTypeOf(moved).parameter(1).toEqualTypeOf<CelsiusDelta>();
  });
});

describe('spans of time', () => {
  it('are kept in seconds', () => {
    expect(minutes(2.5)).toBe(150);
    expect(hours(0.5)).toBe(1800);
    expect(toMinutes(seconds(90))).toBe(1.5);
    expect(toHours(seconds(5400))).toBe(1.5);
  });
});
