/** Why an input could not be used, as a plain word a script can act on. */
export type RefusalCode =
  | 'empty'
  | 'binary'
  | 'too-large'
  | 'header-only'
  | 'no-time'
  | 'no-temperature'
  | 'too-few-rows'
  | 'not-readable'
  | 'bad-option'
  | 'bad-schedule'
  | 'cannot-join'
  | 'unknown-cone'
  | 'file-missing'
  | 'file-unreadable';

/**
 * An input that cannot be used. `message` is one plain sentence for the person who gave the input;
 * it names what is wrong and what to do, never an internal name.
 */
export class Refusal extends Error {
  readonly code: RefusalCode;
  /** 1-based line of the input, where one line is to blame. */
  readonly line: number | null;

  constructor(code: RefusalCode, message: string, line: number | null = null) {
    super(message);
    this.name = 'Refusal';
    this.code = code;
    this.line = line;
  }
}
