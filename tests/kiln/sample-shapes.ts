import type { Firing, ScheduleFile } from './types.ts';

/** How a made-up logger lays its file out; each gives the bytes of a firing's log. */
export type Shape = (firing: Firing) => Uint8Array;

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const latin1 = (text: string): Uint8Array =>
  Uint8Array.from(text, (character) => character.charCodeAt(0));
const utf16WithMark = (text: string): Uint8Array => {
  const bytes = new DataView(new ArrayBuffer(2 * text.length + 2));
  bytes.setUint16(0, 0xfeff, true);
  for (let i = 0; i < text.length; i++) bytes.setUint16(2 * i + 2, text.charCodeAt(i), true);
  return new Uint8Array(bytes.buffer);
};

const two = (value: number): string => String(value).padStart(2, '0');

/** A clock's fields; the clock is whatever the logger was set to, so plain arithmetic in UTC. */
const clockAt = (start: string, atSeconds: number) => {
  const at = new Date(Date.parse(`${start}Z`) + Math.round(atSeconds) * 1000);
  return {
    date: at.toISOString().slice(0, 10),
    time: at.toISOString().slice(11, 19),
    year: at.getUTCFullYear(),
    month: at.getUTCMonth() + 1,
    day: at.getUTCDate(),
    hour: at.getUTCHours(),
    epochSeconds: at.getTime() / 1000,
  };
};

const elapsedClock = (atSeconds: number): string => {
  const whole = Math.round(atSeconds);
  return `${Math.floor(whole / 3600)}:${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}`;
};

/** A number with so many decimals, or what stands where there is none. */
const fixed = (value: number, decimals: number, none = ''): string =>
  Number.isNaN(value) ? none : value.toFixed(decimals);
const fahrenheit = (celsius: number): number => celsius * 1.8 + 32;
const comma = (text: string): string => text.replace('.', ',');
/** JSON has no NaN. */
const orNull = (value: number): number | null =>
  Number.isNaN(value) ? null : Number(value.toFixed(1));

/** One line a sample. */
const lines = (
  { atSeconds }: Firing,
  head: readonly string[],
  line: (index: number, atSeconds: number) => string,
  end = '\n',
): string => [...head, ...Array.from(atSeconds, (at, i) => line(i, at)), ''].join(end);

/** Comma, ISO 8601 with an offset, setpoint and output beside the reading. */
export const isoWithOffset =
  (start: string, offset: string): Shape =>
  (firing) =>
    utf8(
      lines(firing, ['time,kiln_C,setpoint_C,output_percent'], (i, at) => {
        const { date, time } = clockAt(start, at);
        return [
          `${date}T${time}${offset}`,
          fixed(firing.readingC[i]!, 1),
          fixed(firing.setpointC[i]!, 1),
          fixed(firing.outputPercent[i]!, 0),
        ].join(',');
      }),
    );

/** Semicolon, decimal comma, day before month, a Latin-1 degree sign, lines ending in CR LF. */
export const dayFirst =
  (start: string): Shape =>
  (firing) =>
    latin1(
      lines(
        firing,
        ['Datum;Uhrzeit;Ofen [°C]'],
        (i, at) => {
          const { day, month, year, time } = clockAt(start, at);
          const date = `${two(day)}.${two(month)}.${year}`;
          return `${date};${time};${comma(fixed(firing.readingC[i]!, 1))}`;
        },
        '\r\n',
      ),
    );

/** Tabs and elapsed minutes under a preamble of free text, with a row of units. */
export const minutesUnderPreamble =
  (preamble: readonly string[]): Shape =>
  (firing) =>
    utf8(
      lines(
        firing,
        [...preamble, '', 'Elapsed\tKiln\tSetpoint\tPower', 'min\t°C\t°C\t%'],
        (i, at) =>
          [
            fixed(at / 60, 1),
            fixed(firing.readingC[i]!, 1),
            fixed(firing.setpointC[i]!, 1, '-'),
            fixed(firing.outputPercent[i]!, 0),
          ].join('\t'),
      ),
    );

/** Comma, month before day, a 12-hour clock, whole °F. */
export const monthFirst =
  (start: string): Shape =>
  (firing) =>
    utf8(
      lines(firing, ['Timestamp,Temp (F),Set (F)'], (i, at) => {
        const { year, month, day, hour, time } = clockAt(start, at);
        const clock = `${hour % 12 === 0 ? 12 : hour % 12}${time.slice(2)} ${hour < 12 ? 'AM' : 'PM'}`;
        const reading = fixed(fahrenheit(firing.readingC[i]!), 0);
        return `${month}/${day}/${year} ${clock},${reading},${fixed(fahrenheit(firing.setpointC[i]!), 0)}`;
      }),
    );

