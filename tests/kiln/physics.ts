/** Stefan–Boltzmann constant, W/(m²·K⁴): CODATA 2018, exact in the SI of 2019 (rounded here). */
export const STEFAN_BOLTZMANN = 5.670374419e-8;

/** 0 °C in kelvin, by definition of the Celsius scale. */
export const ZERO_CELSIUS_KELVIN = 273.15;

/** Standard acceleration of free fall, m/s² (3rd CGPM, 1901). */
export const FREE_FALL = 9.80665;
