export const isDigit = (code: number): boolean => code >= 48 && code <= 57;
/** Blanks, dashes, quotes and signs above Latin: U+2000 to U+2BFF hold no letters of dates. */
const isSymbol = (code: number): boolean => code >= 0x2000 && code <= 0x2bff;
export const isLetter = (code: number): boolean =>
  (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || (code >= 0xc0 && !isSymbol(code));

/** Digits in a text, as a number and how many they are. */
export interface Digits {
  readonly value: number;
  readonly digits: number;
}

/** A place in a text that moves from left to right. */
export class TextCursor {
  readonly text: string;
  at = 0;

  constructor(text: string) {
    this.text = text;
  }

  get isAtEnd(): boolean {
    return this.at >= this.text.length;
  }

  /** The UTF-16 unit that stands so many places on; NaN beyond the end. */
  code(offset = 0): number {
    return this.text.charCodeAt(this.at + offset);
  }

  /** Moves over the digits that stand here. */
  takeDigits(): Digits {
    const start = this.at;
    let value = 0;
    while (isDigit(this.code())) {
      value = value * 10 + (this.code() - 48);
      this.at += 1;
    }
    return { value, digits: this.at - start };
  }

  /** Moves over a decimal mark and the digits behind it; the fraction that they are. */
  takeFraction(): number {
    this.at += 1;
    const start = this.at;
    while (isDigit(this.code())) this.at += 1;
    return Number(`0.${this.text.slice(start, this.at)}`);
  }

  /** Moves behind the next such character; false, without a move, if there is none. */
  skipPast(character: string): boolean {
    const end = this.text.indexOf(character, this.at);
    if (end < 0) return false;
    this.at = end + 1;
    return true;
  }
}
