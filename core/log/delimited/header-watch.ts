/** What a line after the header turned out to be. */
export type Seen = 'header' | 'elsewhere' | 'here';

const normalized = (line: string): string => line.replace(/\s+/g, ' ').trim();

/**
 * Knows the header's lines again further down. The same header once more belongs to the same table;
 * the same names over other units begin another table, which lasts until the header comes back.
 */
export class HeaderWatch {
  readonly #header: readonly string[];
  #isElsewhere: boolean;
  /** Which of the header's lines must come next, or null outside a header. */
  #expected: number | null = null;

  /** `isBefore` says that the lines begin above the header, where other tables may stand. */
  constructor(header: readonly string[], isBefore = false) {
    this.#header = header.map(normalized);
    this.#isElsewhere = isBefore;
  }

  get isElsewhere(): boolean {
    return this.#isElsewhere;
  }

  /** Notes that a row of the table has come. */
  noteRow(): void {
    this.#expected = null;
  }

  /** Looks at a line; `fits` says whether it could be a row of the table. */
  note(text: string, fits: () => boolean): Seen {
    if (this.#header.length === 0) return 'here';
    const line = normalized(text);
    if (line === this.#header[0]) {
      this.#isElsewhere = false;
      this.#expected = this.#header.length > 1 ? 1 : null;
      return 'header';
    }
    if (this.#expected !== null) return this.#noteBelow(line, fits);
    return this.#isElsewhere ? 'elsewhere' : 'here';
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
