/**
 * Numbers that loggers and sensor chips write in place of a reading: out-of-range and error codes,
 * limits of couple types and of whole numbers; common practice, no source.
 */
const CODES: ReadonlySet<number> = new Set([
  ...[
    -9999, -9999.9, -999, -999.9, -999.99, -99.9, -99.99, -99, -100, -127, -200, -210, -250, -270,
  ],
  ...[-273, -273.1, -273.15, -1, -1000, -2000, -3276.8, -32768, -32767, -32766, 0, 85, 999, 999.9],
  ...[1023.75, 1300, 1370, 1372, 1372.2, 1760, 1768, 1768.1, 1800, 1820, 1999, 2000, 2047, 2047.75],
  ...[2300, 2320, 2500, 2501.6, 3000, 3276.7, 3200, 3214, 3216, 4095, 4096, 6553.4, 6553.5, 6553.6],
  ...[9999, 9999.9, 9999.99, 19999, 32766, 32767, 32768, 65534, 65535, 65536, 99999, 99999.9],
  ...[999999, 1e6, 2147483647, -2147483648, -328, -459, -459.67, 1e9],
]);

/** Whether a number is one that is often written where there is no reading. It may be a reading. */
export const isNoReadingCode = (value: number): boolean => CODES.has(value);
