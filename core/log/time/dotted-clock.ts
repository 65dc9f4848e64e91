/** `14.05` and `14.05.09`, as clocks are written in some countries; elsewhere it is a number. */
export const isDottedClock = (cell: string): boolean =>
  /^(?:[01]?\d|2[0-3])\.[0-5]\d(?:\.[0-5]\d)?$/.test(cell);
