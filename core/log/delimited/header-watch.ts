import { fold } from '../text/fold.ts';
import { classOf } from '../text/cell-class.ts';

/** What a line after the header turned out to be. */
export type Seen = 'header' | 'elsewhere' | 'here';

/** Without what changes nothing in a header: case, accents, quotes, and blanks around marks. */
const normalized = (line: string): string =>
  fold(line)
    .replace(/["'\s]+/g, ' ')
    .replace(/ ?([,;|]) ?/g, '$1')
    .trim();

/** A line of names has at least this share of its cells from the header (chosen). */
const KNOWN_NAMES = 0.5;

/**
 * Knows the header's lines again further down. The same header once more belongs to the same table;
 * the same names over other units begin another table, which lasts until the header comes back.
 */
export class HeaderWatch {
  readonly #header: readonly string[];
  /** The names of the columns, folded. */
  readonly #names: ReadonlySet<string>;
  #isElsewhere: boolean;
  /** Which of the header's lines must come next, or null outside a header. */
  #expected: number | null = null;

  /**
   * `names` are the columns' cells in the header; `isBefore` says that the lines begin above the
   * header, where other tables may stand.
   */
  constructor(header: readonly string[], names: readonly string[] = [], isBefore = false) {
    this.#header = header.map(normalized);
    this.#names = new Set(names.filter((name) => name !== '').map(normalized));
    this.#isElsewhere = isBefore;
  }

  get isElsewhere(): boolean {
    return this.#isElsewhere;
  }

  /** Notes that a row of the table has come. */
  noteRow(): void {
    this.#expected = null;
  }

  /** Looks at a line and its cells; `fits` says whether it could be a row of the table. */
  note(text: string, cells: readonly string[], fits: () => boolean): Seen {
    if (this.#header.length === 0) return 'here';
    const line = normalized(text);
    if (line === this.#header[0]) {
      this.#isElsewhere = false;
      this.#expected = this.#header.length > 1 ? 1 : null;
      return 'header';
    }
    if (this.#expected !== null) return this.#noteBelow(line, fits);
    if (this.#isOtherHeader(cells)) this.#isElsewhere = true;
    return this.#isElsewhere ? 'elsewhere' : 'here';
  }

  /** Names that are the header's only in part, or in another order: below them columns differ. */
  #isOtherHeader(cells: readonly string[]): boolean {
    const filled = cells.filter((cell) => cell !== '');
    if (filled.length < 2) return false;
    const known = filled.filter((cell) => this.#names.has(normalized(cell))).length;
    if (known === 0 || known < KNOWN_NAMES * filled.length) return false;
    return filled.every((cell) => classOf(cell, '.') === 'text');
  }

  #noteBelow(line: string, fits: () => boolean): Seen {
    const expected = this.#expected!;
    if (line === this.#header[expected]) {
      this.#expected = expected + 1 < this.#header.length ? expected + 1 : null;
      return 'header';
    }
    this.#expected = null;
    // Loggers that repeat the names may leave out the lines below them.
    if (fits()) return 'here';
    this.#isElsewhere = true;
    return 'elsewhere';
  }
}
