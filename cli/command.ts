import { Command, CommanderError, Option } from 'commander';
import type { ReadingDecisions } from '../core/model/options.ts';
import type { TemperatureUnit } from '../core/units.ts';
import { readingGiven, withReadingOptions, type GivenReading } from './reading-options.ts';

export type Format = 'text' | 'json' | 'html';

/** What the person asked for. */
export interface Asked {
  readonly command: 'inspect' | 'analyze' | 'trend';
  readonly logs: readonly string[];
  readonly schedule: string | null;
  /** The log of a second run of the same load. */
  readonly joined: string | null;
  readonly cone: string | null;
  readonly format: Format;
  readonly out: string | null;
  readonly unit: TemperatureUnit;
  /** How the logs are to be read, where the person says so. */
  readonly reading: ReadingDecisions;
  /** A file with more of that, which the options override. */
  readonly readingFile: string | null;
}

/** The question, or what to print instead: help, the version, or what was wrong with the usage. */
export type Parsed = { readonly asked: Asked } | { readonly print: string; readonly status: 0 | 2 };

interface Given extends GivenReading {
  readonly schedule?: string;
  readonly joined?: string;
  readonly cone?: string;
  readonly format: Format;
  readonly out?: string;
  readonly unit?: TemperatureUnit;
}

const VERSION = '0.1.0';
const SEVERAL_PAGES =
  'several logs make several HTML reports: say with --out DIR where they are to be written\n';

const ONE_LOAD = '--joined takes the second log of one load: name one log besides it\n';

const format = (...choices: Format[]): Option =>
  new Option('--format <format>', 'how the answer is written').choices(choices).default('text');

const unit = (): Option =>
  new Option('--unit <unit>', 'degrees of the words').choices(['C', 'F']).default('C');

const program = (take: (asked: Asked) => void, write: (text: string) => void): Command => {
  const asked = (command: Asked['command']) => (logs: string[], given: Given) => {
    take({
      command,
      logs,
      schedule: given.schedule ?? null,
      joined: given.joined ?? null,
      cone: given.cone ?? null,
      format: given.format,
      out: given.out ?? null,
      unit: given.unit ?? 'C',
      reading: readingGiven(given),
      readingFile: given.reading ?? null,
    });
  };
  const root = new Command('afterfire')
    .description('Reads the temperature log of a kiln firing after it is over.')
    .version(VERSION)
    .exitOverride()
    .configureOutput({ writeOut: write, writeErr: write });
  withReadingOptions(
    root
      .command('inspect')
      .description('says how each log was read')
      .argument('<log...>', 'temperature logs')
      .addOption(format('text', 'json')),
  ).action(asked('inspect'));
  withReadingOptions(
    root
      .command('analyze')
      .description('gives the verdict on each firing')
      .argument('<log...>', 'temperature logs')
      .option('--schedule <file>', 'the schedule the kiln was to follow')
      .option('--cone <cone>', 'the cone that was meant, such as 6, 06 or 05.5')
      .option(
        '--joined <log>',
        'the log of a second run of the same load, after the first broke off',
      )
      .addOption(format('text', 'json', 'html'))
      .option('--out <dir>', 'write a file for each log there')
      .addOption(unit()),
  ).action(asked('analyze'));
  withReadingOptions(
    root
      .command('trend')
      .description(
        'takes the logs as one kiln’s history: its power, what is left of it, what changed',
      )
      .argument('<log...>', 'temperature logs of one kiln')
      .option('--schedule <file>', 'the schedule that every firing was to follow')
      .addOption(format('text', 'json'))
      .addOption(unit()),
  ).action(asked('trend'));
  return root;
};

/** Reads the arguments after the program's own name. */
export const parseCommand = (args: readonly string[]): Parsed => {
  let asked: Asked | null = null;
  let printed = '';
  try {
    program(
      (given) => (asked = given),
      (text) => (printed += text),
    ).parse([...args], { from: 'user' });
  } catch (cause) {
    if (!(cause instanceof CommanderError)) throw cause;
    const isFine = cause.exitCode === 0;
    return { print: printed.replace(/^error: /, ''), status: isFine ? 0 : 2 };
  }
  return checked(asked);
};

const checked = (asked: Asked | null): Parsed => {
  if (asked === null) return { print: 'say what to do: inspect, analyze or trend\n', status: 2 };
  const { format: wanted, logs, out, joined } = asked;
  if (joined !== null && logs.length > 1) return { print: ONE_LOAD, status: 2 };
  if (wanted === 'html' && logs.length > 1 && out === null)
    return { print: SEVERAL_PAGES, status: 2 };
  return { asked };
};
