import { describe, expect, test } from 'vitest';
import { readLog } from '../../../../core/log/read-log.ts';
import type { ReadingDecisions } from '../../../../core/model/options.ts';

const two = (value: number): string => String(value).padStart(2, '0');
/** A log of clocks every half hour from a time of day on, under some lines. */
const clocks = (above: string, fromHour: number, mark = ','): string => {
  const rows = Array.from({ length: 40 }, (_, i) => {
    const minutes = (fromHour * 60 + i * 30) % 1440;
    return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}:00${mark}${20 + i * 25}`;
  });
  return `${above}Time${mark}Temp °C\n${rows.join('\n')}\n`;
};
const read = (text: string, decisions: ReadingDecisions = {}) =>
  readLog(new TextEncoder().encode(text), 'x', decisions);
const choice = (log: ReturnType<typeof read>, what: string) =>
  log.source.decisions.find((decision) => decision.what === what);

describe('a date above a column of clocks', () => {
  test.each([
    ['Date: 14/03/2024\n', 18, '2024-03-14T18:00:00'],
    ['Firing of 2024-03-14\nKiln: 2\n', 6, '2024-03-14T06:00:00'],
    ['Start: 14.03.2024 17:58\n', 18, '2024-03-14T18:00:00'],
    ['Start: 14.03.2024 23:58\n', 1, '2024-03-15T01:00:00'],
    ['Calibrated: 01.02.2023\nStart: 14.03.2024\nExported: 20.03.2024\n', 6, '2024-03-14T06:00:00'],
    ['Calibrated: 01.02.2023\nDate: 14.03.2024\n', 6, '2024-03-14T06:00:00'],
  ])('%j is that of the first row', (above, hour, startInstant) => {
    const log = read(clocks(above, hour));
    expect(log.startInstant).toBe(startInstant);
    expect(log.source.time.kind).toBe('instant');
    expect(log.atSeconds.at(-1)).toBe(39 * 1800);
    expect(choice(log, 'first-date')).toMatchObject({ why: 'preamble' });
    expect(log.source.warnings).not.toContain('no-date');
  });

  test('of two that could be meant neither is taken', () => {
    const log = read(clocks('Loaded: 13.03.2024\nChecked: 14.03.2024\n', 6));
    expect([log.startInstant, choice(log, 'first-date')]).toEqual([null, undefined]);
  });

  test('whose day could be the month is asked about', () => {
    const log = read(clocks('Date: 03/04/2024\n', 6));
    expect(choice(log, 'day-order')!.certainty).toBeLessThan(0.6);
    expect(log.source.warnings).toContain('day-order-assumed');
    const told = read(clocks('Date: 03/04/2024\n', 6), { dayOrder: 'month-first' });
    expect(told.startInstant).toBe('2024-03-04T06:00:00');
  });

  test('gives way to what the person says', () => {
    const log = read(clocks('Date: 14/03/2024\n', 6), { firstDate: '2024-02-29' });
    expect(log.startInstant).toBe('2024-02-29T06:00:00');
    expect(choice(log, 'first-date')).toMatchObject({ choice: '2024-02-29', why: 'given' });
  });
});

describe('times elapsed under a start', () => {
  const rows = Array.from({ length: 30 }, (_, i) => `${i * 10},${20 + i * 20}`).join('\n');

  test('have an instant, and stay elapsed', () => {
    const log = read(`Start time: 2024-03-14 14:05:00\nMinutes,Temp °C\n${rows}\n`);
    expect([log.startInstant, log.source.time.kind]).toEqual(['2024-03-14T14:05:00', 'elapsed']);
  });

  test('written as a clock from 0 are not taken for the time of day', () => {
    const log = read(clocks('Start: 14.03.2024 17:30\n', 0));
    expect([log.startInstant, log.source.time.kind]).toEqual(['2024-03-14T17:30:00', 'elapsed']);
  });

  test('under a date without a clock begin nobody knows when', () => {
    expect(read(`Date: 2024-03-14\nMinutes,Temp °C\n${rows}\n`).startInstant).toBeNull();
    expect(read(clocks('Date: 2024-03-14\n', 0)).startInstant).toBeNull();
  });
});

describe('a zone that the person gives', () => {
  const autumn = Array.from({ length: 40 }, (_, i) => {
    const at = new Date(Date.UTC(2024, 9, 26, 20) + i * 1_800_000);
    const wall = new Date(at.getTime() + (at.getTime() < Date.UTC(2024, 9, 27, 1) ? 7.2e6 : 3.6e6));
    return `${wall.toISOString().slice(0, 19).replace('T', ' ')},${20 + i * 25}`;
  });
  const text = `Time,Temp °C\n${autumn.join('\n')}\n`;

  test('tells the hour that comes twice', () => {
    const log = read(text, { timeZone: 'Europe/Berlin' });
    expect(log.startInstant).toBe('2024-10-26T22:00:00+02:00');
    expect([...log.atSeconds]).toEqual(autumn.map((_, i) => i * 1800));
    expect(choice(log, 'time-zone')).toMatchObject({ choice: 'Europe/Berlin', why: 'given' });
  });

  test('changes nothing where the stamps have offsets of their own', () => {
    const own = text.replace(/(\d),/g, '$1+05:00,');
    const log = read(own, { timeZone: 'Europe/Berlin' });
    expect(log.startInstant).toBe('2024-10-26T22:00:00+05:00');
    expect(choice(log, 'time-zone')).toBeUndefined();
  });

  test('goes with clocks whose day is given', () => {
    const log = read(clocks('', 6), { firstDate: '2024-07-01', timeZone: 'America/New_York' });
    expect(log.startInstant).toBe('2024-07-01T06:00:00-04:00');
  });

  test('is refused by name where it is none', () => {
    expect(() => read(text, { timeZone: 'Kiln/Shed' })).toThrow(/“Kiln\/Shed” is no time zone/);
  });
});
