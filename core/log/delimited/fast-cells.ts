import { daysFromCivil, daysInMonth, SECONDS_PER_DAY } from '../time/civil.ts';
import type { DayOrder } from '../time/date-order.ts';
import type { DecimalMark } from '../text/number.ts';

const ZERO = 48;
const COLON = 58;
const DOT = 46;
const COMMA = 44;
const MINUS = 45;
const PLUS = 43;
const SLASH = 47;
const SPACE = 32;

/** Digits whose number a double holds exactly, and powers of ten likewise (so division rounds once,
 * as the nearest double does: W. D. Clinger, "How to read floating point numbers accurately"). */
const EXACT_DIGITS = 15;
const POWERS = Float64Array.from({ length: EXACT_DIGITS + 1 }, (_, power) => 10 ** power);

/**
 * Plain decimal numbers straight from bytes: sign, digits, one mark, digits. Anything else is NaN
 * and left to the careful path; the value is the same double that Number gives.
 */
export const fastNumber = (bytes: Uint8Array, from: number, to: number, mark: number): number => {
  let at = from;
  const first = bytes[at];
  const isNegative = first === MINUS;
  if (isNegative || first === PLUS) at += 1;
  let mantissa = 0;
  let digits = 0;
  let decimals = -1;
  for (; at < to; at += 1) {
    const byte = bytes[at]!;
    const digit = byte - ZERO;
    if (digit >= 0 && digit <= 9) {
      mantissa = mantissa * 10 + digit;
      digits += 1;
      if (decimals >= 0) decimals += 1;
    } else if (byte === mark && decimals < 0) {
      decimals = 0;
    } else {
      return Number.NaN;
    }
  }
  if (digits === 0 || digits > EXACT_DIGITS) return Number.NaN;
  const value = decimals > 0 ? mantissa / POWERS[decimals]! : mantissa;
  return isNegative ? -value : value;
};

export const markByte = (mark: DecimalMark): number => (mark === '.' ? DOT : COMMA);

/** Dates and clocks in digits, straight from bytes; NaN for whatever the careful path must see. */
export class FastStamps {
  /** The offset of the last stamp, in minutes; null without one. */
  offsetMinutes: number | null = null;
  readonly #order: DayOrder;
  readonly #originDays: number;
  /** Where the part that was read last ended. */
  #end = 0;
  #fraction = 0;
  #lastDate = -1;
  #lastDays = 0;

  constructor(order: DayOrder, originDays: number) {
    this.#order = order;
    this.#originDays = originDays;
  }

