import { clean } from '../core/report/clean.ts';
import type { JobError } from './job.ts';
import { OPTIONS_FOR } from './reading-options.ts';

/** One plain line that names the input, the line to blame and the reason. */
export const errorLine = (of: string, { code, message, line }: JobError): string => {
  // An option is not read but used.
  const verb = of.startsWith('--') ? 'use' : 'read';
  const where = line === undefined ? '' : `, line ${line}`;
  const options = OPTIONS_FOR[code];
  const hint = options === undefined ? '' : ` (${options})`;
  return `${clean(`cannot ${verb} ${of}${where}: ${message}${hint}`)}\n`;
};
