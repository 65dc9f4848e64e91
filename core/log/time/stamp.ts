import { MAX_VALUE_CHARS } from '../limits.ts';
import { fold } from '../text/fold.ts';
import { isSmallHour, secondsOfClock } from './clock-seconds.ts';
import { isDigit, isLetter, TextCursor } from './text-cursor.ts';
import { timeWord } from './time-words.ts';
import { usualForm, type DateForm } from './usual-form.ts';

/** One number of a date, as printed. */
export interface DatePart {
  readonly value: number;
  readonly digits: number;
  /** Whether it came as a month's name. */
  readonly isName: boolean;
}

/** A time of day, a date or both, as printed; which part of a date is the day is not decided. */
export interface Stamp {
  /** None, two (no year) or three. */
  readonly date: readonly DatePart[];
  /** The mark between the parts of the date, or '' for compact dates. */
  readonly dateMark: string;
  /** Seconds of the clock without decimals, or null without a clock. */
  readonly clockSeconds: number | null;
  readonly fraction: number;
  /** How many numbers the clock has: 2 for `14:05`, 3 for `14:05:09`; 0 without a clock. */
  readonly clockGroups: number;
  /** The first number of the clock as printed. */
  readonly hour: number;
  readonly half: 'am' | 'pm' | null;
  readonly offsetMinutes: number | null;
  /** The calendar in which the date is printed; `date` holds the same day in that of months. */
  readonly dateForm: DateForm;
}

const SPACED_HOUR = /\s{1,2}h\s{0,2}(?=\d)/iy;
const HALF_MARK = /\s?[ap]\.?\s?m\b/iy;

const BLANKS = " \t\u00a0\u2009\u202f,'\u2019[]()_";
const MINUS = '\u2212';
/** What closes a remark that may follow the offset: `+01:00[Area/Place]`, `+0100 (Name)`. */
const CLOSERS: ReadonlyMap<string, string> = new Map([
  ['[', ']'],
  ['(', ')'],
]);

const DATE_MARKS = '-/.';

/** Letters that may stand behind the numbers of a clock in letters. */
const CLOCK_LETTERS: readonly string[] = ['m', 'min', 's', 'sec'];

/** Reads the parts of one stamp from left to right; each step takes at least one character. */
class StampScanner extends TextCursor {
  readonly #date: DatePart[] = [];
  #dateMark = '';
  /** Where the last mark of the date stands: two in a row make no date. */
  #markAt = -2;
  #clock: number[] | null = null;
  #fraction = 0;
  /** Whether the clock is written with letters: `14h05`. */
  #isInLetters = false;
  #half: 'am' | 'pm' | null = null;
  #offset: number | null = null;

