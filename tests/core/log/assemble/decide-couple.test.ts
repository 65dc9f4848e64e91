import { describe, expect, test } from 'vitest';
import { readLog } from '../../../../core/log/read-log.ts';
import type { Log } from '../../../../core/model/log.ts';
import type { ReadingDecisions } from '../../../../core/model/options.ts';
import { climb, utf8 } from '../helpers.ts';
import { voltageOf } from '../voltages.ts';

const read = (lines: readonly string[], decisions: ReadingDecisions = {}): Log =>
  readLog(utf8([...lines, ''].join('\n')), 'x', decisions);
const saidOf = (log: Log, what: string): unknown[] => {
  const found = log.source.decisions.find((decision) => decision.what === what);
  return found === undefined ? [] : [found.choice, found.why];
};
/** Rows of a climb as type K gives it with its cold end at 30 °C, and the truth. */
const ROWS = climb((c) => [voltageOf(c, 'K', 30), 30]).map((row) => row.join(','));
const TRUTH = climb((c) => [c]).map((row) => Number(row[1]));
const offBy = (log: Log): number =>
  Math.max(...TRUTH.map((celsius, row) => Math.abs(celsius - log.celsius[row]!)));

describe('the couple type', () => {
  test('is as the person says, before all', () => {
    const log = read(['Time,Typ S (mV),CJ (°C)', ...ROWS], { coupleType: 'K' });
    expect(saidOf(log, 'couple-type')).toEqual(['K', 'given']);
    expect(offBy(log)).toBeLessThan(0.01);
  });

  test('is as the column or the lines above say', () => {
    const named = read(['Time,Type K (mV),CJ (°C)', ...ROWS]);
    expect(saidOf(named, 'couple-type')).toEqual(['K', 'header']);
    const above = read(['Thermoelement: Typ K', '', 'Time,Kiln (mV),CJ (°C)', ...ROWS]);
    expect(saidOf(above, 'couple-type')).toEqual(['K', 'preamble']);
    expect(offBy(above)).toBeLessThan(0.01);
    expect(above.source.channels.map(({ unit, role }) => [unit, role])).toEqual([
      ['mV', 'temperature'],
      ['C', 'cold-junction'],
    ]);
  });

  test('may be known of the kiln, where the file names none', () => {
    const lines = ['Time,Kiln (mV),CJ (°C)', ...ROWS, ''].join('\n');
    const log = readLog(utf8(lines), 'x', {}, { knownCouple: 'K' });
    expect(saidOf(log, 'couple-type')).toEqual(['K', 'given']);
    expect(offBy(log)).toBeLessThan(0.01);
    const named = readLog(utf8(lines.replace('Kiln', 'Type K')), 'x', {}, { knownCouple: 'S' });
    expect(saidOf(named, 'couple-type')).toEqual(['K', 'header']);
    // Degrees do not need it.
    const degrees = ['Time,Kiln (°C)', ...climb((c) => [c]).map((row) => row.join(',')), ''];
    const plain = readLog(utf8(degrees.join('\n')), 'x', {}, { knownCouple: 'S' });
    expect(plain.celsius[3]).toBe(TRUTH[3]);
  });

  test.each([
    ['a line for each channel', ['Ch1: type K', 'Ch2: type S']],
    ['a letter for each channel', ['Channel;Type', 'Ch1;K', 'Ch2;S']],
  ])('is that of its own channel: %s', (_, above) => {
    const rows = climb((c) => [voltageOf(c, 'K', 0), voltageOf(c - 5, 'S', 0)]);
    const log = read(
      [...above, '', 'Time;Ch1 (mV);Ch2 (mV)', ...rows.map((row) => row.join(';'))],
      { coldJunctionC: 0 },
    );
    expect(saidOf(log, 'couple-type')).toEqual(['K', 'preamble']);
    expect(offBy(log)).toBeLessThan(0.05);
    // The other channel by its own couple.
    const off = TRUTH.map((celsius, row) => Math.abs(celsius - 5 - log.zones[0]!.celsius[row]!));
    expect(Math.max(...off)).toBeLessThan(0.05);
  });

  test('is asked for where several are named for no channel', () => {
    expect(() => read(['Types: type K, type S', '', 'Time,Kiln (mV)', ...ROWS])).toThrow(
      /name several couples \(K, S\); give the couple type/,
    );
  });

  test('is asked for where nothing says it', () => {
    expect(() => read(['Time,Kiln (mV),CJ (°C)', ...ROWS])).toThrow(
      expect.objectContaining({
        code: 'no-temperature',
        message: expect.stringContaining('give the couple type') as string,
      }),
    );
  });

  test('has no use for degrees, and is refused there', () => {
    const degrees = climb((c) => [c]).map((row) => row.join(','));
    const lines = ['Time,Kiln (°C)', ...degrees];
    expect(() => read(lines, { coupleType: 'K' })).toThrow('degrees already; a couple type');
    expect(() => read(lines, { coldJunctionC: 20 })).toThrow('degrees already; a cold junction');
  });
});

