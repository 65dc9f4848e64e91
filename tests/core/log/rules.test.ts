import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readDecisions, ruleFor, shapeOfFile } from '../../../core/log/rules.ts';
import { climb, utf8 } from './helpers.ts';

const csv = (header: string, delimiter: string, count: number, warmer = 0): Uint8Array =>
  utf8(
    [
      ...(header === '' ? [] : [header]),
      ...climb((c) => [c + warmer, c - 9], count).map((row) => row.join(delimiter)),
      '',
    ].join('\n'),
  );

describe('the shape of a file', () => {
  test('is the same for other readings, other lengths and other serial numbers', () => {
    const shape = shapeOfFile(csv('Time;Kiln °C (S/N 1234567);Shelf', ';', 30));
    expect(shape).toBe('delimited ; 3: time | kiln °c (s/n #) | shelf');
    expect(shapeOfFile(csv('time;kiln °C (S/N 99887);SHELF ', ';', 200, 40))).toBe(shape);
  });

  test('differs with the names, their number and the delimiter', () => {
    const shapes = [
      csv('Time,Kiln,Shelf', ',', 30),
      csv('Time;Kiln;Shelf', ';', 30),
      csv('Time,Kiln,Floor', ',', 30),
      csv('', ',', 30),
    ].map((bytes) => shapeOfFile(bytes));
    expect(new Set(shapes).size).toBe(4);
    expect(shapes[3]).toBe('delimited , 3: (stamp) | (number) | (number)');
  });

  test('is that of its keys for JSON', () => {
    const rows = (count: number) =>
      utf8(JSON.stringify(climb((c) => [c], count).map(([time, kiln]) => ({ time, kiln }))));
    expect(shapeOfFile(rows(9))).toBe('json  2: time | kiln');
    expect(shapeOfFile(rows(90))).toBe('json  2: time | kiln');
  });

  test('stays short, and still differs, where names are long', () => {
    const long = (last: string) =>
      csv(`Time,${'kiln '.repeat(20)},${'x'.repeat(110)}${last}`, ',', 30);
    const [one, other] = [shapeOfFile(long('a')), shapeOfFile(long('b'))];
    expect(one).not.toBe(other);
    expect(one.length).toBeLessThan(260);
  });

  test('can be had of every fixture', () => {
    const folder = new URL('../../fixtures/logs/', import.meta.url);
    const files = readdirSync(folder).filter((name) => !/README|truth/.test(name));
    const shapes = files.map((name) =>
      shapeOfFile(new Uint8Array(readFileSync(new URL(name, folder)))),
    );
    expect(shapes.length).toBeGreaterThan(80);
    expect(shapes.filter((shape) => shape === 'no table').length).toBe(0);
  });

  test('a text without a table has none to tell by', () => {
    expect(shapeOfFile(utf8('Dear potter,\nno log today.\n'))).toBe('no table');
  });
});

test('the rule for a shape is the last that was made', () => {
  const rule = (name: string, shape: string) => ({ name, shape, decisions: {} });
  const rules = [rule('a', 'x'), rule('b', 'y'), rule('c', 'x')];
  expect(ruleFor(rules, 'x')?.name).toBe('c');
  expect(ruleFor(rules, 'z')).toBeNull();
});

describe('a file of decisions', () => {
  test('is decisions, or a rule', () => {
    expect(readDecisions('\ufeff{ "unit": "F", "setpointColumn": null }')).toEqual({
      ...{ unit: 'F', setpointColumn: null },
    });
    expect(readDecisions('{"name":"n","shape":"s","decisions":{"unit":"K"}}')).toEqual({
      unit: 'K',
    });
  });

  test.each([
    ['unit: F', 'it is no JSON'],
    ['[]', 'it holds no decisions'],
    ['null', 'it holds no decisions'],
    ['{"units":"F"}', 'there is no decision “units”; there are encoding, delimiter'],
    ['{"unit":"R"}', '“unit” is one of C, F, K, mV, uV'],
    ['{"headerLine":"three"}', '“headerLine” does not fit'],
    ['{"name":"n","decisions":{"unit":"K"}}', '“shape” does not fit'],
    ['{"name":"n","shape":"s","decisions":{"zones":[]}}', 'there is no decision “zones”'],
  ])('%s is refused', (text, why) => {
    expect(() => readDecisions(text)).toThrow(
      expect.objectContaining({
        code: 'bad-option',
        message: expect.stringContaining(why) as string,
      }),
    );
  });
});
