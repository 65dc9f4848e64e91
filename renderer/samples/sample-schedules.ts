import type { OpenedSchedule } from '../host/host.ts';

const texts = import.meta.glob<string>('../../sample-traces/*.schedule.*', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** The schedule files of the samples, which can be chosen for any log. */
export const sampleSchedules: readonly OpenedSchedule[] = Object.entries(texts).map(
  ([path, text]) => ({ fileName: path.replace(/^.*\//, ''), text }),
);
