/**
 * Branded scalars and the only conversions between them.
 *
 * A temperature and a temperature difference are different types, so that the 32 of Fahrenheit can
 * never be added to a difference. Inside tight numeric loops plain numbers are used, with the unit
 * in the name (`atSeconds`, `celsius`); these types guard what crosses a function's boundary.
 */
declare const unit: unique symbol;
type Scalar<Name extends string> = number & { readonly [unit]: Name };

/** A temperature on the Celsius scale. */
export type Celsius = Scalar<'Celsius'>;
/** A difference between two temperatures, in Celsius degrees (equal to kelvins). */
export type CelsiusDelta = Scalar<'CelsiusDelta'>;
/** A span of time, or a moment on the log's own clock counted from its first kept sample. */
export type Seconds = Scalar<'Seconds'>;
/** A heating (positive) or cooling (negative) rate. */
export type CelsiusPerHour = Scalar<'CelsiusPerHour'>;

/** The unit a reader wants to see temperatures in. It never alters stored numbers. */
export type TemperatureUnit = 'C' | 'F';

export const SECONDS_PER_MINUTE = 60;
export const SECONDS_PER_HOUR = 3600;

/** 0 °C in kelvin, by definition of the Celsius scale (SI brochure, 9th edition, 2.3.1). */
export const ZERO_CELSIUS_IN_KELVIN = 273.15;

/** Fahrenheit degrees in one Celsius degree, exact by definition. */
const FAHRENHEIT_PER_CELSIUS = 1.8;

/** 0 °C in °F, exact by definition. */
const ZERO_CELSIUS_IN_FAHRENHEIT = 32;

export const celsius = (value: number): Celsius => value as Celsius;
export const celsiusDelta = (value: number): CelsiusDelta => value as CelsiusDelta;
export const seconds = (value: number): Seconds => value as Seconds;
export const celsiusPerHour = (value: number): CelsiusPerHour => value as CelsiusPerHour;

export const minutes = (value: number): Seconds => seconds(value * SECONDS_PER_MINUTE);
export const hours = (value: number): Seconds => seconds(value * SECONDS_PER_HOUR);
export const toMinutes = (span: Seconds): number => span / SECONDS_PER_MINUTE;
export const toHours = (span: Seconds): number => span / SECONDS_PER_HOUR;

/** The temperature for a reading in °F. */
export const fromFahrenheit = (degreesF: number): Celsius =>
  celsius((degreesF - ZERO_CELSIUS_IN_FAHRENHEIT) / FAHRENHEIT_PER_CELSIUS);

/** The temperature for a reading in kelvin. */
export const fromKelvin = (kelvins: number): Celsius => celsius(kelvins - ZERO_CELSIUS_IN_KELVIN);

/** The difference for a span of Fahrenheit degrees; no 32 enters. */
export const fromFahrenheitDelta = (degreesF: number): CelsiusDelta =>
  celsiusDelta(degreesF / FAHRENHEIT_PER_CELSIUS);

/** The rate for Fahrenheit degrees per hour; no 32 enters. */
export const fromFahrenheitPerHour = (degreesFPerHour: number): CelsiusPerHour =>
  celsiusPerHour(degreesFPerHour / FAHRENHEIT_PER_CELSIUS);

/** The bare number of a temperature in the reader's unit. */
export const temperatureIn = (temperature: Celsius, reader: TemperatureUnit): number =>
  reader === 'C' ? temperature : temperature * FAHRENHEIT_PER_CELSIUS + ZERO_CELSIUS_IN_FAHRENHEIT;

/** The bare number of a temperature difference, or of a rate per hour, in the reader's unit. */
export const differenceIn = (
  difference: CelsiusDelta | CelsiusPerHour,
  reader: TemperatureUnit,
): number => (reader === 'C' ? difference : difference * FAHRENHEIT_PER_CELSIUS);

/** The absolute temperature in kelvin, as kinetics and radiation need it. */
export const toKelvin = (temperature: Celsius): number => temperature + ZERO_CELSIUS_IN_KELVIN;

/** `warmer − cooler`, the one sanctioned way from two temperatures to a difference. */
export const differenceOf = (warmer: Celsius, cooler: Celsius): CelsiusDelta =>
  celsiusDelta(warmer - cooler);

/** A temperature moved by a difference. */
export const moved = (temperature: Celsius, by: CelsiusDelta): Celsius => celsius(temperature + by);
