import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseCommand } from '../../cli/command.ts';
import { run } from './terminal.ts';

describe('wrong usage', () => {
  it.each([
    [[], /Usage: afterfire/],
    [['bogus'], /unknown command 'bogus'/],
    [['analyze'], /missing required argument 'log'/],
    [['inspect', 'a.csv', '--format', 'html'], /Allowed choices are text, json/],
    [['analyze', 'a.csv', '--unit', 'K'], /Allowed choices are C, F/],
    [['analyze', 'a.csv', '--colour', 'red'], /unknown option '--colour'/],
    [['inspect', 'a.csv', '--reading-unit', 'R'], /Allowed choices are C, F, K/],
    [['inspect', 'a.csv', '--delimiter', 'and'], /one of comma, semicolon, tab/],
    [['inspect', 'a.csv', '--delimiter', '7'], /one of comma, semicolon, tab/],
    [['inspect', 'a.csv', '--interval-seconds', '0'], /a number of seconds above 0/],
    [['inspect', 'a.csv', '--first-date', '14.03.2024'], /a date such as 2024-03-14/],
    [['inspect', 'a.csv', '--firing', '0'], /a whole number above 0/],
    [['inspect', 'a.csv', '--interval-seconds', 'ten'], /a number of seconds above 0/],
    [['inspect', 'a.csv', '--day-order', 'us'], /Allowed choices are day-first, month-first/],
    [['analyze', 'a.csv', 'b.csv', '--format', 'html'], /say with --out DIR/],
  ])('%j ends with 2 and says why on standard error', async (args, why) => {
    const { status, out, error } = await run(...args);
    expect([status, out]).toEqual([2, '']);
    expect(error).toMatch(why);
  });
});

describe('questions about the program', () => {
  it.each([['--help'], ['--version'], ['analyze', '--help']])(
    '%s are answered',
    async (...args) => {
      const { status, out, error } = await run(...args);
      expect([status, error]).toEqual([0, '']);
      expect(out.length).toBeGreaterThan(3);
    },
  );
});

it('the version is the package’s', async () => {
  const file = new URL('../../package.json', import.meta.url);
  const { version } = JSON.parse(readFileSync(file, 'utf8')) as { version: string };
  expect((await run('--version')).out.trim()).toBe(version);
});

describe('the arguments', () => {
  it('are read with their defaults', () => {
    expect(parseCommand(['analyze', 'a.csv', 'b.csv', '--schedule', 's.json'])).toEqual({
      asked: {
        command: 'analyze',
        logs: ['a.csv', 'b.csv'],
        schedule: 's.json',
        cone: null,
        joined: null,
        format: 'text',
        out: null,
        unit: 'C',
        reading: {},
        readingFile: null,
      },
    });
  });

  it('take options before the logs as well', () => {
    const parsed = parseCommand(['analyze', '--cone', '05.5', '--unit', 'F', 'a.csv']);
    expect(parsed).toMatchObject({ asked: { cone: '05.5', unit: 'F', logs: ['a.csv'] } });
  });
});