/** A JSON array of records with epoch seconds. */
export const jsonRecords =
  (start: string): Shape =>
  (firing) => {
    const records = Array.from(firing.atSeconds, (at, i) =>
      JSON.stringify({
        epoch: clockAt(start, at).epochSeconds,
        kiln_c: orNull(firing.readingC[i]!),
        setpoint_c: orNull(firing.setpointC[i]!),
        output: orNull(firing.outputPercent[i]!),
      }),
    );
    return utf8(`[\n${records.join(',\n')}\n]\n`);
  };

/** UTF-16 with a byte-order mark, tabs, elapsed h:mm:ss. */
export const wideElapsed: Shape = (firing) =>
  utf16WithMark(
    lines(
      firing,
      ['Elapsed\tTemperature (°C)'],
      (i, at) => `${elapsedClock(at)}\t${fixed(firing.readingC[i]!, 1)}`,
      '\r\n',
    ),
  );

/** One JSON object a line, instants in UTC. */
export const jsonLines =
  (start: string): Shape =>
  (firing) =>
    utf8(
      lines(firing, [], (i, at) => {
        const { date, time } = clockAt(start, at);
        return JSON.stringify({ ts: `${date}T${time}Z`, celsius: orNull(firing.readingC[i]!) });
      }),
    );

/** One JSON object of columns, elapsed seconds from a stated start. */
export const jsonColumns =
  (start: string): Shape =>
  (firing) =>
    utf8(
      `${JSON.stringify({
        started: start,
        unit: 'C',
        elapsed_seconds: Array.from(firing.atSeconds, Math.round),
        temperature: Array.from(firing.readingC, orNull),
      })}\n`,
    );

/** Comma, date and time apart, two zones. */
export const twoZones =
  (start: string): Shape =>
  (firing) =>
    utf8(
      lines(firing, ['date,time,upper_C,lower_C'], (i, at) => {
        const { date, time } = clockAt(start, at);
        const lower = firing.zoneReadingsC[0]![i]!;
        return `${date},${time},${fixed(firing.readingC[i]!, 1)},${fixed(lower, 1)}`;
      }),
    );

/** Comma and quotes, year first, a word where there is no reading. */
export const openAsWord =
  (start: string): Shape =>
  (firing) =>
    utf8(
      lines(firing, ['"No.","Time","Kiln deg C"'], (i, at) => {
        const { date, time } = clockAt(start, at);
        return `${i + 1},"${date} ${time}",${fixed(firing.readingC[i]!, 1, 'OPEN')}`;
      }),
    );

/** Semicolon and decimal point, elapsed seconds, two zones and the setpoint in °F. */
export const secondsInFahrenheit: Shape = (firing) =>
  utf8(
    lines(firing, ['# made-up kiln', 'seconds;upper °F;lower °F;setpoint °F'], (i, at) =>
      [
        fixed(at, 0),
        fixed(fahrenheit(firing.readingC[i]!), 1),
        fixed(fahrenheit(firing.zoneReadingsC[0]![i]!), 1),
        fixed(fahrenheit(firing.setpointC[i]!), 1),
      ].join(';'),
    ),
  );

/** Columns of blanks and no header at all: a clock and a number. */
export const bareColumns =
  (start: string): Shape =>
  (firing) =>
    utf8(
      lines(firing, [], (i, at) => {
        const { date, time } = clockAt(start, at);
        return `${date} ${time}  ${fixed(firing.readingC[i]!, 1).padStart(7)}`;
      }),
    );

/** A schedule as the JSON file of the contract. */
export const scheduleAsJson = (schedule: ScheduleFile): Uint8Array =>
  utf8(`${JSON.stringify(schedule, null, 2)}\n`);

/** A schedule as the CSV file of the contract; every segment must go at a rate. */
export const scheduleAsCsv = ({ unit, cone, segments }: ScheduleFile): Uint8Array =>
  utf8(
    [
      `# unit: ${unit}`,
      ...(cone === undefined ? [] : [`# cone: ${cone}`]),
      'rate_per_hour,target,hold_minutes',
      ...segments.map(
        ({ ratePerHour, target, holdMinutes = 0 }) => `${ratePerHour},${target},${holdMinutes}`,
      ),
      '',
    ].join('\n'),
  );
