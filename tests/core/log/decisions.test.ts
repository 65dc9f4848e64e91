import { describe, expect, test } from 'vitest';
import { readLog } from '../../../core/log/read-log.ts';
import type { Log } from '../../../core/model/log.ts';
import type { ReadingDecisions } from '../../../core/model/options.ts';
import { climb, utf8 } from './helpers.ts';

const ROWS = climb((c, row) => [c, c + 3, row, c - 8]).map((row) => row.join(','));
const TEXT = ['Time,A,B,C,D', ...ROWS, ''].join('\n');
const MARKED = TEXT.replace(/^(.*:10:00,)[\d.]+/gm, '$1kaputt').replace(
  /(09:20:00,)[\d.]+/,
  '$17777',
);
const LONG = [
  'time,channel,value',
  ...climb((c, row) => [c, c + 3, row]).flatMap(([time, kiln, asked, output]) => [
    ...[`${time},one,${kiln}`, `${time},two,${asked}`, `${time},three,${output}`],
  ]),
  '',
].join('\n');

/** Read on both paths, which must agree. */
const read = (text: string, decisions: ReadingDecisions): Log => {
  const log = readLog(utf8(text), 'x', decisions);
  expect(readLog(utf8(text), 'x', decisions, { isCareful: true })).toEqual(log);
  return log;
};
const givenOf = (log: Log): Record<string, string> =>
  Object.fromEntries(
    log.source.decisions.filter(({ why }) => why === 'given').map((d) => [d.what, d.choice]),
  );

describe('what the person decides stands in the account as given', () => {
  test('roles of columns', () => {
    const log = read(TEXT, {
      ...{ temperatureColumn: 'A', setpointColumn: 'B', outputColumn: '4', zoneColumns: ['D'] },
    });
    expect(givenOf(log)).toEqual({
      ...{ 'temperature-column': 'A', 'setpoint-column': 'B', 'output-column': 'C' },
      'zone-columns': 'D',
    });
    expect(log.setpointC![9]).toBeCloseTo(log.celsius[9]! + 3, 9);
    expect(log.outputPercent![9]).toBe(9);
    expect(log.zones.map(({ channel }) => channel)).toEqual(['D']);
  });

  test('that there are none', () => {
    const named = TEXT.replace('A,B,C,D', 'Kiln °C,Setpoint °C,Output %,Shelf °C');
    expect(read(named, {}).zones).toHaveLength(1);
    const log = read(named, { setpointColumn: null, outputColumn: null, zoneColumns: [] });
    expect([log.setpointC, log.outputPercent, log.zones]).toEqual([null, null, []]);
    expect(givenOf(log)).toEqual({
      ...{ 'setpoint-column': 'none', 'output-column': 'none', 'zone-columns': 'none' },
    });
  });

  test('columns without a name, as the account lists them', () => {
    const bare = [...ROWS, ''].join('\n');
    const log = read(bare, { temperatureColumn: 'column 2', zoneColumns: ['column 5'] });
    expect(log.source.channels.map(({ name }) => name)).toContain('column 5');
    expect(log.zones.map(({ channel }) => channel)).toEqual(['column 5']);
  });

  test('channels of a long table', () => {
    const log = read(LONG, {
      ...{ temperatureColumn: 'one', setpointColumn: 'two', outputColumn: 'three' },
      zoneColumns: [],
    });
    expect(givenOf(log)).toMatchObject({ series: 'one', 'setpoint-column': 'two' });
    expect(log.setpointC![9]).toBeCloseTo(log.celsius[9]! + 3, 9);
    expect(log.outputPercent![9]).toBe(9);
    const two = read(LONG, { temperatureColumn: 'two', zoneColumns: ['one'] });
    expect(two.zones[0]!.celsius[9]).toBeCloseTo(two.celsius[9]! - 3, 9);
  });

  test('marks for no reading, words and numbers', () => {
    const log = read(MARKED, { temperatureColumn: 'A', noReadingMarks: ['KAPUTT', '7777.0'] });
    expect(log.source.rejected.map(({ reason }) => reason)).toEqual(
      log.source.rejected.map(() => 'no-reading'),
    );
    expect(log.noReadingSeconds.length).toBeGreaterThan(3);
    expect(Math.max(...log.celsius)).toBeLessThan(1000);
    expect(givenOf(log)['no-reading-marks']).toContain('KAPUTT, 7777.0');
  });

  test('what bare numbers count', () => {
    const numbers = climb((c) => [c]).map(([, c], row) => `${row * 10},${c}`);
    const log = read(['t,Kiln', ...numbers, ''].join('\n'), { timeUnit: 's' });
    expect(log.atSeconds.at(-1)).toBe(290);
    expect(givenOf(log)).toMatchObject({ 'time-unit': 's' });
    expect(log.source.warnings).not.toContain('time-unit-assumed');
  });

  test('the encoding', () => {
    expect(givenOf(read(TEXT, { encoding: 'latin1' }))).toEqual({ encoding: 'windows-1252' });
  });
});

describe('what does not suit is refused with what is there', () => {
  test.each([
    [TEXT, { setpointColumn: 'Soll' }, 'there is no column “Soll”; the columns are “Time”, “A”'],
    [TEXT, { outputColumn: 'A' }, 'no output in percent'],
    [TEXT, { zoneColumns: ['A', 'A'] }, 'it is a zone already'],
    [TEXT, { timeUnit: 's' }, 'the times are dates or clocks'],
    [TEXT, { coupleType: 'K' }, 'degrees already'],
    [LONG, { setpointColumn: 'nine' }, 'there is no column “nine”'],
    [LONG, { temperatureColumn: 'one', setpointColumn: 'one' }, 'is the main one'],
  ] as [string, ReadingDecisions, string][])('%#: %j', (text, decisions, why) => {
    expect(() => readLog(utf8(text), 'x', decisions)).toThrow(
      expect.objectContaining({
        code: 'bad-option',
        message: expect.stringContaining(why) as string,
      }),
    );
  });
});