  /** Seconds of a date with a clock from the origin's day. */
  stamp(bytes: Uint8Array, from: number, to: number): number {
    const days = this.#date(bytes, from, to);
    let at = this.#end;
    if (bytes[at] !== SPACE && bytes[at] !== 0x54 /* T */) return Number.NaN;
    at += 1;
    const ofDay = this.#clock(bytes, at, to, 2);
    if (ofDay > SECONDS_PER_DAY || !this.#offset(bytes, this.#end, to)) return Number.NaN;
    return days * SECONDS_PER_DAY + ofDay - (this.offsetMinutes ?? 0) * 60 + this.#fraction;
  }

  /** The same from a date and a clock that stand apart. */
  dateAndClock(bytes: Uint8Array, date: number, dateTo: number, clock: number, to: number): number {
    const days = this.#date(bytes, date, dateTo);
    if (this.#end !== dateTo) return Number.NaN;
    const ofDay = this.#clock(bytes, clock, to, 2);
    if (ofDay > SECONDS_PER_DAY || !this.#offset(bytes, this.#end, to)) return Number.NaN;
    return days * SECONDS_PER_DAY + ofDay - (this.offsetMinutes ?? 0) * 60 + this.#fraction;
  }

  /** Seconds of a clock alone; its hours may go beyond a day. */
  clock(bytes: Uint8Array, from: number, to: number): number {
    const seconds = this.#clock(bytes, from, to, 4);
    return this.#end === to ? seconds + this.#fraction : Number.NaN;
  }

  /** One run of digits as a number, -1 if there is none or more than `most`. */
  #digits(bytes: Uint8Array, from: number, to: number, most: number): number {
    let at = from;
    let value = 0;
    while (at < to) {
      const digit = bytes[at]! - ZERO;
      if (digit < 0 || digit > 9) break;
      value = value * 10 + digit;
      at += 1;
    }
    this.#end = at;
    return at === from || at - from > most ? -1 : value;
  }

  #date(bytes: Uint8Array, from: number, to: number): number {
    const first = this.#digits(bytes, from, to, 4);
    const mark = bytes[this.#end];
    if (mark !== MINUS && mark !== SLASH && mark !== DOT) return Number.NaN;
    const firstDigits = this.#end - from;
    const second = this.#digits(bytes, this.#end + 1, to, 2);
    if (bytes[this.#end] !== mark) return Number.NaN;
    const start = this.#end + 1;
    const third = this.#digits(bytes, start, to, 4);
    if (first < 0 || second < 0 || third < 0) return Number.NaN;
    const key = (first * 100 + second) * 10_000 + third;
    if (key === this.#lastDate) return this.#lastDays;
    const days = this.#days(first, second, third, firstDigits, this.#end - start);
    if (Number.isNaN(days)) return Number.NaN;
    this.#lastDate = key;
    this.#lastDays = days;
    return days;
  }

  /** Years of four digits only; the rest is for the careful path. */
  #days(first: number, second: number, third: number, firstDigits: number, thirdDigits: number) {
    let year = third;
    let month = second;
    let day = first;
    if (firstDigits === 4 && thirdDigits <= 2) {
      year = first;
      day = third;
    } else if (thirdDigits !== 4 || firstDigits > 2) {
      return Number.NaN;
    } else if (this.#order === 'month-first') {
      month = first;
      day = second;
    }
    if (day < 1 || day > daysInMonth(year, month)) return Number.NaN;
    return daysFromCivil(year, month, day) - this.#originDays;
  }

  #clock(bytes: Uint8Array, from: number, to: number, hourDigits: number): number {
    this.#fraction = 0;
    const hour = this.#digits(bytes, from, to, hourDigits);
    if (hour < 0 || bytes[this.#end] !== COLON) return Number.NaN;
    const minute = this.#digits(bytes, this.#end + 1, to, 2);
    if (minute < 0 || minute > 59) return Number.NaN;
    if (this.#end >= to || bytes[this.#end] !== COLON) return hour * 3600 + minute * 60;
    const second = this.#digits(bytes, this.#end + 1, to, 2);
    if (second < 0 || second > 60) return Number.NaN;
    if (this.#end < to && bytes[this.#end] === DOT) {
      const start = this.#end + 1;
      const decimals = this.#digits(bytes, start, to, EXACT_DIGITS);
      if (decimals < 0) return Number.NaN;
      this.#fraction = decimals / POWERS[this.#end - start]!;
    }
    return hour * 3600 + minute * 60 + second;
  }

  /** Reads the offset that may follow a clock; false if something else does. */
  #offset(bytes: Uint8Array, from: number, to: number): boolean {
    this.offsetMinutes = null;
    if (from === to) return true;
    const sign = bytes[from];
    if (sign === 0x5a /* Z */ && from + 1 === to) {
      this.offsetMinutes = 0;
      return true;
    }
    if (sign !== PLUS && sign !== MINUS) return false;
    const hours = this.#digits(bytes, from + 1, to, 2);
    if (hours < 0 || bytes[this.#end] !== COLON) return false;
    const minutes = this.#digits(bytes, this.#end + 1, to, 2);
    if (minutes < 0 || this.#end !== to || hours * 60 + minutes > 14 * 60) return false;
    this.offsetMinutes = (sign === MINUS ? -1 : 1) * (hours * 60 + minutes);
    return true;
  }
}