  scan(): Stamp | null {
    while (!this.isAtEnd) if (!this.#step()) return null;
    return this.#result();
  }

  #step(): boolean {
    const code = this.code();
    if (isDigit(code)) return this.#number();
    if (isLetter(code)) return this.#word();
    const character = this.text.charAt(this.at);
    // A time elapsed may come with its sign: `+00:05:00`.
    if (character === '+' && this.at === 0) {
      this.at += 1;
      return true;
    }
    const isInDate = this.#date.length === 1 || this.#date.length === 2;
    const isSign = character === '+' || character === '-' || character === MINUS;
    const closer = this.#offset === null ? undefined : CLOSERS.get(character);
    if (closer !== undefined) return this.skipPast(closer);
    if (isSign && this.#clock !== null && !isInDate) return this.#zone();
    // A colon between date and clock: `14/Mar/2024:14:05:00`.
    const endsDate = character === ':' && this.#date.length === 3 && this.#clock === null;
    if (endsDate && isDigit(this.code(1))) {
      this.at += 1;
      return true;
    }
    this.at += 1;
    if (BLANKS.includes(character)) return true;
    // A mark may also close the date: `25.05. 14:00`, `20190622-021507`.
    if (!DATE_MARKS.includes(character) || this.#date.length === 0) return false;
    if (this.#markAt === this.at - 2) return false;
    this.#markAt = this.at - 1;
    if (this.#dateMark === '') this.#dateMark = character;
    return true;
  }

  #number(): boolean {
    const { value, digits } = this.takeDigits();
    const code = this.code();
    const opensClock =
      code === 58 /* : */ || ((code | 32) === 104 /* h */ && isDigit(this.code(1)));
    const isYear = digits === 4 && this.#date.length === 2;
    if (opensClock && !isYear) return digits <= 4 && this.#clockAfter(value);
    if (digits <= 2 && this.#isSpacedHour()) return this.#spacedClock(value);
    if (digits <= 2 && this.#clock === null && this.#isHalfNext()) {
      this.#clock = [value, 0];
      return true;
    }
    if (digits === 14 || digits === 12) return this.#compactDate(value, digits);
    if (digits === 8 && this.#date.length === 0) return this.#pushCompact(value);
    const isCompactClock = this.#date.length === 3 && this.#clock === null;
    if (isCompactClock && (digits === 6 || digits === 4)) return this.#compactClock(value, digits);
    if (digits > 4 || this.#date.length === 3) return false;
    this.#date.push({ value, digits, isName: false });
    return true;
  }

  /** Whether an hour mark between blanks follows: `14 h 05`. */
  #isSpacedHour(): boolean {
    SPACED_HOUR.lastIndex = this.at;
    return this.#clock === null && SPACED_HOUR.test(this.text);
  }

  #spacedClock(hour: number): boolean {
    this.at = SPACED_HOUR.lastIndex;
    const { value, digits } = this.takeDigits();
    this.#clock = [hour, value];
    this.#isInLetters = true;
    return digits <= 2;
  }

  /** Whether am or pm follows a bare hour: `8am`, `3 p.m.`. */
  #isHalfNext(): boolean {
    HALF_MARK.lastIndex = this.at;
    return HALF_MARK.test(this.text);
  }

  #compactDate(value: number, digits: number): boolean {
    const scale = digits === 14 ? 1e6 : 1e4;
    if (this.#date.length > 0 || this.#clock !== null) return false;
    return (
      this.#pushCompact(Math.floor(value / scale)) && this.#compactClock(value % scale, digits - 8)
    );
  }

  #pushCompact(value: number): boolean {
    this.#date.push(
      { value: Math.floor(value / 10_000), digits: 4, isName: false },
      { value: Math.floor(value / 100) % 100, digits: 2, isName: false },
      { value: value % 100, digits: 2, isName: false },
    );
    return true;
  }

  #compactClock(value: number, digits: number): boolean {
    const seconds = digits === 6 ? [value % 100] : [];
    const minutes = digits === 6 ? Math.floor(value / 100) : value;
    this.#clock = [Math.floor(minutes / 100), minutes % 100, ...seconds];
    if (this.code() === 46) this.#fraction = this.takeFraction();
    return true;
  }

  /** The rest of a clock whose first number has been read; stands on its mark. */
  #clockAfter(first: number): boolean {
    if (this.#clock !== null) return false;
    this.#clock = [first];
    this.#isInLetters = this.code() !== 58;
    while (this.#clock.length < 3 && this.#isClockMark() && isDigit(this.code(1))) {
      this.at += 1;
      const { value, digits } = this.takeDigits();
      if (digits > 2) return false;
      this.#clock.push(value);
    }
    if (this.#clock.length === 3 && this.#hasDecimals()) this.#fraction = this.takeFraction();
    return this.#clock.length >= 2;
  }

  #isClockMark(): boolean {
    const code = this.code();
    return code === 58 || (code | 32) === 104 || (code | 32) === 109;
  }

