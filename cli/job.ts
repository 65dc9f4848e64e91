import type { Options } from '../core/model/options.ts';
import type { TemperatureUnit } from '../core/units.ts';
import type { Format } from './command.ts';

/** One log to be worked on, as it travels to a worker. */
export interface Job {
  readonly command: 'inspect' | 'analyze';
  readonly path: string;
  /** A second log of the same load. */
  readonly joined: string | null;
  readonly options: Options;
  readonly format: Format;
  readonly unit: TemperatureUnit;
}

/** Why a log could not be analysed, as a plain word and a plain sentence. */
export interface JobError {
  readonly code: string;
  readonly message: string;
  readonly line?: number;
}

/** The answer for one log, ready to be written. */
export type JobResult = { readonly output: string } | { readonly error: JobError };
