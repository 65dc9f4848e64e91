import type { Schedule } from '../../core/model/schedule.ts';
import type { Opened } from '../host/interface.ts';
import type { Notice } from './firing.ts';

export const problem = (text: string): Notice => ({ tone: 'problem', text });

/** Each file that the machine would not give, and why. */
export const refusedFiles = (refused: Opened['refused']): string[] =>
  refused.map(({ fileName, why }) => `“${fileName}”: ${why}`);

/** That a schedule waits for its log, beside what was not taken with it. */
export const withReady = (notice: Notice | null, { name }: Schedule): Notice => {
  const text = `Schedule “${name}” is ready.`;
  return notice?.tone === 'problem' ? problem(`${notice.text}. ${text}`) : { tone: 'said', text };
};
