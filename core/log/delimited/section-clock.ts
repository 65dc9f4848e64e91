import type { TimeReader } from '../time/time-reader.ts';
import { joinedStamp } from '../time/time-reader.ts';
import { fold } from '../text/fold.ts';
import { parseNumber } from '../text/number.ts';

const DATE_KEYS: readonly string[] = ['date', 'datum', 'fecha', 'data', 'dato'];
const TIME_KEYS: readonly string[] = ['time', 'zeit', 'uhrzeit', 'heure', 'hora', 'ora', 'tijd'];
const STEP_KEYS: readonly string[] = ['delta_x', 'delta', 'dt', 'interval', 'step'];

export type SectionKey = 'date' | 'time' | 'step';

/** What a line of a section's head tells of time by its first cell, or null. */
export const sectionKey = ([first = '']: readonly string[]): SectionKey | null => {
  const key = fold(first).replace(/\s*[:=]?$/, '');
  if (DATE_KEYS.includes(key)) return 'date';
  if (TIME_KEYS.includes(key)) return 'time';
  return STEP_KEYS.includes(key) ? 'step' : null;
};

/** The value that a head gives for a column: in its own place, else the first there is. */
export const sectionValue = (cells: readonly string[], column: number): string => {
  const own = cells[column] ?? '';
  return own !== '' ? own : (cells.slice(1).find((cell) => cell !== '') ?? '');
};

/**
 * Keeps the clock of a file whose rows stand in many small sections, each with date and time in its
 * head. A section's first row has that time; each further row comes one step later.
 */
export class SectionClock {
  readonly #time: TimeReader;
  readonly #column: number;
  #date = '';
  #clock = '';
  #step = 0;

  constructor(time: TimeReader, column: number) {
    this.#time = time;
    this.#column = column;
  }

  /** Takes a line of a section's head; false if the line is none. */
  note(cells: readonly string[]): boolean {
    const key = sectionKey(cells);
    if (key === null) return false;
    const value = sectionValue(cells, this.#column);
    if (key === 'date') this.#date = value;
    else if (key === 'time') this.#clock = value;
    else this.#step = parseNumber(value, '.') || 0;
    if (key !== 'step') {
      this.#time.sectionSeconds = this.#time.stampSeconds(joinedStamp(this.#date, this.#clock));
    }
    return true;
  }

  /** Moves on by one row. */
  advance(): void {
    this.#time.sectionSeconds += this.#step;
  }
}
