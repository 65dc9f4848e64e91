import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readLog } from '../../../../core/log/read-log.ts';
import { showReading } from '../../../../core/log/show/show-reading.ts';
import type { ReadingShown } from '../../../../core/log/show/shown.ts';
import { Refusal } from '../../../../core/model/refusal.ts';
import { utf8 } from '../helpers.ts';

const FIXTURES = join(import.meta.dirname, '../../../fixtures/logs');
const fixtures = readdirSync(FIXTURES).filter(
  (name) => !/\.(md|json)$/.test(name) && statSync(join(FIXTURES, name)).isFile(),
);

const shownOf = (text: string): ReadingShown => showReading(utf8(text), 'log').shown;
const fateOn = ({ lines }: ReadingShown, wanted: number) =>
  lines.find(({ line }) => line === wanted)?.fate;

const ROWS = Array.from(
  { length: 30 },
  (_, i) => `2026-03-01 10:${String(i).padStart(2, '0')}:00;${20 + 15 * i},5;${i}`,
);

describe('a log that is read', () => {
  const lines = ['Kiln 3', '', 'Zeit;Ofen [°C];Nr', ...ROWS, '', '# end'];
  lines[10] = '2026-03-01 10:07:00;Tür auf;7';
  const shown = shownOf(lines.join('\n'));

  test('shows every line with what became of it', () => {
    expect(shown.lineCount).toBe(lines.length);
    expect(shown.lines.map(({ text }) => text)).toEqual(lines);
    expect(fateOn(shown, 1)).toEqual({ kind: 'above' });
    expect(fateOn(shown, 2)).toEqual({ kind: 'aside', what: 'blank' });
    expect(fateOn(shown, 3)).toEqual({ kind: 'names' });
    expect(fateOn(shown, 4)).toEqual({ kind: 'kept', atSeconds: 0, celsius: 20.5 });
    expect(fateOn(shown, 5)).toEqual({ kind: 'kept', atSeconds: 60, celsius: 35.5 });
    expect(fateOn(shown, 11)).toEqual({ kind: 'rejected', reason: 'event' });
    expect(fateOn(shown, lines.length)).toEqual({ kind: 'aside', what: 'comment' });
  });

  test('shows the columns with cells and roles, and every decision', () => {
    expect(shown.columns.map(({ name, role }) => [name, role])).toEqual([
      ['Zeit', 'time'],
      ['Ofen [°C]', 'temperature'],
      ['Nr', null],
    ]);
    expect(shown.columns[1]!.cells).toEqual(['20,5', '35,5', '50,5']);
    expect(shown.decisions.map(({ what }) => what)).toContain('delimiter');
  });
});

describe('a log that is refused', () => {
  test('shows its lines and columns as far as they were understood', () => {
    // A setpoint alone is no measured temperature.
    const text = `Zeit;Sollwert\n${ROWS.map((row) => row.replace(/;\d+$/, '')).join('\n')}`;
    const { shown, log } = showReading(utf8(text), 'log');
    expect(log).toBeInstanceOf(Refusal);
    expect(shown.lineCount).toBe(31);
    expect(shown.columns.map(({ name }) => name)).toEqual(['Zeit', 'Sollwert']);
    expect(fateOn(shown, 1)).toEqual({ kind: 'names' });
    expect(fateOn(shown, 2)).toEqual({ kind: 'unread' });
  });

  test('shows lines without a table where there is none, and nothing where there is no text', () => {
    const prose = showReading(utf8('Dear all,\nthe kiln is broken.\n'), 'log');
    expect(prose.log).toBeInstanceOf(Refusal);
    expect(prose.shown.lines.map(({ fate }) => fate.kind)).toEqual(['unread', 'unread']);
    expect(prose.shown.columns).toEqual([]);
    expect(showReading(Uint8Array.of(0, 1, 2, 3, 0, 1), 'log').shown.lines).toEqual([]);
  });
});

test('records of JSON on one line are rows of their own', () => {
  const records = Array.from({ length: 10 }, (_, i) => ({
    at: `2026-03-01T10:0${i}:00`,
    celsius: i === 4 ? null : 20 + 20 * i,
  }));
  const { lines, columns } = shownOf(JSON.stringify(records));
  expect(lines).toHaveLength(10);
  expect(lines[4]!.fate).toEqual({ kind: 'rejected', reason: 'no-reading' });
  expect(lines[5]).toMatchObject({ line: 1, fate: { kind: 'kept', atSeconds: 300, celsius: 120 } });
  expect(columns.map(({ role }) => role)).toEqual(['time', 'temperature']);
});

test('of a long log the first and the last lines are shown, and the lines about a rejected row', () => {
  const long = Array.from({ length: 5000 }, (_, i) => `${i * 10},${20 + i * 0.2}`);
  long[2499] = '24990,???';
  const { lines, lineCount } = shownOf(`seconds,celsius\n${long.join('\n')}\n`);
  expect(lineCount).toBe(5001);
  expect(lines).toHaveLength(120 + 5 + 40);
  expect(lines.map(({ line }) => line).slice(119, 126)).toEqual([
    120, 2499, 2500, 2501, 2502, 2503, 4962,
  ]);
});

describe('the reader’s fixtures', () => {
  test('are read as without being shown, and lines agree with the account', () => {
    expect(fixtures.length).toBeGreaterThan(60);
    for (const name of fixtures) {
      const bytes = new Uint8Array(readFileSync(join(FIXTURES, name)));
      const { shown, log } = showReading(bytes, name);
      if (log instanceof Refusal) {
        expect(() => readLog(bytes, name), name).toThrow(Refusal);
        continue;
      }
      const { source, line, celsius } = readLog(bytes, name);
      expect(log.source, name).toEqual(source);
      const listed = new Map(source.rejected.map((row) => [row.line, row.reason]));
      if (source.format !== 'delimited') continue;
      for (const { line: number, fate } of shown.lines) {
        if (fate.kind === 'kept') expect(celsius[line.indexOf(number)], name).toBe(fate.celsius);
        if (fate.kind === 'rejected') expect(listed.get(number), name).toBe(fate.reason);
        else expect(listed.has(number), `${name} ${number}`).toBe(false);
      }
    }
  });
});
