import fc from 'fast-check';

/** A firing as numbers, for writing it down in any dialect. */
export interface Firing {
  readonly startMillis: number;
  readonly stepSeconds: number;
  /** °C, to one decimal. */
  readonly celsius: readonly number[];
}

/** How a firing is written down. */
export interface Writing {
  readonly delimiter: ',' | ';' | '\t' | '|';
  readonly decimalMark: '.' | ',';
  readonly unit: 'C' | 'F' | 'K';
  readonly stamp: 'iso' | 'iso-t' | 'zulu' | 'day-first' | 'month-first' | 'epoch' | 'elapsed';
  readonly lineEnd: '\n' | '\r\n' | '\r';
  readonly isQuoted: boolean;
  readonly hasHeader: boolean;
  readonly hasMark: boolean;
  readonly hasPreamble: boolean;
  readonly setpoint: boolean;
  readonly encoding: 'utf-8' | 'utf-16le' | 'utf-16be' | 'latin1';
}

/** Climbs, holds and falls of a kiln, never a straight line. */
export const firings: fc.Arbitrary<Firing> = fc
  .record({
    // Days beyond 12, so that the order of day and month can be known.
    day: fc.integer({ min: 13, max: 28 }),
    month: fc.integer({ min: 1, max: 12 }),
    secondOfDay: fc.integer({ min: 0, max: 86_399 }),
    stepSeconds: fc.constantFrom(1, 5, 10, 30, 60, 120),
    start: fc.integer({ min: 100, max: 300 }),
    climbs: fc.array(fc.integer({ min: -30, max: 60 }), { minLength: 12, maxLength: 60 }),
  })
  .map(({ day, month, secondOfDay, stepSeconds, start, climbs }) => {
    let tenths = start;
    return {
      startMillis: Date.UTC(2023, month - 1, day) + secondOfDay * 1000,
      stepSeconds,
      celsius: [start, ...climbs].map((climb, index) => {
        if (index > 0) tenths += climb * 10 + ((index * 7) % 10);
        return Math.max(150, tenths) / 10;
      }),
    };
  });

export const writings: fc.Arbitrary<Writing> = fc.record({
  delimiter: fc.constantFrom(',', ';', '\t', '|'),
  decimalMark: fc.constantFrom('.', ','),
  unit: fc.constantFrom('C', 'F', 'K'),
  stamp: fc.constantFrom('iso', 'iso-t', 'zulu', 'day-first', 'month-first', 'epoch', 'elapsed'),
  lineEnd: fc.constantFrom('\n', '\r\n', '\r'),
  isQuoted: fc.boolean(),
  hasHeader: fc.boolean(),
  hasMark: fc.boolean(),
  hasPreamble: fc.boolean(),
  setpoint: fc.boolean(),
  encoding: fc.constantFrom('utf-8', 'utf-16le', 'utf-16be', 'latin1'),
});

const two = (value: number): string => String(value).padStart(2, '0');

const stamped = (millis: number, startMillis: number, stamp: Writing['stamp']): string => {
  const date = new Date(millis);
  const iso = date.toISOString().slice(0, 19);
  const day = two(date.getUTCDate());
  const month = two(date.getUTCMonth() + 1);
  const clock = iso.slice(11);
  switch (stamp) {
    case 'iso':
      return iso.replace('T', ' ');
    case 'iso-t':
      return iso;
    case 'zulu':
      return `${iso}Z`;
    case 'day-first':
      return `${day}/${month}/${date.getUTCFullYear()} ${clock}`;
    case 'month-first':
      return `${month}/${day}/${date.getUTCFullYear()} ${clock}`;
    case 'epoch':
      return String(millis / 1000);
    case 'elapsed':
      return String((millis - startMillis) / 1000);
  }
};

/** A temperature as printed: two decimals, so that °C, °F and K copies agree closely. */
export const printedIn = (celsius: number, unit: Writing['unit']): number => {
  const value = unit === 'C' ? celsius : unit === 'F' ? celsius * 1.8 + 32 : celsius + 273.15;
  return Math.round(value * 100) / 100;
};

const encoded = (text: string, { encoding, hasMark }: Writing): Uint8Array => {
  if (encoding === 'utf-8') return new TextEncoder().encode(`${hasMark ? '\ufeff' : ''}${text}`);
  if (encoding === 'latin1') return Uint8Array.from(text, (letter) => letter.charCodeAt(0));
  const units = `${hasMark ? '\ufeff' : ''}${text}`;
  const bytes = new Uint8Array(units.length * 2);
  for (let i = 0; i < units.length; i += 1) {
    const unit = units.charCodeAt(i);
    bytes[2 * i + (encoding === 'utf-16le' ? 0 : 1)] = unit & 0xff;
    bytes[2 * i + (encoding === 'utf-16le' ? 1 : 0)] = unit >> 8;
  }
  return bytes;
};

/** Without a header nothing says the unit or the unit of bare times, so neither is left out then. */
export const sensible = (writing: Writing): Writing => ({
  ...writing,
  hasHeader: writing.hasHeader || writing.unit !== 'C' || writing.stamp === 'elapsed',
  // Where the comma stands before decimals, it cannot separate unquoted cells here.
  isQuoted: writing.isQuoted || (writing.delimiter === ',' && writing.decimalMark === ','),
});

/** The firing as the bytes of a file. */
export const written = (firing: Firing, how: Writing): Uint8Array => {
  const { delimiter, decimalMark, unit, lineEnd } = how;
  const cell = (text: string): string => (how.isQuoted ? `"${text}"` : text);
  const degrees = unit === 'K' ? '[K]' : `(°${unit})`;
  const names = [how.stamp === 'elapsed' ? 'Time (s)' : 'Time', `Temperature ${degrees}`];
  if (how.setpoint) names.push(`Setpoint ${degrees}`);
  const rows = firing.celsius.map((celsius, index) => {
    const millis = firing.startMillis + index * firing.stepSeconds * 1000;
    const values = [celsius, ...(how.setpoint ? [Math.round(celsius)] : [])];
    return [
      stamped(millis, firing.startMillis, how.stamp),
      ...values.map((value) => printedIn(value, unit).toFixed(2).replace('.', decimalMark)),
    ];
  });
  const preamble = how.hasPreamble ? ['Kiln log of the north shed', 'Operator: nobody', ''] : [];
  const table = [...(how.hasHeader ? [names] : []), ...rows].map((cells) =>
    cells.map(cell).join(delimiter),
  );
  return encoded([...preamble, ...table].map((line) => line + lineEnd).join(''), how);
};
