/** Lines that are no rows, counted by what they are. */
export interface Aside {
  blank: number;
  comment: number;
  header: number;
  /** Rows of other tables, and of other kinds nested in this one. */
  table: number;
  /** Titles, heads of sections and other words between the rows. */
  text: number;
  footer: number;
}

/** So many are kept from the beginning of the file, and as many from its end (chosen). */
const KEPT_AT_EACH_END = 5000;

/** Which lines were set aside and as what: the first of them and the last, however many there are. */
export class AsideLines {
  readonly #first = new Map<number, keyof Aside>();
  readonly #last = new Map<number, keyof Aside>();

  note(line: number, kind: keyof Aside): void {
    if (this.#first.size < KEPT_AT_EACH_END) {
      this.#first.set(line, kind);
      return;
    }
    this.#last.set(line, kind);
    const [oldest] = this.#last.keys();
    if (this.#last.size > KEPT_AT_EACH_END && oldest !== undefined) this.#last.delete(oldest);
  }

  /** As what a line was set aside; null if it was not, or is not kept. */
  kindOf(line: number): keyof Aside | null {
    return this.#first.get(line) ?? this.#last.get(line) ?? null;
  }
}
