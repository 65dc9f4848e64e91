const doubled = (old: Uint32Array): Uint32Array => {
  const array = new Uint32Array(old.length * 2);
  array.set(old);
  return array;
};

/** Stretches of a text, one behind the other; kept as numbers, as there may be millions. */
export class Spans {
  #from: Uint32Array = new Uint32Array(1024);
  #to: Uint32Array = new Uint32Array(1024);
  length = 0;

  add(from: number, to: number): void {
    if (this.length === this.#from.length) {
      this.#from = doubled(this.#from);
      this.#to = doubled(this.#to);
    }
    this.#from[this.length] = from;
    this.#to[this.length] = to;
    this.length += 1;
  }

  from(index: number): number {
    return this.#from[index]!;
  }

  to(index: number): number {
    return this.#to[index]!;
  }

  /** How many stretches begin at or before a place. */
  countUpTo(at: number): number {
    let low = 0;
    let high = this.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.#from[middle]! <= at) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

const CR = 13;
const LF = 10;

/** The lines of a text without their ends; the last may be empty. */
export const linesOf = (text: string): Spans => {
  const lines = new Spans();
  let from = 0;
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code !== LF && code !== CR) continue;
    lines.add(from, at);
    if (code === CR && text.charCodeAt(at + 1) === LF) at += 1;
    from = at + 1;
  }
  lines.add(from, text.length);
  return lines;
};
