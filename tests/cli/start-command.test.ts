import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parseStart } from '../../cli/start-command.ts';

const HERE = resolve('here');

describe('the arguments of npm start', () => {
  it('are a log, its schedule, and where to open it', () => {
    expect(parseStart([], HERE)).toEqual({
      files: { logs: [], schedule: null },
      inBrowser: false,
    });
    expect(parseStart(['--browser', 'a.csv', '--schedule', 's.json'], HERE)).toEqual({
      files: { logs: [join(HERE, 'a.csv')], schedule: join(HERE, 's.json') },
      inBrowser: true,
    });
  });

  it.each([[['--nope']], [['--schedule']], [['--browser=yes']]])('are refused: %j', (args) => {
    const parsed = parseStart(args, HERE);
    if (!('print' in parsed)) throw new Error('it was taken');
    expect(parsed.status).toBe(2);
    expect(parsed.print).toMatch(/^\S.*\n\nnpm start -- /);
  });

  it('may ask for help', () => {
    expect(parseStart(['--help'], HERE)).toMatchObject({ status: 0 });
  });
});
