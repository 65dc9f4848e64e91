import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseCommand } from '../../cli/command.ts';
import { zReadingDecisions } from '../../core/model/options.ts';
import type { Source } from '../../core/model/source.ts';
import type { TraceSummary } from '../../core/model/trace.ts';
import { inFolder, run, written } from './terminal.ts';

interface Inspected {
  readonly source: Source;
  readonly trace: TraceSummary;
}

/** How a log was read under some options. */
const readOf = async (content: string, ...options: string[]): Promise<Inspected> => {
  const inspected: Inspected[] = [];
  await inFolder(async (folder) => {
    const log = written(folder, 'log.csv', content);
    const { out, error } = await run('inspect', log, '--format', 'json', ...options);
    expect(error).toBe('');
    inspected.push(JSON.parse(out) as Inspected);
  });
  return inspected[0]!;
};

const sourceOf = async (content: string, ...options: string[]): Promise<Source> =>
  (await readOf(content, ...options)).source;

const choice = (source: Source, what: string) => {
  const { choice: chosen, why } = source.decisions.find((decision) => decision.what === what)!;
  return [chosen, why];
};

const rows = (count: number, row: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => row(i)).join('\n');

describe('the options on reading', () => {
  it('are the decisions of the same name', () => {
    const parsed = parseCommand([
      ...['inspect', 'a.csv', '--time-column', 'day', '--time-column', 'clock'],
      ...['--temperature-column', 'top', '--reading-unit', 'F', '--delimiter', 'tab'],
      ...['--decimal-mark', ',', '--day-order', 'month-first', '--interval-seconds', '2.5'],
      ...['--firing', '2', '--encoding', 'latin1', '--header-line', '3', '--time-unit', 'min'],
      ...['--time-from', 'elapsed', '--time-zone', 'Europe/Berlin', '--first-date', '2026-01-31'],
      ...['--setpoint-column', 'sp', '--output-column', 'none', '--zone-column', 'a'],
      ...['--zone-column', 'b', '--couple-type', 'S', '--cold-junction-column', 'cj'],
      ...['--cold-junction-c', '24.5', '--missing-mark', 'kaputt', '--missing-mark', '1372'],
    ]);
    const { reading } = (parsed as { asked: { reading: unknown } }).asked;
    expect(zReadingDecisions.parse(reading)).toEqual({
      timeColumns: ['day', 'clock'],
      temperatureColumn: 'top',
      unit: 'F',
      delimiter: '\t',
      decimalMark: ',',
      dayOrder: 'month-first',
      intervalSeconds: 2.5,
      firing: 2,
      ...{ encoding: 'latin1', headerLine: 3, timeUnit: 'min', timeFrom: 'elapsed' },
      ...{ timeZone: 'Europe/Berlin', firstDate: '2026-01-31', setpointColumn: 'sp' },
      ...{ outputColumn: null, zoneColumns: ['a', 'b'], coupleType: 'S' },
      ...{ coldJunctionColumn: 'cj', coldJunctionC: 24.5, noReadingMarks: ['kaputt', '1372'] },
    });
    expect(Object.keys(reading as object).sort()).toEqual(
      Object.keys(zReadingDecisions.shape).sort(),
    );
  });

  it('say none where a column is not there', () => {
    const parsed = parseCommand([
      ...['inspect', 'a.csv', '--zone-column', 'none', '--header-line', 'none'],
      ...['--setpoint-column', 'none'],
    ]);
    const { reading } = (parsed as { asked: { reading: unknown } }).asked;
    expect(reading).toEqual({ zoneColumns: [], headerLine: null, setpointColumn: null });
  });

  it.each([
    ['--first-date', '31.01.2026', 'a date such as'],
    ['--cold-junction-c', 'warm', 'a temperature in °C'],
    ['--header-line', '0', 'a whole number above 0'],
    ['--couple-type', 'X', 'Allowed choices are'],
  ])('refuse %s %s', (option, value, why) => {
    expect(parseCommand(['inspect', 'a.csv', option, value])).toMatchObject({
      status: 2,
      print: expect.stringContaining(why) as string,
    });
  });

  it('stand in a file too, and override it', async () => {
    const log = `time,a,b\n${rows(9, (i) => `2026-01-02 10:0${i}:00,${100 + i * 9},${90 + i * 9}`)}\n`;
    await inFolder(async (folder) => {
      const path = written(folder, 'log.csv', log);
      const rule = { name: 'mine', shape: 'any', decisions: { temperatureColumn: 'b', unit: 'F' } };
      const file = written(folder, 'mine.json', JSON.stringify(rule));
      const json = ['inspect', path, '--format', 'json', '--reading', file];
      const { out } = await run(...json, '--reading-unit', 'K');
      const { source, shape } = JSON.parse(out) as Inspected & { shape: string };
      expect(choice(source, 'temperature-column')).toEqual(['b', 'given']);
      expect(choice(source, 'unit')).toEqual(['K', 'given']);
      expect(shape).toBe('delimited , 3: time | a | b');
      const wrong = written(folder, 'wrong.json', '{ "units": "F" }');
      const refused = await run('inspect', path, '--reading', wrong);
      expect(refused.status).toBe(1);
      expect(refused.error).toContain('there is no decision “units”; there are encoding');
      const missing = await run('inspect', path, '--reading', `${folder}/none.json`);
      expect(missing.error).toContain('there is no such file');
    });
  });

  it('choose one of several firings, which are listed', async () => {
    const heats = [1000, 1220].flatMap((peakC) => [
      ...Array.from({ length: 60 }, (_, i) => 20 + ((peakC - 20) * i) / 60),
      ...Array.from({ length: 90 }, (_, i) => peakC - ((peakC - 25) * i) / 90),
    ]);
    const log = `minutes,kiln °C\n${rows(300, (i) => `${i * 10},${heats[i]!.toFixed(1)}`)}\n`;
    const [hottest, first] = [await readOf(log), await readOf(log, '--firing', '1')];
    expect([hottest, first].map(({ trace }) => Math.round(trace.peakC))).toEqual([1220, 1000]);
    expect(first.source.firings).toHaveLength(2);
    expect(choice(first.source, 'firing')).toEqual(['1 of 2', 'given']);
    await inFolder(async (folder) => {
      const path = written(folder, 'log.csv', log);
      const { out } = await run('inspect', path);
      expect(out.replace(/\s+/g, ' ')).toMatch(
        /Firing 2 of 2 begins .* peaks at 1220 °C: the one analysed here/,
      );
      const refused = await run('inspect', path, '--firing', '3');
      expect(refused.error).toContain('the log holds 2 firings; there is no firing 3 in it');
    });
  });

  it('choose among columns and set the unit', async () => {
    const log = `day,clock,top,middle\n${rows(9, (i) => `2026-01-02,10:0${i}:00,${100 + i * 9},${90 + i * 9}`)}\n`;
    const given = await sourceOf(
      log,
      ...['--time-column', 'day', '--time-column', 'clock'],
      ...['--temperature-column', 'middle', '--reading-unit', 'K'],
    );
    expect(choice(given, 'temperature-column')).toEqual(['middle', 'given']);
    expect(choice(given, 'unit')).toEqual(['K', 'given']);
    expect(given.time.columns).toEqual(['day', 'clock']);
  });

  it('settle what the rows leave open: the order of day and month', async () => {
    const log = `time,kiln °C\n${rows(3, (i) => `0${i + 1}/02/2026 10:00,${100 + i * 9}`)}\n`;
    const daysWith = async (order: string): Promise<number> =>
      (await readOf(log, '--day-order', order)).trace.durationSeconds / 86_400;
    // By the calendar: 1 to 3 February, or 2 January to 2 March of a common year.
    expect([await daysWith('day-first'), await daysWith('month-first')]).toEqual([2, 59]);
  });

  it('set how the columns are parted and the decimals marked', async () => {
    const log = `minutes;kiln °C\n${rows(9, (i) => `${i};${100 + i * 9},5`)}\n`;
    const source = await sourceOf(log, '--delimiter', 'semicolon', '--decimal-mark', ',');
    expect(choice(source, 'delimiter')).toEqual([';', 'given']);
    expect(choice(source, 'decimal-mark')).toEqual([',', 'given']);
    expect(source.rowsKept).toBe(9);
  });

  it('are what a refusal for want of times points at, and they answer it', async () => {
    await inFolder(async (folder) => {
      const celsius = rows(40, (i) => `${(20.5 + i * 7.3 + (i % 3)).toFixed(1)},${19 + (i % 2)}`);
      const log = written(folder, 'log.csv', `kiln °C,room °C\n${celsius}\n`);
      const refused = await run('analyze', log);
      expect(refused.status).toBe(1);
      expect(refused.error).toContain(
        '(--time-column NAME, or --interval-seconds N if the rows came N seconds apart)',
      );
      const { status, out } = await run(
        'inspect',
        log,
        '--interval-seconds',
        '30',
        '--format',
        'json',
      );
      expect(status).toBe(0);
      const { trace } = JSON.parse(out) as Inspected;
      expect(trace.durationSeconds).toBe(39 * 30);
      expect((await run('analyze', log, '--interval-seconds', '30')).status).toBe(0);
    });
  });

  it('refuse a column that is not there, naming those that are', async () => {
    await inFolder(async (folder) => {
      const log = written(folder, 'log.csv', `time,kiln °C\n${rows(9, (i) => `${i},${20 + i}`)}\n`);
      const { status, error } = await run('analyze', log, '--temperature-column', 'top');
      expect(status).toBe(1);
      expect(error).toMatch(/there is no column “top”; the columns are .*kiln/);
    });
  });

  it('stand in the help of both commands and in the README', async () => {
    const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
    const options = [
      ...['--time-column', '--temperature-column', '--reading-unit', '--delimiter'],
      ...['--decimal-mark', '--day-order', '--interval-seconds', '--firing'],
      ...['--reading', '--encoding', '--header-line', '--time-unit', '--time-from'],
      ...['--time-zone', '--first-date', '--setpoint-column', '--output-column', '--zone-column'],
      ...['--couple-type', '--cold-junction-column', '--cold-junction-c', '--missing-mark'],
    ];
    for (const command of ['inspect', 'analyze']) {
      const { out } = await run(command, '--help');
      for (const option of options) expect(out).toContain(option);
    }
    for (const option of options) expect(readme).toContain(option);
  });
});
