const REAL = 'app://afterfire/';
const PLAYED = 'https://afterfire.test/';

/** Where the browser finds what the program calls `app://afterfire/…`. */
export const played = (address: string): string =>
  address.startsWith(REAL) ? PLAYED + address.slice(REAL.length) : address;

/** What the program calls an address of the browser. */
export const real = (address: string): string =>
  address.startsWith(PLAYED) ? REAL + address.slice(PLAYED.length) : address;