describe('the cold junction', () => {
  const bare = ROWS.map((row) => row.slice(0, row.lastIndexOf(',')));
  const K = { coupleType: 'K' } as const;

  test('is assumed at 25 °C with a warning and little certainty', () => {
    const log = read(['Time,Kiln (mV)', ...bare], K);
    expect(saidOf(log, 'cold-junction')).toEqual(['25', 'nothing-decides']);
    expect(log.source.warnings).toContain('cold-junction-assumed');
    expect(log.source.decisions.find(({ what }) => what === 'cold-junction')!.certainty).toBe(0.3);
    // The cold end was 5 °C warmer than assumed.
    expect(offBy(log)).toBeGreaterThan(4);
  });

  test('is as the person or the file says', () => {
    const given = read(['Time,Kiln (mV)', ...bare], { ...K, coldJunctionC: 30 });
    expect(saidOf(given, 'cold-junction')).toEqual(['30', 'given']);
    const said = read(['Cold junction: 86 °F', '', 'Time,Kiln (mV)', ...bare], K);
    expect(saidOf(said, 'cold-junction')).toEqual(['30', 'preamble']);
    expect([offBy(given), offBy(said)].every((off) => off < 0.01)).toBe(true);
    expect(given.source.warnings).not.toContain('cold-junction-assumed');
  });

  test('is allowed for where the file says so, whatever column stands beside', () => {
    const rows = climb((c) => [voltageOf(c, 'K', 0), 30]).map((row) => row.join(','));
    const log = read(['CJC: on', '', 'Time,Kiln (mV),CJ (°C)', ...rows], K);
    expect(saidOf(log, 'cold-junction')).toEqual(['compensated', 'preamble']);
    expect(offBy(log)).toBeLessThan(0.01);
  });

  test('is one thing or the other', () => {
    const both = { ...K, coldJunctionC: 20, coldJunctionColumn: 'CJ (°C)' };
    expect(() => read(['Time,Kiln (mV),CJ (°C)', ...ROWS], both)).toThrow('give one of them');
  });
});

test('voltages that the couple cannot give are of another', () => {
  const rows = climb((c) => [voltageOf(c, 'K', 0)]).map((row) => row.join(','));
  const lines = ['Time,Kiln (mV)', ...rows];
  expect(() => read(lines, { coupleType: 'S' })).toThrow(
    expect.objectContaining({ code: 'bad-option' }),
  );
});

test('microvolts are read by their header', () => {
  const rows = climb((c) => [Math.round(1000 * Number(voltageOf(c, 'S', 0, 6)))]);
  const lines = ['Typ S, kompensiert', 'Zeit;Ofen (µV)', ...rows.map((row) => row.join(';'))];
  const log = read(lines);
  expect(saidOf(log, 'unit')).toEqual(['uV', 'header']);
  expect(offBy(log)).toBeLessThan(0.2);
});
