import type { Schedule } from '../../core/model/schedule.ts';
import { readSchedule } from '../../core/schedule/read-schedule.ts';

const texts = import.meta.glob<string>('../../sample-traces/*.schedule.*', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** The schedules of the samples, which can be chosen for any log. */
export const bundledSchedules: readonly Schedule[] = Object.entries(texts).map(([path, text]) =>
  readSchedule(text, path.replace(/^.*\//, '')),
);
