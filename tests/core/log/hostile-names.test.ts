import { describe, expect, test } from 'vitest';
import { analyze } from '../../../core/analyze.ts';
import { readLog } from '../../../core/log/read-log.ts';
import { shapeOfFile } from '../../../core/log/rules.ts';
import { curveCsv, legsCsv } from '../../../core/report/csv.ts';
import { htmlReport } from '../../../core/report/html-report.ts';
import { textReport } from '../../../core/report/text-report.ts';
import { wording } from '../../../core/wording/wording.ts';
import { climb, utf8 } from './helpers.ts';

/** Names of object members, markup, formulas, and signs that a terminal or a page would obey. */
const NAMES = [
  ...['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'prototype', 'then'],
  ...['<img src=x onerror=alert(1)>', '"><script>alert(1)</script>', '</td></table>', '&lt;b&gt;'],
  ...['=HYPERLINK(1;2)', '+1+1', '-1+1', '@SUM(A1)', '=cmd|x!A0', '\u202eevil', '${1}', '%s%n'],
];

const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;
/** The kiln's column is among as many as have hostile names. */
const csvOf = (name: string): string =>
  [
    ['Time', 'Kiln °C', `${name} °C`, name].map(quoted).join(','),
    ...climb((c, row) => [c, c - 9, row % 2 === 0 ? name : 'x']).map((row) =>
      row.map((cell) => quoted(String(cell))).join(','),
    ),
    '',
  ].join('\n');
const longOf = (name: string): string =>
  [
    'time,channel,value',
    ...climb((c) => [c]).flatMap(([time, c]) => [
      `${time},kiln,${c}`,
      `${time},${quoted(name)},${Number(c) - 9}`,
    ]),
    '',
  ].join('\n');
const jsonOf = (name: string): string => {
  const records = climb((c) => [c]).map(([time, c]) => {
    const members = [
      ['time', JSON.stringify(time)],
      ['kiln °C', String(c)],
      [`${name} °C`, String(Number(c) - 9)],
      [name, '1'],
    ];
    return `{${members.map(([key, value]) => `${JSON.stringify(key)}:${value}`).join(',')}}`;
  });
  return `[${records.join(',\n')}]`;
};

describe.each(NAMES)('the name %j', (name) => {
  test.each([
    ['a table', csvOf(name)],
    ['a long table', longOf(name)],
    ['JSON', jsonOf(name)],
  ])('is data in %s', (_, text) => {
    const log = readLog(utf8(text), name);
    expect(log.source.fileName).toBe(name);
    expect(log.source.rowsKept).toBe(30);
    expect(log.celsius[0]).toBe(20);
    expect(log.zones.map(({ channel }) => channel.replace(/ °C$/, ''))).toContain(name);
    expect(shapeOfFile(utf8(text))).not.toBe('no table');
    expect(Object.keys(Object.prototype)).toEqual([]);
  });

  test('is data in every export', () => {
    const { document } = analyze(utf8(csvOf(name)), `${name}.csv`);
    const back = JSON.parse(JSON.stringify(document)) as typeof document;
    expect(back.source.channels.map((channel) => channel.name)).toContain(`${name} °C`);
    const page = htmlReport(document, 'C');
    expect(page).not.toMatch(/<(?:script|img|b)\b|onerror=alert\(1\)>|\u202e/);
    expect(page.match(/<table/g)?.length).toBe(page.match(/<\/table>/g)?.length);
    const text = textReport(wording(document, 'C'));
    // eslint-disable-next-line no-control-regex -- what a terminal would obey
    expect(text).not.toMatch(/\u202e|[\u0000-\u0009\u000b-\u001f]/);
    for (const csv of [curveCsv(document, 'C'), legsCsv(document, 'F')]) {
      for (const cell of csv.split(/[\r\n]+|,/)) {
        expect(cell).toMatch(/^"?(?:[^=+@-]|-\d+(?:\.\d+)?$|$)/);
      }
    }
  });
});