  #hasDecimals(): boolean {
    const code = this.code();
    if (!isDigit(this.code(1))) return false;
    // `12:00:00:123` are milliseconds; four numbers of two digits count days and are read elsewhere.
    return code === 46 || code === 44 || (code === 58 && isDigit(this.code(3)));
  }

  #zone(): boolean {
    if (this.#offset !== null && this.#offset !== 0) return false;
    const sign = this.code() === 43 ? 1 : -1;
    this.at += 1;
    const { value, digits } = this.takeDigits();
    if (digits === 0 || digits > 4) return false;
    let minutes = digits > 2 ? Math.floor(value / 100) * 60 + (value % 100) : value * 60;
    if (digits <= 2 && this.code() === 58) {
      this.at += 1;
      minutes += this.takeDigits().value;
    }
    this.#offset = sign * minutes;
    return minutes <= 14 * 60;
  }

  #word(): boolean {
    const start = this.at;
    while (this.#isInWord()) this.at += 1;
    const word = fold(this.text.slice(start, this.at)).replaceAll('.', '');
    if (this.#clock !== null && (word === 'a' || word === 'p')) {
      this.#half = word === 'a' ? 'am' : 'pm';
      return true;
    }
    if (this.#isInLetters && CLOCK_LETTERS.includes(word)) return true;
    if (word === 'm' && this.#clock !== null) {
      // After `a` or `p` it is the rest of the mark; alone it is the Italian morning: `9:35 m.`.
      this.#half ??= 'am';
      return true;
    }
    const meaning = timeWord(word);
    if (meaning === null) return false;
    if (meaning.kind === 'half') this.#half = meaning.afternoon ? 'pm' : 'am';
    if (meaning.kind === 'night') this.#half = isSmallHour(this.#clock) ? 'am' : 'pm';
    if (meaning.kind === 'zone') this.#offset = meaning.offsetMinutes;
    if (meaning.kind !== 'month') return true;
    if (this.#date.length === 3 || this.#date.some((part) => part.isName)) return false;
    this.#date.push({ value: meaning.month, digits: 2, isName: true });
    return true;
  }

  /** A hyphen within a word belongs to it, once the clock has been read: `après-midi`. */
  #isInWord(): boolean {
    const code = this.code();
    if (isLetter(code) || code === 46) return true;
    return code === 45 && this.#clock !== null && isLetter(this.code(1));
  }

  #result(): Stamp | null {
    const clock = this.#clock;
    const isDateSound = this.#date.length === 0 || this.#hasYear() || this.#isYearless();
    if (!isDateSound || (clock === null && this.#date.length === 0)) return null;
    const clockSeconds = clock === null ? null : secondsOfClock(clock, this.#half);
    if (clock !== null && clockSeconds === null) return null;
    return {
      date: this.#date,
      dateMark: this.#dateMark,
      clockSeconds,
      fraction: this.#fraction,
      clockGroups: clock?.length ?? 0,
      hour: clock?.[0] ?? 0,
      half: this.#half,
      offsetMinutes: this.#offset,
      dateForm: 'months',
    };
  }

  #hasYear(): boolean {
    const [first, , third] = this.#date;
    if (first === undefined || third === undefined) return false;
    if (this.#date.some((part) => part.digits === 3)) return false;
    return first.digits === 4 || third.digits === 4 || third.digits === 2;
  }

  /** Two numbers alone could be anything; beside a clock or with a month's name they are a date. */
  #isYearless(): boolean {
    if (this.#date.length !== 2) return false;
    return this.#date.some((part) => part.isName) || this.#clock !== null;
  }
}

/**
 * The parts of a date, a time of day or both, in any usual order; null for anything else. Hours
 * beyond 24 are allowed, since a clock may count the time elapsed.
 */
export const scanStamp = (text: string): Stamp | null => {
  if (text.length === 0 || text.length > MAX_VALUE_CHARS) return null;
  const usual = new StampScanner(text).scan();
  if (usual !== null && !usual.date.some(({ digits }) => digits === 3)) return usual;
  const rewritten = usualForm(text);
  if (rewritten === null) return usual;
  const stamp = new StampScanner(rewritten.text).scan();
  return stamp && { ...stamp, dateForm: rewritten.dateForm };
};
